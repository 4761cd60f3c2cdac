package spoolyard.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoolyard.core.colour.Saunderson;
import spoolyard.core.colour.Viewing;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.PurgeEstimate;
import spoolyard.core.plant.PurgeFormula;
import spoolyard.core.policy.PurgeTable;
import spoolyard.core.purge.PurgeModel;
import spoolyard.core.washout.LaminarPipe;
import spoolyard.core.washout.PlugAndTank;
import spoolyard.core.washout.SingleScrew;
import spoolyard.core.washout.TanksInSeries;
import spoolyard.scenarios.check.LoggedPurge;
import spoolyard.scenarios.check.PurgeBasis;
import spoolyard.scenarios.check.PurgeInputs;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;

/** The purge estimate of a scenario, from the file to what a changeover purges. */
final class PurgeEstimateTest {
    private static final String WASHOUT = "/changeover/purge_estimate/washout=";

    @TempDir
    private Path parent;

    private ScenarioFolder folder;

    @BeforeEach
    void copy() {
        folder = ScenarioFolder.everything(parent);
    }

    private static double purgeKg(Scenario scenario, String line, String from, String to) {
        Line on = scenario.plant().lines().stream()
                .filter(each -> each.name().equals(line))
                .findFirst()
                .orElseThrow();
        return new PurgeTable(scenario.plant().changeovers())
                .purgeKg(on, product(scenario, from), product(scenario, to))
                .orElseThrow();
    }

    private static Product product(Scenario scenario, String colour) {
        Polymer pla = scenario.purge().polymers().get(0);
        return scenario.purge().colours().stream()
                .map(PurgeInputs.OfferedColour::colour)
                .filter(each -> each.code().equals(colour))
                .map(each -> new Product(pla, each, 1.75, 1))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void readsEveryKey() {
        PurgeModel model = folder.read().purge().estimate().orElseThrow().model();

        assertThat(model)
                .isEqualTo(new PurgeModel(
                        new PurgeModel.Looks(Viewing.D65_10, new Saunderson(0.01, 0.55), 1.2),
                        new PlugAndTank(0.45),
                        1.8,
                        0.9,
                        0.003));
    }

    @Test
    void fillsInWhatIsLeftOut() {
        folder.write(
                "plant.yaml",
                folder.text("plant.yaml")
                        .replaceAll("(?m)^    (tolerance|surface|volume|mixing_exponent|resin|leave_out): .*\n", ""));

        PurgeModel model = folder.read().purge().estimate().orElseThrow().model();

        assertThat(model)
                .isEqualTo(new PurgeModel(
                        new PurgeModel.Looks(Viewing.D65_10, Saunderson.NONE, 1), new PlugAndTank(0.45), 1, 1, 0.002));
    }

    @Test
    void knowsFourLawsOfWashout() {
        assertThat(List.of("{plug_share: 38 %}", "{tanks_in_series: 3}", "single screw", "{laminar_pipe: 0.4}"))
                .extracting(law -> folder.read(WASHOUT + law)
                        .purge()
                        .estimate()
                        .orElseThrow()
                        .model()
                        .washout())
                .containsExactly(new PlugAndTank(0.38), new TanksInSeries(3), new SingleScrew(), new LaminarPipe(0.4));
    }

    /** A measured row on its line; else the estimate; else, for a colour that is left out, the formula. */
    @Test
    void goesBeforeTheFormulaAndBehindTheMeasured() {
        Scenario both = folder.read();
        Scenario formula = folder.read("/changeover/purge_estimate=null");
        PurgeEstimate estimate = (PurgeEstimate) both.plant().changeovers().unmeasured();

        assertThat(formula.plant().changeovers().unmeasured()).isInstanceOf(PurgeFormula.class);
        assertThat(estimate.pairs())
                .extracting(pair -> pair.fromColour() + " " + pair.toColour())
                .containsExactly("NAT RED", "RED NAT");
        assertThat(purgeKg(both, "L1", "NAT", "RED")).isEqualTo(2.5);
        assertThat(purgeKg(both, "L2", "NAT", "RED"))
                .isEqualTo(
                        estimate.pairs().get(0).holdUps()
                                * both.plant().lines().get(1).holdUpKg(),
                        within(1e-12))
                .isNotEqualTo(purgeKg(formula, "L2", "NAT", "RED"));
        assertThat(purgeKg(both, "L2", "BLK", "RED")).isEqualTo(purgeKg(formula, "L2", "BLK", "RED"));
    }

    @Test
    void refusesAColourThatNoSurfaceHas() {
        folder.replace("colours.csv", "RED,Red,43,58,38", "RED,Red,43,140,38");

        Fault fault = folder.onlyFault();

        assertThat(fault.kind()).isEqualTo(FaultKind.CONTRADICTION);
        assertThat(fault.text())
                .isEqualTo(folder.at("colours.csv", "RED,Red")
                        + ": L, a, b = 43.0, 140.0, 38.0. Must be a colour that a surface can have under the"
                        + " light of purge_estimate, and throw back more than its surface alone.\n"
                        + "  Mend: measure it again, mend measured_under or surface, or write RED under leave_out.");
    }

    @Test
    void refusesAColourThatIsDarkerInABandThanTheSurface() {
        folder.replace("plant.yaml", "leave_out: [BLK]", "leave_out: []")
                .replace("plant.yaml", "outside: 1 %", "outside: 2.2 %");

        assertThat(folder.faults())
                .extracting(fault -> fault.origin().where())
                .containsExactly(folder.at("colours.csv", "RED,Red"));
    }

    /** A table written by the estimate may come back as changeovers file; it does not become a measurement. */
    @Test
    void knowsRowsThatAreNoMeasurements() {
        folder.write("changeovers.csv", "from,to,purge_kg,basis\nNAT,RED,2.5,estimated\nRED,NAT,9.5,\n");

        assertThat(folder.read().purge().log())
                .extracting(LoggedPurge::basis)
                .containsExactly(PurgeBasis.ESTIMATED, PurgeBasis.MEASURED);
        assertThat(folder.replace("changeovers.csv", "estimated", "guessed")
                        .onlyFault()
                        .text())
                .contains(": basis = guessed. Must be one of: measured, estimated, extrapolated, formula.");
    }

    @Test
    void tellsWhereEachMeasuredRowStands() {
        assertThat(folder.read().purge().log())
                .extracting(row -> row.origin().where() + " " + row.purge().purgeKg())
                .containsExactly(
                        folder.at("changeovers.csv", "L1,") + " 2.5", folder.at("changeovers.csv", "*,") + " 9.5");
    }
}
