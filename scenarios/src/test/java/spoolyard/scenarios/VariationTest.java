package spoolyard.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Shift;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;

final class VariationTest {
    @TempDir
    private Path parent;

    private ScenarioFolder base;

    @BeforeEach
    void copy() {
        base = ScenarioFolder.everything(parent);
    }

    @Test
    void changesOnlyWhatThePatchSays() throws Exception {
        base.write("thin.yaml", "base: plant.yaml\nshifts: {pattern: {N: {crew: {operator: 1}}}}\n");

        Scenario varied = ScenarioReader.read(base.path().resolve("thin.yaml"), List.of());

        Scenario plain = base.read();
        assertThat(varied.plant().lines()).isEqualTo(plain.plant().lines());
        assertThat(headsOf(varied, "D")).isEqualTo(headsOf(plain, "D"));
        assertThat(headsOf(plain, "N")).startsWith(List.of(2, 1, 1, 0));
        assertThat(headsOf(varied, "N")).startsWith(List.of(1, 1, 1, 0));
    }

    private static List<List<Integer>> headsOf(Scenario scenario, String shift) {
        return scenario.plant().shifts().stream()
                .filter(s -> s.name().equals(shift))
                .map(Shift::heads)
                .toList();
    }

    @Test
    void takesOutWhatIsNull() throws Exception {
        base.write("out.yaml", "base: plant.yaml\nlines: {L1: {stoppages: {die wipe: null}}}\n");

        Scenario varied = ScenarioReader.read(base.path().resolve("out.yaml"), List.of());

        assertThat(varied.plant().lines().get(0).stoppages()).extracting("name").containsExactly("strand break");
    }

    @Test
    void stacksVariations() throws Exception {
        base.write("one.yaml", "base: plant.yaml\nname: One\nlines: {L1: {accumulator: 70 m}}\n");
        base.write("two/plant.yaml", "base: ../one.yaml\nname: Two\nlines: {L2: {accumulator: 50 m}}\n");

        Scenario varied = ScenarioReader.read(base.path().resolve("two"), List.of());

        assertThat(varied.info().name()).isEqualTo("Two");
        assertThat(varied.plant().lines())
                .extracting(l -> l.accumulator().capacityM())
                .containsExactly(70.0, 50.0);
        assertThat(varied.info().files())
                .startsWith(base.shown("two/plant.yaml"), base.shown("one.yaml"), base.shown("plant.yaml"));
    }

    @Test
    void resolvesATableAgainstTheFileThatNamesIt() throws Exception {
        base.write("two/plant.yaml", "base: ..\nfiles: {orders: mine.csv}\n");
        base.write(
                "two/mine.csv",
                base.text("orders.csv").replace("A-1,PLA,RED,1.75,1.0,100,100.0", "A-1,PLA,RED,1.75,1.0,7,7"));

        Scenario varied = ScenarioReader.read(base.path().resolve("two"), List.of());

        assertThat(varied.plant().book().orders().get(0).spools()).isEqualTo(7);
    }

    @Test
    void namesTheFileInWhichTheWrongValueStands() {
        base.write("bad.yaml", "base: plant.yaml\nlines:\n  L1: {accumulator: 60 kg}\n");
        base.replace("plant.yaml", "overlength: 0.2 %", "overlength: 0.2 m");

        List<Fault> faults = ScenarioFolder.faultsOf(base.path().resolve("bad.yaml"));

        assertThat(faults)
                .extracting(f -> f.origin().where())
                .containsExactly(base.shown("bad.yaml") + ":3", base.at("plant.yaml", "overlength"));
    }

    @Test
    void refusesABaseThatLeadsBack() {
        base.write("a.yaml", "base: b.yaml\n")
                .write("b.yaml", "# b\nbase: c/\n")
                .write("c/plant.yaml", "base: ../a.yaml\n");

        List<Fault> faults = ScenarioFolder.faultsOf(base.path().resolve("a.yaml"));

        assertThat(faults).singleElement().satisfies(fault -> {
            assertThat(fault.kind()).isEqualTo(FaultKind.CIRCULAR_BASE);
            assertThat(fault.text())
                    .isEqualTo(base.shown("c/plant.yaml") + ":1: /base = " + base.shown("a.yaml")
                            + ". Must not lead back to a file that varies this one.\n"
                            + "  Mend: name a base that stands on its own.");
        });
    }

    @Test
    void refusesItselfAsBase() {
        base.write("a.yaml", "name: a\nbase: ./a.yaml\n");

        Fault fault = ScenarioFolder.faultsOf(base.path().resolve("a.yaml")).get(0);

        assertThat(fault.kind()).isEqualTo(FaultKind.CIRCULAR_BASE);
        assertThat(fault.line()).isEqualTo(2);
    }

    @Test
    void reportsAMissingBaseWhereItIsNamed() {
        base.write("a.yaml", "base: nowhere\n");

        Fault fault = ScenarioFolder.faultsOf(base.path().resolve("a.yaml")).get(0);

        assertThat(fault.kind()).isEqualTo(FaultKind.MISSING_FILE);
        assertThat(fault.origin().where()).isEqualTo(base.shown("a.yaml") + ":1");
        assertThat(fault.value()).isEqualTo(base.shown("nowhere"));
    }

