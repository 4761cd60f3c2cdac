package spoolyard.scenarios.capacity;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.scenarios.ScenarioFolder;
import spoolyard.scenarios.fault.Warning;

/** Work planted, one piece at a time, in the hands of a role that no shift has, in the scenario that uses every key. */
final class AttendanceCheckTest {
    @TempDir
    private Path parent;

    private ScenarioFolder folder;

    /** The role stands among the others, so that naming it is sound. */
    @BeforeEach
    void addARoleThatNeverComes() {
        folder = ScenarioFolder.everything(parent);
        folder.replace("plant.yaml", "    packer: {}\n", "    packer: {}\n    ghost: {}\n")
                .replace("plant.yaml", "labour_per_hour: {", "labour_per_hour: {ghost: 1, ");
    }

    private List<String> warnings(String... sets) {
        return folder.read(sets).warnings().stream()
                .filter(warning -> warning.kind() == Warning.Kind.NOBODY_TO_ATTEND)
                .map(Warning::text)
                .toList();
    }

    @Test
    void isContentWhereEveryRoleIsOnShift() {
        assertThat(warnings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "/lines/L1/winder, spool swap",
        "/lines/L1/material, loading and cleaning of material",
        "/lines/L1/stoppages/die wipe, stoppage die wipe",
        "/changeover/colour_steps/feeder swap, set-up feeder swap",
        "/changeover/polymer_steps/screen, set-up screen",
        "/changeover/diameter_steps/die change, set-up die change",
        "/changeover/approval, approval of a colour",
        "/finishing/packing, packing",
        "/lab/tests/look, lab test look",
        "/lab/refused/sort, rework sort",
        "/lab/refused/re_spool, rework re_spool",
        "/exposure/oven, rework in the oven"
    })
    void findsWorkInTheHandsOfARoleThatIsNeverOnShift(String place, String what) {
        assertThat(warnings(place + "/crew=ghost"))
                .singleElement()
                .asString()
                .endsWith(": " + what + " is never done: no ghost is there in any shift of the run.");
    }

    /** Written once, for every line, it is warned of once, at its line in the file. */
    @Test
    void findsWhatAllLinesShareOnce() {
        folder.replace("plant.yaml", "line_crew: [operator, setter]", "line_crew: ghost");

        assertThat(warnings())
                .containsExactly(folder.at("plant.yaml", "  line_crew: ghost")
                        + ": thread-up and shut-down is never done: no ghost is there in any shift of the run.");
    }

    @Test
    void findsAStoppageOfAFinishingStation() {
        String jam = "{jam: {every: 20 h, takes: 5 min, crew: ghost}}";

        assertThat(warnings("/finishing/packing/stoppages=" + jam))
                .singleElement()
                .asString()
                .contains(": stoppage jam is never done: no ghost");
    }

    @Test
    void isContentIfOneOfSeveralRolesComes() {
        assertThat(warnings("/lab/tests/look/crew=[ghost, setter]")).isEmpty();
    }
}
