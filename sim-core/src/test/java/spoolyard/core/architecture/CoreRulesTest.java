package spoolyard.core.architecture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The rules hold in the core, and each one fires where it is broken on purpose. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class CoreRulesTest {
    private static final String CORE = "spoolyard.core";
    private static final String PLANTED = "spoolyard.core.architecture.planted";

    private final JavaClasses core = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages(CORE);
    private final JavaClasses planted = new ClassFileImporter().importPackages(PLANTED);
    private final Map<String, ArchRule> plantedRules = new CoreRules(PLANTED).all();

    static Stream<Arguments> rules() {
        return new CoreRules(CORE).all().entrySet().stream().map(rule -> Arguments.of(rule.getKey(), rule.getValue()));
    }

    @Test
    void readsTheRealClasses() {
        assertThat(core.contain("spoolyard.core.engine.Engine")).isTrue();
        assertThat(core.contain("spoolyard.core.architecture.CoreRules")).isFalse();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rules")
    void holdsInTheCore(String name, ArchRule rule) {
        rule.check(core);
    }

    /** Each rule with a piece of the message it must give on the classes of {@code planted}. */
    static Stream<Arguments> defects() {
        Map<String, String[]> defects = new LinkedHashMap<>();
        defects.put("quantity stands alone", new String[] {"Mass", "Recipe"});
        defects.put("engine knows no plant", new String[] {"Motor", "Recipe"});
        defects.put("plant needs quantities only", new String[] {"Recipe", "Motor"});
        defects.put("random draws the laws of the plant", new String[] {"Dice", "umontreal.ssj.simevents.Event"});
        defects.put("record needs the plant only", new String[] {"Log", "Motor"});
        defects.put("policy decides on plant and record", new String[] {"Choice", "Motor"});
        defects.put("gauge studies laws of the plant", new String[] {"Loop", "Motor"});
        defects.put("account values plant and record", new String[] {"Bill", "Motor"});
        defects.put("activity stands on the record", new String[] {"Shift", "Motor"});
        defects.put("colour stands alone", new String[] {"Paint", "Motor"});
        defects.put("washout stands alone", new String[] {"Sink", "Motor"});
        defects.put("purge joins colour, washout and plant", new String[] {"Drain", "Motor"});
        defects.put("core needs Java and SSJ only", new String[] {"Log", "org.assertj"});
        defects.put("SSJ stays in engine and random", new String[] {"Untidy", "umontreal.ssj.util.Num"});
        defects.put("packages form no cycle", new String[] {"Cycle detected"});
        defects.put("no outside world", new String[] {
            "java.io.File", "java.lang.Thread", "java.util.concurrent.ConcurrentHashMap", "java.util.Random"
        });
        defects.put("no system, clock, chance or locale", new String[] {
            "System.out", "System.nanoTime()", "Math.random()", "LocalDate.now()", "toLowerCase()", "parallelStream()"
        });
        defects.put("no unordered collection", new String[] {"java.util.HashMap", "java.util.HashSet"});
        defects.put("no unordered factory or collector", new String[] {
            "Set.of(", "Set.copyOf(", "Map.of(", "Collectors.toSet()", "Collectors.groupingBy(", "Collectors.toMap("
        });
        defects.put("no mutable static", new String[] {"Recipe.count"});
        defects.put("no public field", new String[] {"Recipe.amount"});
        defects.put("no setter in plant", new String[] {"setAmount"});
        defects.put("plant and quantity hold values only", new String[] {"Recipe"});
        defects.put("classes are closed", new String[] {"Recipe"});
        return defects.entrySet().stream().map(defect -> Arguments.of(defect.getKey(), defect.getValue()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("defects")
    void firesOnAPlantedDefect(String name, String[] named) {
        assertThatExceptionOfType(AssertionError.class)
                .isThrownBy(() -> plantedRules.get(name).check(planted))
                .satisfies(error -> assertThat(error.getMessage()).contains(named));
    }

    @Test
    void everyRuleHasItsDefect() {
        assertThat(defects().map(defect -> defect.get()[0])).containsExactlyElementsOf(plantedRules.keySet());
    }

    /** What is allowed beside what is not: collectors with a supplier, constants, ordered collections. */
    @Test
    void leavesTheAllowedAlone() {
        assertThat(plantedRules.values().stream()
                        .flatMap(rule -> rule.evaluate(planted).getFailureReport().getDetails().stream())
                        .filter(detail -> detail.contains("Tidy")))
                .isEmpty();
    }
}
