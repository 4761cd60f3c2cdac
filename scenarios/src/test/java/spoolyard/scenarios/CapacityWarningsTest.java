package spoolyard.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoolyard.scenarios.fault.Warning;

/** Warnings planted in the small two-line plant, which has none. */
final class CapacityWarningsTest {
    @TempDir
    private Path parent;

    private ScenarioFolder folder;

    @BeforeEach
    void copy() {
        folder = ScenarioFolder.copy(Path.of("two-lines"), parent);
    }

    private Warning onlyWarning() {
        List<Warning> warnings = folder.read().warnings();
        assertThat(warnings).hasSize(1);
        return warnings.get(0);
    }

    @Test
    void saysNothingOfASoundPlant() {
        assertThat(folder.read().warnings()).isEmpty();
    }

    /** L1 alone can make PETG: 240 and 200 kg at 18 * 0.95 kg/h are 25.7 h; 60 h more at 17.1 kg/h are 1026 kg. */
    @Test
    void warnsOfALineWithMoreWorkThanHours() {
        folder.append("orders.csv", "2001,PETG,NAT,1.75,1.0,1026,2027-03-01,2027-03-07,C\n");

        assertThat(onlyWarning().text())
                .isEqualTo(folder.at("plant.yaml", "  L1:")
                        + ": line L1 has 86 h of work due in the run at full rate and 80 h to do it in (107 %);"
                        + " changeovers, stoppages and scrap come on top.");
    }

    /** L1 at 18 kg/h of PLA: 100.6 m/min, 200 s a spool; with a stop of 18 s the winder needs 100.6 * 200 / 182. */
    @Test
    void warnsOfAWinderThatCannotCatchUp() {
        folder.replace("plant.yaml", "max_speed: 160 m/min", "max_speed: 110 m/min");

        Warning warning = onlyWarning();

        assertThat(warning.kind()).isEqualTo(Warning.Kind.WINDER_TOO_SLOW);
        assertThat(warning.text())
                .isEqualTo(folder.at("plant.yaml", "winder:                                   # stands")
                        + ": line L1 winds at most at 110.0 m/min; PLA 1.75 mm, 1.0 kg needs 110.5 m/min"
                        + " to catch up before the next spool is full.");
    }

    /** 18 s at 100.6 m/min are 30.2 m. */
    @Test
    void warnsOfAnAccumulatorThatCannotTakeUpASwap() {
        folder.replace("plant.yaml", "accumulator: 60 m", "accumulator: 25 m");

        List<Warning> warnings = folder.read().warnings();

        assertThat(warnings)
                .extracting(Warning::kind)
                .containsOnly(Warning.Kind.ACCUMULATOR_TOO_SMALL)
                .hasSize(2);
        assertThat(warnings.get(0).text())
                .endsWith(": line L1 loses filament at most swaps with PLA 1.75 mm, 1.0 kg:"
                        + " even without a wait the swap is 3.1 s too long.");
    }

    @Test
    void warnsOfAShiftInWhichNobodyMayAttendTheWinders() {
        folder.replace(
                "plant.yaml",
                "end: 22:00\n      crew: {operator: 2, setter: 1, packer: 1}",
                "end: 22:00\n      crew: {setter: 1, packer: 1}");

        Warning warning = onlyWarning();

        assertThat(warning.kind()).isEqualTo(Warning.Kind.NOBODY_TO_ATTEND);
        assertThat(warning.text())
                .isEqualTo(folder.at("plant.yaml", "crew: {setter: 1, packer: 1}")
                        + ": in shift late nobody is there who may attend the winders of L1, L2, which run.");
    }

    @Test
    void saysNothingIfTheLinesStandMeanwhile() {
        folder.replace(
                "plant.yaml",
                "end: 22:00\n      crew: {operator: 2, setter: 1, packer: 1}",
                "end: 22:00\n      lines: []\n      crew: {setter: 1, packer: 1}");

        assertThat(folder.read().warnings()).extracting(Warning::kind).doesNotContain(Warning.Kind.NOBODY_TO_ATTEND);
    }

    /** Some 17.5 * 50 s + 36 * 120 s an hour are 1.44 people, of 2 * 7.5 / 8 present with the unrelieved meal break. */
    @Test
    void warnsOfACrewThatCannotCoverItsLines() {
        folder.replace("plant.yaml", "unload: {lognormal: {mean: 28 s, cv: 0.25}}", "unload: 140 s");

        List<Warning> warnings = folder.read().warnings();

        assertThat(warnings)
                .extracting(Warning::kind)
                .containsOnly(Warning.Kind.CREW_OVERLOADED)
                .hasSize(2);
        assertThat(warnings.get(0).text())
                .contains(": in shift early the spools keep 1.6")
                .contains(" of 1.88 operator busy");
    }

    /** 2580 spools in 80 h are 32 an hour; packing only early leaves 8 * 32 to wait for the morning. */
    @Test
    void warnsOfARackThatCannotHoldTheNight() {
        folder.replace("plant.yaml", "rack: 200 spools", "rack: 50 spools, open: [early]")
                .replace("plant.yaml", "rack: 600 spools", "rack: 100 spools");

        Warning warning = onlyWarning();

        assertThat(warning.kind()).isEqualTo(Warning.Kind.RACK_TOO_SMALL);
        assertThat(warning.text())
                .contains(": up to 258 spools wait for packing, which is closed up to 64 h at a time;"
                        + " its rack and those before it hold 150.");
    }

    @Test
    void warnsOfFinishingThatCannotKeepUp() {
        folder.replace("plant.yaml", "cycle: [{takes: 36 s}]", "cycle: [{takes: 120 s}]");

        Warning warning = onlyWarning();

        assertThat(warning.kind()).isEqualTo(Warning.Kind.FINISHING_TOO_SLOW);
        assertThat(warning.message())
                .isEqualTo("packing can do 2250 spools in the run with the people there are, and 2580 come.");
    }

    /** 1200 kg at 36 kg/h take 33 h; from 1 March 06:00 to the end of 2 March two lines of 16 h a day have 32 h each. */
    @Test
    void warnsOfADueDateThatNoLineCanMeet() {
        folder.replace("orders.csv", "900,2027-03-01,2027-03-04", "1200,2027-03-01,2027-03-02");

        Warning warning = onlyWarning();

        assertThat(warning.kind()).isEqualTo(Warning.Kind.DUE_TOO_SOON);
        assertThat(warning.text())
                .isEqualTo(folder.shown("orders.csv")
                        + ":3: order 1002 (PLA BLK 1.75 mm, 1200 kg) is due before any line could finish it.");
    }
}
