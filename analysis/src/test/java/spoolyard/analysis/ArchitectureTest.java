package spoolyard.analysis;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.conditions.ArchConditions.callMethod;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Set;

/** The arrows between modules and packages, and who may end the program or touch files. */
@AnalyzeClasses(packages = "spoolyard", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {
    private static final String[] FILES = {
        "java.io.File",
        "java.io.FileInputStream",
        "java.io.FileOutputStream",
        "java.io.FileReader",
        "java.io.FileWriter",
        "java.io.RandomAccessFile",
        "java.nio.file.Files"
    };

    @ArchTest
    private static final ArchRule CORE_DEPENDS_ON_NOTHING_OF_OURS = noClasses()
            .that()
            .resideInAPackage("spoolyard.core..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("spoolyard.scenarios..", "spoolyard.analysis..");

    @ArchTest
    private static final ArchRule SCENARIOS_DEPEND_ON_THE_CORE_ONLY = noClasses()
            .that()
            .resideInAPackage("spoolyard.scenarios..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("spoolyard.analysis..");

    @ArchTest
    private static final ArchRule NO_CYCLES =
            slices().matching("spoolyard.(*).(**)").should().beFreeOfCycles();

    @ArchTest
    private static final ArchRule EXPERIMENT_KNOWS_NO_REPORT = noClasses()
            .that()
            .resideInAPackage("spoolyard.analysis.experiment")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("spoolyard.analysis.report", "spoolyard.analysis.cli", "spoolyard.scenarios..");

    @ArchTest
    private static final ArchRule NOBODY_KNOWS_THE_COMMAND_LINE = noClasses()
            .that()
            .resideOutsideOfPackage("spoolyard.analysis.cli")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("spoolyard.analysis.cli", "picocli..");

    @ArchTest
    private static final ArchRule ONLY_THE_COMMAND_LINE_HAS_A_MAIN = methods()
            .that()
            .haveName("main")
            .and()
            .areStatic()
            .should()
            .beDeclaredInClassesThat()
            .resideInAPackage("spoolyard.analysis.cli");

    @ArchTest
    private static final ArchRule ONLY_THE_COMMAND_LINE_ENDS_THE_PROGRAM = noClasses()
            .that()
            .resideOutsideOfPackage("spoolyard.analysis.cli")
            .should(callMethod(System.class, "exit", int.class))
            .orShould(callMethod(Runtime.class, "exit", int.class))
            .orShould(callMethod(Runtime.class, "halt", int.class));

    @ArchTest
    private static final ArchRule FILES_ARE_TOUCHED_AT_THE_EDGES_ONLY = noClasses()
            .that(not(
                    resideInAnyPackage("spoolyard.scenarios..", "spoolyard.analysis.report", "spoolyard.analysis.cli")))
            .should()
            .dependOnClassesThat(
                    describe("touch files", (JavaClass each) -> Set.of(FILES).contains(each.getName())));

    @ArchTest
    private static final ArchRule STATIC_FIELDS_ARE_FINAL =
            fields().that().areStatic().and().doNotHaveName("$VALUES").should().beFinal();
}
