package spoolyard.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Winder;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;

final class SettingTest {
    @TempDir
    private Path parent;

    private ScenarioFolder folder;

    @BeforeEach
    void copy() {
        folder = ScenarioFolder.everything(parent);
    }

    @Test
    void setsASingleValue() {
        Line line = folder.read("/lines/L1/accumulator=80 m").plant().lines().get(0);

        assertThat(line.accumulator().capacityM()).isEqualTo(80);
    }

    @Test
    void replacesAMappingAsAWhole() {
        Line line = folder.read("/lines/L1/winder/stop={exponential: {mean: 20 s}}")
                .plant()
                .lines()
                .get(0);

        assertThat(((Winder.Manual) line.winder()).stopTimeS()).isEqualTo(new Law.Exponential(20));
    }

    @Test
    void overridesAValueThatLinesShare() {
        Line line = folder.read("/lines/L2/soak=1 h").plant().lines().get(1);

        assertThat(line.startStop().soakS()).isEqualTo(new Law.Fixed(3600));
    }

    @Test
    void reachesIntoListsAndEscapedKeys() {
        folder.replace("plant.yaml", "die wipe:", "die/wipe~1:");

        List<Line> lines = folder.read("/lines/L1/stoppages/die~1wipe~01/takes=6 min", "/lines/L2/winder/crew/0=packer")
                .plant()
                .lines();

        assertThat(lines.get(0).stoppages().get(1).durationS()).isEqualTo(new Law.Fixed(360));
        assertThat(lines.get(1).winder().crew().roles()).containsExactly("packer", "setter");
    }

    @Test
    void takesAKeyOutWithNull() {
        Line line = folder.read("/lines/L1/overlength=null").plant().lines().get(0);

        assertThat(line.overlength()).isZero();
    }

    @Test
    void letsTheLaterSettingWin() {
        Line line = folder.read("/lines/L1/accumulator=80 m", "/lines/L1/accumulator=90 m")
                .plant()
                .lines()
                .get(0);

        assertThat(line.accumulator().capacityM()).isEqualTo(90);
    }

    @Test
    void namesTheCommandLineInAFault() {
        Fault fault = folder.onlyFault("/lines/L1/accumulator=80");

        assertThat(fault.kind()).isEqualTo(FaultKind.WRONG_UNIT);
        assertThat(fault.text())
                .isEqualTo("--set: /lines/L1/accumulator = 80. Must be a length in m, mm, cm, km.\n"
                        + "  Mend: write a number with a point and one of these units, for example 60 m.");
    }

    @Test
    void reportsAPointerToAnUnknownKey() {
        Fault fault = folder.onlyFault("/lines/L1/acumulator=80 m");

        assertThat(fault.kind()).isEqualTo(FaultKind.UNKNOWN_KEY);
        assertThat(fault.field()).isEqualTo("/lines/L1/acumulator");
        assertThat(fault.mend()).isEqualTo("rename it to accumulator, or delete it");
    }

    @Test
    void refusesWhatIsNoPointer() {
        Fault fault = folder.onlyFault("lines/L1/accumulator=80 m");

        assertThat(fault.kind()).isEqualTo(FaultKind.BAD_POINTER);
        assertThat(fault.text())
                .isEqualTo("--set: setting = lines/L1/accumulator=80 m."
                        + " Must be a JSON Pointer, an equals sign and a value.\n"
                        + "  Mend: write it like --set /lines/L3/accumulator=\"80 m\".");
    }

    @Test
    void refusesASettingWithoutAValueAndAnIndexBeyondTheList() {
        assertThat(folder.onlyFault("/lines/L1/accumulator").kind()).isEqualTo(FaultKind.BAD_POINTER);
        assertThat(folder.onlyFault("/lines/L1/polymers/2=PLA").allowed())
                .isEqualTo("Must lead to a value; /lines/L1/polymers is a list of 2, counted from 0.");
    }

    @Test
    void refusesAPathThroughAText() {
        assertThat(folder.onlyFault("/lines/L1/rate/high=3 kg/h").allowed())
                .isEqualTo("Must lead to a value; /lines/L1/rate is text and has no part high.");
    }

    @Test
    void refusesAValueThatIsNotYaml() {
        Fault fault = folder.onlyFault("/lines/L1/winder/stop={fixed: 3 s");

        assertThat(fault.kind()).isEqualTo(FaultKind.BAD_SYNTAX);
        assertThat(fault.origin().where()).isEqualTo("--set");
    }
}
