package spoolyard.analysis.corners;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static spoolyard.analysis.theory.CheckTable.number;

import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVRecord;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoolyard.analysis.crew.CrewRow;
import spoolyard.analysis.crew.CrewStudy;
import spoolyard.analysis.crew.CrewView;
import spoolyard.analysis.crew.PublishedCurve;
import spoolyard.analysis.crew.Staffing;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.experiment.Progress;
import spoolyard.analysis.experiment.Simultaneous;
import spoolyard.analysis.theory.CheckTable;
import spoolyard.core.process.PlantRun;
import spoolyard.core.record.EventLog;

/**
 * The view of a crew on plants whose lines call at random and nothing else happens: N = 4 to 20 lines, c = 1 to 3
 * operators, service factors X = 0.1 and 0.2, against the table of machine interference.
 *
 * <p>Source: {@code checks/interference/mmc_finite_source.csv} and, for constant work, {@code
 * ashcroft_md1_finite_source.csv}; see {@code checks/SOURCES.md}. Replications of a year from all lines running, fixed
 * seed. All comparisons of a test hold at once with 99 % (Bonferroni).
 */
final class CrewStudyTheoryTest {
    private static final int REPLICATIONS = 10;
    private static final double LEVEL = 0.99;
    private static final double MEAN_REPAIR_S = 600;

    @ParameterizedTest
    @CsvSource({"4, 0.1", "5, 0.1", "6, 0.1", "8, 0.1", "12, 0.1", "20, 0.1", "4, 0.2", "6, 0.2", "8, 0.2", "12, 0.2"})
    void efficiencyWaitAndUseAreThoseOfTheTable(int lines, double serviceFactor) {
        List<CSVRecord> table = CheckTable.rows("interference/mmc_finite_source.csv").stream()
                .filter(row -> number(row, "N_machines") == lines && number(row, "service_factor_X") == serviceFactor)
                .toList();
        List<Integer> operators =
                table.stream().map(row -> (int) number(row, "c_operators")).toList();
        double eachLevel = new Simultaneous(LEVEL, 3 * table.size()).eachLevel();

        CrewView view = view(lines, serviceFactor, "{exponential: {mean: 10 min}}", operators);

        assertThat(operators).isNotEmpty();
        for (int i = 0; i < table.size(); i++) {
            CrewRow row = view.rows().get(i);
            CSVRecord truth = table.get(i);
            String name = String.format(Locale.ROOT, "crew N=%d c=%d X=%.1f ", lines, row.people(), serviceFactor);
            agrees(name + "efficiency", row.efficiency(), number(truth, "efficiency_F"), 0.03, eachLevel);
            agrees(
                    name + "wait s",
                    row.waitS(),
                    MEAN_REPAIR_S * number(truth, "mean_wait_in_service_times"),
                    0.25,
                    eachLevel);
            agrees(name + "operators busy", row.busyShare(), number(truth, "operator_utilisation"), 0.03, eachLevel);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 8, 12, 20})
    void efficiencyIsAshcroftsWhereWorkIsConstant(int lines) {
        CSVRecord truth = CheckTable.rows("interference/ashcroft_md1_finite_source.csv").stream()
                .filter(row ->
                        number(row, "N_machines") == lines && number(row, "k_service_time_over_mean_run_time") == 0.1)
                .findFirst()
                .orElseThrow();
        double waiting = lines - number(truth, "A_N_mean_machines_running") - number(truth, "operator_utilisation");

        CrewView view = view(lines, 1.0 / 11, "10 min", List.of(1));

        Interval efficiency = view.rows().get(0).efficiency();
        agrees("crew Ashcroft N=" + lines + " efficiency", efficiency, 1 - waiting / lines, 0.03, LEVEL);
    }

    /** The load is read off the run, so that the published curve is that of the table but for its chance error. */
    @Test
    void publishedCurveRestsOnTheLoadOfThePlantAsItIs() {
        CrewView view = view(8, 0.1, "{exponential: {mean: 10 min}}", List.of(2));

        assertThat(view.load().workS()).isCloseTo(MEAN_REPAIR_S, within(0.02 * MEAN_REPAIR_S));
        assertThat(view.load().serviceFactor()).isCloseTo(0.1, within(0.002));
        CSVRecord truth = CheckTable.rows("interference/mmc_finite_source.csv").stream()
                .filter(row -> number(row, "N_machines") == 8
                        && number(row, "c_operators") == 2
                        && number(row, "service_factor_X") == 0.1)
                .findFirst()
                .orElseThrow();
        assertThat(PublishedCurve.POOL.efficiency(view.load(), 2))
                .isCloseTo(number(truth, "efficiency_F"), within(0.001));
    }

    private static CrewView view(int lines, double serviceFactor, String repair, List<Integer> operators) {
        double runMin = MEAN_REPAIR_S / 60 * (1 - serviceFactor) / serviceFactor;
        Corner corner = Corner.of("interference/" + lines + "-lines")
                .with("/every_line/winder/crew", "operator")
                .with("/every_line/rate", "0.002 kg/h")
                .with("/every_line/stoppages/tangle/every", "{exponential: {mean: " + runMin + " min}}")
                .with("/every_line/stoppages/tangle/takes", repair);
        return new CrewStudy(
                        plant -> number -> new PlantRun(plant, Corner.SEED, number, EventLog.SILENT).run(),
                        REPLICATIONS,
                        Runtime.getRuntime().availableProcessors())
                .run(Staffing.of(corner.plant(), "operator"), operators, Progress.UNHEARD);
    }

    private static void agrees(String what, Interval usual, double truth, double narrow, double level) {
        double halfWidth = usual.halfWidth().orElseThrow() * quantile(level) / quantile(usual.level());

        assertThat(halfWidth).as("%s: half-width", what).isPositive().isLessThanOrEqualTo(narrow * truth);
        assertThat(usual.mean()).as(what).isCloseTo(truth, within(halfWidth));
        CheckRecord.note(String.format(
                Locale.ROOT, "%s,%.6g,%.6g,%.3g,%d", what, truth, usual.mean(), halfWidth, usual.count()));
    }

    private static double quantile(double level) {
        return new TDistribution(REPLICATIONS - 1).inverseCumulativeProbability(0.5 + level / 2);
    }
}
