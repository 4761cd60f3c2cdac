package spoolyard.analysis.architecture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The rules hold in all modules, and each one fires where it is broken on purpose. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class ModuleRulesTest {
    private final JavaClasses real = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("spoolyard");
    private final JavaClasses planted = new ClassFileImporter()
            .importPackages(
                    "spoolyard.core.planted",
                    "spoolyard.scenarios.planted",
                    "spoolyard.analysis.experiment.planted",
                    "spoolyard.analysis.buffer.planted",
                    "spoolyard.analysis.report.planted");

    static Stream<Arguments> rules() {
        return ModuleRules.all().entrySet().stream().map(rule -> Arguments.of(rule.getKey(), rule.getValue()));
    }

    @Test
    void readsTheClassesOfAllModules() {
        assertThat(real.contain("spoolyard.core.process.PlantRun")).isTrue();
        assertThat(real.contain("spoolyard.scenarios.ScenarioReader")).isTrue();
        assertThat(real.contain("spoolyard.analysis.cli.Spoolyard")).isTrue();
        assertThat(real.contain("spoolyard.core.planted.Untidy")).isFalse();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void holds(String name, ArchRule rule) {
        rule.check(real);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "core depends on no other module, core.planted.Untidy",
        "scenarios depend on the core only, scenarios.planted.Untidy",
        "experiments know no report, experiment.planted.Untidy",
        "sizing knows no report, buffer.planted.Untidy",
        "reports know no command line, report.planted.Untidy",
        "packages form no cycle, Cycle detected",
        "only the command line has a main, core.planted.Untidy.main",
        "only the command line ends the program, System.exit",
        "files are touched at the edges only, java.nio.file.Files",
        "static fields are final, core.planted.Untidy.count"
    })
    void firesWhereItIsBrokenOnPurpose(String name, String told) {
        Map<String, ArchRule> rules = ModuleRules.all();

        assertThatExceptionOfType(AssertionError.class)
                .isThrownBy(() -> rules.get(name).check(planted))
                .withMessageContaining(told);
        assertThat(rules).hasSize(10);
    }
}