    @Test
    void refusesABaseThatIsNoName() {
        base.write("a.yaml", "base: [plant.yaml]\n");

        Fault fault = ScenarioFolder.faultsOf(base.path().resolve("a.yaml")).get(0);

        assertThat(fault.kind()).isEqualTo(FaultKind.WRONG_SHAPE);
        assertThat(fault.field()).isEqualTo("/base");
    }

    @Test
    void tellsHowToReplaceAnInheritedDistribution() {
        base.write("a.yaml", "base: plant.yaml\nlines: {L1: {winder: {stop: {exponential: {mean: 18 s}}}}}\n");

        Fault fault = ScenarioFolder.faultsOf(base.path().resolve("a.yaml")).get(0);

        assertThat(fault.kind()).isEqualTo(FaultKind.IMPOSSIBLE_DISTRIBUTION);
        assertThat(fault.value()).isEqualTo("{lognormal, exponential}");
        assertThat(fault.mend()).isEqualTo("leave one; a merge patch takes an inherited one out with lognormal: null");
    }

    @Test
    void takesOutOfALineWhatItGetsFromWhatLinesShare() throws Exception {
        base.replace("plant.yaml", "every_line:\n", "every_line:\n  overlength: 3 %\n")
                .write("a.yaml", "base: plant.yaml\nlines: {L2: {overlength: null}}\n");

        Scenario plain = base.read();
        Scenario varied = ScenarioReader.read(base.path().resolve("a.yaml"), List.of());

        assertThat(plain.plant().lines()).extracting(Line::overlength).containsExactly(0.002, 0.03);
        assertThat(varied.plant().lines()).extracting(Line::overlength).containsExactly(0.002, 0.0);
    }

    @Test
    void reachesTheLinesThatDoNotSayOtherwiseThroughWhatLinesShare() throws Exception {
        base.write("a.yaml", "base: plant.yaml\nevery_line: {overlength: 3 %}\nlines: {L3: null, L2: {strands: 1}}\n")
                .replace("plant.yaml", "  L2:\n    rate: 44", "  L3: {accumulator: 5 m}\n  L2:\n    rate: 44");

        Scenario varied = ScenarioReader.read(base.path().resolve("a.yaml"), List.of());

        assertThat(varied.plant().lines()).extracting(Line::name).containsExactly("L1", "L2");
        assertThat(varied.plant().lines()).extracting(Line::overlength).containsExactly(0.002, 0.03);
        assertThat(varied.plant().lines()).extracting(Line::strands).containsExactly(1, 1);
    }

    @Test
    void setsWhatLinesShareBeforeTheLines() {
        Scenario varied = base.read("/lines/L2/soak=20 min", "/every_line/soak=40 min");

        assertThat(varied.plant().lines())
                .extracting(l -> l.startStop().soakS().mean())
                .containsExactly(2400.0, 1200.0);
    }

    @Test
    void reportsANullThatTakesOutNothing() {
        base.write(
                "a.yaml",
                "base: plant.yaml\nlines:\n  L1: {stoppages: {strand brake: null}}\nshifts: {extra: {christmas: null}}\n");

        List<Fault> faults = ScenarioFolder.faultsOf(base.path().resolve("a.yaml"));

        assertThat(faults).extracting(Fault::kind).containsOnly(FaultKind.UNKNOWN_KEY);
        assertThat(faults)
                .extracting(Fault::text)
                .containsExactly(
                        base.shown("a.yaml") + ":3: /lines/L1/stoppages/strand brake = null."
                                + " There must be such a key to take out.\n"
                                + "  Mend: write strand break, give it a value, or delete the key.",
                        base.shown("a.yaml") + ":4: /shifts/extra/christmas = null."
                                + " There must be such a key to take out.\n"
                                + "  Mend: give it a value, or delete the key.");
    }

    @Test
    void reportsALineThatIsTakenOutButNotThere() {
        base.write("a.yaml", "base: plant.yaml\nlines: {L9: null}\n");

        List<Fault> faults = ScenarioFolder.faultsOf(base.path().resolve("a.yaml"));

        assertThat(faults).singleElement().satisfies(f -> assertThat(f.field()).isEqualTo("/lines/L9"));
    }

    @Test
    void reportsLinesThatAreNoMapping() {
        base.write("a.yaml", "base: plant.yaml\nlines: [L1]\n").write("b.yaml", "base: plant.yaml\nevery_line: 5\n");

        assertThat(ScenarioFolder.faultsOf(base.path().resolve("a.yaml")))
                .anySatisfy(f -> assertThat(f.text()).contains("a.yaml:2: /lines = (a list of 1). Must be names"));
        assertThat(ScenarioFolder.faultsOf(base.path().resolve("b.yaml")))
                .anySatisfy(f -> assertThat(f.text()).contains("b.yaml:2: /every_line = 5. Must be keys with values"));
    }
}
