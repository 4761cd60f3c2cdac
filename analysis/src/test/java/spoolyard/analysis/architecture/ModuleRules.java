package spoolyard.analysis.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.conditions.ArchConditions.callMethod;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** The arrows between modules and packages, and who may end the program or touch files. */
final class ModuleRules {
    private static final String CORE = "spoolyard.core..";
    private static final String SCENARIOS = "spoolyard.scenarios..";
    private static final String ANALYSIS = "spoolyard.analysis..";
    private static final String EXPERIMENT = "spoolyard.analysis.experiment..";
    private static final String BUFFER = "spoolyard.analysis.buffer..";
    private static final String REPORT = "spoolyard.analysis.report..";
    private static final String CLI = "spoolyard.analysis.cli..";
    private static final Set<String> FILES = Set.of(
            "java.io.File",
            "java.io.FileInputStream",
            "java.io.FileOutputStream",
            "java.io.FileReader",
            "java.io.FileWriter",
            "java.io.RandomAccessFile",
            "java.nio.channels.FileChannel",
            "java.nio.file.Files");

    private ModuleRules() {}

    static Map<String, ArchRule> all() {
        Map<String, ArchRule> rules = new LinkedHashMap<>();
        rules.put("core depends on no other module", none(CORE, SCENARIOS, ANALYSIS));
        rules.put("scenarios depend on the core only", none(SCENARIOS, ANALYSIS));
        rules.put("experiments know no report", none(EXPERIMENT, REPORT, CLI, SCENARIOS));
        rules.put("sizing knows no report", none(BUFFER, REPORT, CLI, SCENARIOS));
        rules.put("reports know no command line", none(REPORT, CLI, "picocli.."));
        rules.put(
                "packages form no cycle",
                slices().matching("spoolyard.(*.*)..").should().beFreeOfCycles());
        rules.put("only the command line has a main", onlyMain());
        rules.put("only the command line ends the program", onlyExit());
        rules.put("files are touched at the edges only", onlyFiles());
        rules.put(
                "static fields are final", fields().that().areStatic().should().beFinal());
        return rules;
    }

    private static ArchRule none(String from, String... to) {
        return noClasses()
                .that()
                .resideInAPackage(from)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(to);
    }

    private static ArchRule onlyMain() {
        return methods()
                .that()
                .haveName("main")
                .and()
                .areStatic()
                .should()
                .beDeclaredInClassesThat()
                .resideInAPackage(CLI);
    }

    private static ArchRule onlyExit() {
        return noClasses()
                .that()
                .resideOutsideOfPackage(CLI)
                .should(callMethod(System.class, "exit", int.class))
                .orShould(callMethod(Runtime.class, "exit", int.class))
                .orShould(callMethod(Runtime.class, "halt", int.class));
    }

    private static ArchRule onlyFiles() {
        return noClasses()
                .that()
                .resideOutsideOfPackages(SCENARIOS, REPORT, CLI)
                .should()
                .dependOnClassesThat(describe("touch files", (JavaClass each) -> FILES.contains(each.getName())));
    }
}
