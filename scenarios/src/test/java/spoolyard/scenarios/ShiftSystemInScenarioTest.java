package spoolyard.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoolyard.core.plant.Shift;
import spoolyard.core.quantity.Ticks;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;

/** A shift system named in one line, below the keys of the scenario and of its variations. */
final class ShiftSystemInScenarioTest {
    private static final long HOUR = 3600 * Ticks.PER_SECOND;

    @TempDir
    private Path parent;

    private ScenarioFolder folder;

    @BeforeEach
    void copy() {
        folder = ScenarioFolder.copy(Path.of("two-lines"), parent);
    }

    private Scenario varied(String shifts) throws Exception {
        folder.write("varied.yaml", "base: plant.yaml\nshifts:\n" + shifts.indent(2));
        return ScenarioReader.read(folder.path().resolve("varied.yaml"), List.of());
    }

    private static List<String> names(Scenario scenario) {
        return scenario.plant().shifts().stream().map(Shift::name).distinct().toList();
    }

    @Test
    void takesThePlaceOfTheShiftsOfTheBase() throws Exception {
        Scenario varied = varied("system: 2x12-2-2-3\nevery_shift: {crew: {operator: 2, packer: 1}}\n");

        assertThat(names(varied)).containsExactlyInAnyOrder("D", "N");
        assertThat(varied.plant().shifts()).allSatisfy(shift -> {
            assertThat(shift.endTick() - shift.startTick()).isEqualTo(12 * HOUR);
            assertThat(shift.heads()).startsWith(2);
        });
        assertThat(varied.plant().lines())
                .allSatisfy(line -> assertThat(line.workingPeriods()).hasSize(1));
    }

    @Test
    void bowsToTheKeysOfTheScenario() throws Exception {
        Scenario varied = varied(
                """
                system: 3x8-7-days-4-crews
                first_start: 05:00
                every_shift: {crew: {operator: 2}, pace: 1.1}
                pattern: {N: {crew: {operator: 1}}, E: {pace: 1, end: 20:00}}
                crews: {D: null}
                """);

        assertThat(names(varied)).containsExactlyInAnyOrder("D", "E", "N");
        assertThat(shift(varied, "N").heads()).startsWith(1);
        assertThat(shift(varied, "N").pace()).isEqualTo(1.1);
        assertThat(shift(varied, "E").pace()).isEqualTo(1);
        assertThat(shift(varied, "E").endTick() - shift(varied, "E").startTick())
                .isEqualTo(7 * HOUR);
    }

    private static Shift shift(Scenario scenario, String name) {
        return scenario.plant().shifts().stream()
                .filter(shift -> shift.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void takesAShiftOutOfTheSystem() throws Exception {
        Scenario varied = varied("system: 2x8-5-days\npattern: {E: null}\ncrews: null\n");

        assertThat(names(varied)).containsExactly("D");
    }

    @Test
    void isSetFromTheCommandLine() throws Exception {
        Scenario set = folder.read(
                "/shifts/system=2x12-4-on-4-off", "/shifts/every_shift/crew={operator: 2, setter: 1, packer: 1}");

        assertThat(names(set)).containsExactlyInAnyOrder("D", "N");
        assertThat(shift(set, "D").heads()).startsWith(2, 1);
        assertThat(names(folder.read("/shifts={system: day-shift, every_shift: {crew: {operator: 1}}}")))
                .containsExactly("D");
    }

    @Test
    void isReplacedByAnotherSystemFurtherUp() throws Exception {
        varied("system: 3x8-5-days\npattern: {N: {pace: 1.08}}\n");
        folder.write("upper.yaml", "base: varied.yaml\nshifts: {system: day-shift}\n");

        Scenario upper = ScenarioReader.read(folder.path().resolve("upper.yaml"), List.of());

        assertThat(names(upper)).containsExactly("D");
        assertThat(shift(upper, "D").pace()).isEqualTo(1);
    }

    @Test
    void isTakenOutWithAllThatItGave() throws Exception {
        varied("system: 3x8-5-days\n");
        folder.write("upper.yaml", "base: varied.yaml\nshifts: null\n");

        assertThat(ShiftRoster.read(folder.path().resolve("varied.yaml"), List.of()))
                .isPresent();
        assertThat(ShiftRoster.read(folder.path().resolve("upper.yaml"), List.of()))
                .isEmpty();
    }

    @Test
    void namesAKeyThatTakesOutNothing() throws Exception {
        folder.write("varied.yaml", "base: plant.yaml\nshifts: {system: day-shift, pattern: {M: null}}\n");

        Fault fault =
                ScenarioFolder.faultsOf(folder.path().resolve("varied.yaml")).get(0);

        assertThat(fault.kind()).isIn(FaultKind.UNKNOWN_KEY, FaultKind.WRONG_SHAPE);
        assertThat(fault.text()).contains("varied.yaml:2: /shifts/pattern/M");
    }
}
