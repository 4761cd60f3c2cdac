package spoolyard.core.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaModifier.FINAL;
import static com.tngtech.archunit.core.domain.JavaModifier.STATIC;
import static com.tngtech.archunit.lang.conditions.ArchConditions.be;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The rules of the core, for a tree of packages: the real one, or one in which each rule is broken on purpose. */
final class CoreRules {
    private static final String SSJ_EVENTS = "umontreal.ssj.simevents..";
    private static final String[] SSJ_NUMBERS = {
        "umontreal.ssj.rng..", "umontreal.ssj.probdist..", "umontreal.ssj.util.."
    };

    private final String root;

    CoreRules(String root) {
        this.root = root;
    }

    /** Every rule by name. */
    Map<String, ArchRule> all() {
        Map<String, ArchRule> rules = new LinkedHashMap<>();
        rules.put("quantity stands alone", arrow("quantity", List.of()));
        rules.put("engine knows no plant", arrow("engine", List.of("quantity"), SSJ_EVENTS));
        rules.put("plant needs quantities only", arrow("plant", List.of("quantity")));
        rules.put("random draws the laws of the plant", arrow("random", List.of("plant", "quantity"), SSJ_NUMBERS));
        rules.put("record needs the plant only", arrow("record", List.of("plant", "quantity")));
        rules.put("policy decides on plant and record", arrow("policy", List.of("plant", "quantity", "record")));
        rules.put("gauge studies laws of the plant", arrow("gauge", List.of("plant", "quantity", "random")));
        rules.put("account values plant and record", arrow("account", List.of("plant", "quantity", "record")));
        rules.put("activity stands on the record", arrow("activity", List.of("quantity", "record")));
        rules.put("colour stands alone", arrow("colour", List.of()));
        rules.put("washout stands alone", arrow("washout", List.of()));
        rules.put("purge joins colour, washout and plant", arrow("purge", List.of("colour", "washout", "plant")));
        rules.put("core needs Java and SSJ only", jdkAndSsjOnly());
        rules.put("SSJ stays in engine and random", ssjStaysInside());
        rules.put(
                "packages form no cycle",
                slices().matching(root + ".(*)..").should().beFreeOfCycles());
        rules.put("no outside world", noOutsideWorld());
        rules.put("no system, clock, chance or locale", noHiddenInput());
        rules.put("no unordered collection", noUnorderedCollection());
        rules.put("no unordered factory or collector", noUnorderedFactory());
        rules.put(
                "no mutable static",
                fields().that(inRoot()).and().areStatic().should().beFinal());
        rules.put("no public field", noPublicField());
        rules.put("no setter in plant", noSetterInPlant());
        rules.put("plant and quantity hold values only", valuesOnly());
        rules.put("classes are closed", classesAreClosed());
        return rules;
    }

    private ArchRule arrow(String from, List<String> toOurs, String... toOthers) {
        List<String> allowed = new ArrayList<>(List.of("java..", in(from)));
        toOurs.forEach(name -> allowed.add(in(name)));
        allowed.addAll(List.of(toOthers));
        return classes()
                .that()
                .resideInAPackage(in(from))
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(allowed.toArray(String[]::new)))
                .allowEmptyShould(true);
    }

    private ArchRule jdkAndSsjOnly() {
        return classes()
                .that()
                .resideInAPackage(root + "..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage("java..", root + "..", "umontreal.ssj..");
    }

    private ArchRule ssjStaysInside() {
        return noClasses()
                .that()
                .resideInAPackage(root + "..")
                .and()
                .resideOutsideOfPackages(in("engine"), in("random"))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("umontreal.ssj..");
    }

    private ArchRule noOutsideWorld() {
        return noClasses()
                .that()
                .resideInAPackage(root + "..")
                .should()
                .dependOnClassesThat(resideInAnyPackage(
                                "java.io..",
                                "java.nio.file..",
                                "java.nio.channels..",
                                "java.net..",
                                "java.sql..",
                                "java.util.logging..",
                                "java.util.concurrent..",
                                "java.util.prefs..")
                        .and(describe("", c -> !c.getName().equals("java.io.Serializable")))
                        .or(oneOf(
                                "java.lang.Thread",
                                "java.lang.ThreadLocal",
                                "java.lang.Runtime",
                                "java.lang.ProcessBuilder",
                                "java.time.Clock",
                                "java.util.Random",
                                "java.util.SplittableRandom",
                                "java.util.Timer",
                                "java.util.UUID")));
    }

    private ArchRule noHiddenInput() {
        return noClasses()
                .that()
                .resideInAPackage(root + "..")
                .should()
                .accessTargetWhere(
                        describe("reads system, clock, chance or locale", ForbiddenAccess::readsHiddenInput));
    }

    private ArchRule noUnorderedCollection() {
        return noClasses()
                .that()
                .resideInAPackage(root + "..")
                .should()
                .dependOnClassesThat(oneOf(
                        "java.util.HashMap",
                        "java.util.HashSet",
                        "java.util.Hashtable",
                        "java.util.IdentityHashMap",
                        "java.util.WeakHashMap"));
    }

    private ArchRule noUnorderedFactory() {
        return noClasses()
                .that()
                .resideInAPackage(root + "..")
                .should()
                .accessTargetWhere(describe("makes a collection without order", ForbiddenAccess::makesUnordered));
    }

    private ArchRule noPublicField() {
        return noFields()
                .that(inRoot())
                .and(describe(
                        "are not constants", field -> !field.getModifiers().containsAll(List.of(STATIC, FINAL))))
                .should()
                .bePublic();
    }

    private ArchRule noSetterInPlant() {
        return noMethods()
                .that()
                .areDeclaredInClassesThat()
                .resideInAPackage(in("plant"))
                .should()
                .haveNameMatching("set[A-Z].*")
                .allowEmptyShould(true);
    }

    private ArchRule valuesOnly() {
        return classes()
                .that()
                .resideInAnyPackage(in("plant"), in("quantity"))
                .and(isWritten())
                .should(be(describe(
                        "records, enums, interfaces or exceptions",
                        c -> c.isRecord() || c.isEnum() || c.isInterface() || c.isAssignableTo(Exception.class))));
    }

    private ArchRule classesAreClosed() {
        return classes()
                .that()
                .resideInAPackage(root + "..")
                .and(isWritten())
                .and()
                .areNotEnums()
                .should(be(describe(
                        "final, abstract or interfaces",
                        c -> c.isInterface()
                                || c.getModifiers().contains(FINAL)
                                || c.getModifiers().contains(JavaModifier.ABSTRACT))));
    }

    private static DescribedPredicate<JavaClass> isWritten() {
        return describe(
                "are written by name",
                c -> !c.isAnonymousClass()
                        && !c.getModifiers().contains(JavaModifier.SYNTHETIC)
                        && !c.getSimpleName().equals("package-info"));
    }

    private DescribedPredicate<JavaField> inRoot() {
        return describe(
                "in " + root,
                field -> field.getOwner().getPackageName().startsWith(root)
                        && !field.getModifiers().contains(JavaModifier.SYNTHETIC));
    }

    private static DescribedPredicate<JavaClass> oneOf(String... names) {
        return describe(
                "one of " + String.join(", ", names), c -> List.of(names).contains(c.getName()));
    }

    private String in(String name) {
        return root + "." + name + "..";
    }
}
