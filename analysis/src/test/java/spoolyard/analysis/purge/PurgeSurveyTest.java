package spoolyard.analysis.purge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.ChangeoverRules.MeasuredPurge;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Polymer;
import spoolyard.core.purge.PurgeModel;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.check.LoggedPurge;
import spoolyard.scenarios.check.PurgeBasis;
import spoolyard.scenarios.check.PurgeInputs;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.fault.ScenarioException;

/** Purges of the invented reference plant with an estimate in place of its formula. */
class PurgeSurveyTest {
    private static final Path ORRENVALE = Path.of("..", "scenarios", "orrenvale");
    private static final String ESTIMATE = "/changeover/purge_estimate="
            + "{measured_under: D65 10°, washout: {plug_share: 40 %}, volume: 1.8, mixing_exponent: 0.92,"
            + " leave_out: [SIL]}";

    private static Scenario estimated(String... sets) {
        List<String> all = new ArrayList<>(List.of(ESTIMATE));
        all.addAll(List.of(sets));
        return read(all);
    }

    private static Scenario read(List<String> sets) {
        try {
            return ScenarioReader.read(ORRENVALE, sets);
        } catch (ScenarioException fault) {
            throw new AssertionError(fault.getMessage(), fault);
        }
    }

    private static PurgeMatrix matrix(Scenario scenario, String line, String polymer) {
        PurgeSurvey survey = new PurgeSurvey(scenario.plant(), scenario.purge());
        Line on = scenario.plant().lines().stream()
                .filter(each -> each.name().equals(line))
                .findFirst()
                .orElseThrow();
        Polymer in = survey.polymersOn(on).stream()
                .filter(each -> each.code().equals(polymer))
                .findFirst()
                .orElseThrow();
        return survey.matrix(on, in);
    }

    /** The estimate knows no lightness; its order is that of L* all the same. */
    @Test
    void ordersTheColoursFromLightToDarkWithoutBeingTold() {
        PurgeMatrix matrix = matrix(estimated(), "L4", "PLA");

        assertThat(matrix.correlationWithLightness()).isLessThan(-0.85);
        assertThat(matrix.colours())
                .extracting(Colour::code)
                .startsWith("NAT", "IVR", "WHT")
                .endsWith("BLK");
    }

    /** L2: 18 kg/h PLA, one strand of 1.75 mm: 1.24 g/cm3 x pi x 1.75^2 / 4 = 2.98255 g/m. Measured: 9.1 kg. */
    @Test
    void tellsMinutesAndMetresOfAMeasuredPurge() {
        PurgeEntry entry = matrix(estimated(), "L2", "PLA").entry("BLK", "WHT").orElseThrow();

        assertThat(entry.kg()).isEqualTo(9.1);
        assertThat(entry.minutes()).isEqualTo(60 * 9.1 / 18, within(1e-9));
        assertThat(entry.metresPerStrand()).isEqualTo(9.1 / 0.00298255, within(0.1));
        assertThat(entry.basis()).isEqualTo(PurgeBasis.MEASURED);
    }

    /** Strands share the output: half the metres on each of two. */
    @Test
    void dividesTheMetresAmongTheStrands() {
        PurgeEntry one = matrix(estimated(), "L5", "PLA").entry("BLK", "WHT").orElseThrow();

        assertThat(one.metresPerStrand()).isEqualTo(26.5 / 2 / 0.00298255, within(0.1));
    }

    @Test
    void aFasterLinePurgesTheSameMassInLessTime() {
        PurgeEntry slow = matrix(estimated(), "L4", "PLA").entry("BLK", "WHT").orElseThrow();
        PurgeEntry fast = matrix(estimated("/lines/L4/rate=26 kg/h"), "L4", "PLA")
                .entry("BLK", "WHT")
                .orElseThrow();

        assertThat(fast.kg()).isEqualTo(slow.kg());
        assertThat(fast.minutes() / slow.minutes()).isEqualTo(24.0 / 26, within(1e-9));
    }

    @Test
    void tellsWhatEachFigureRestsOn() {
        Scenario scenario = estimated();
        PurgeMatrix onL4 = matrix(scenario, "L4", "PLA");

        assertThat(onL4.count(PurgeBasis.MEASURED)).isZero();
        assertThat(onL4.entry("SIL", "WHT").orElseThrow().basis()).isEqualTo(PurgeBasis.FORMULA);
        assertThat(onL4.entry("RED", "WHT").orElseThrow().basis()).isEqualTo(PurgeBasis.ESTIMATED);
        // natural hides in white more than any measured pair does
        assertThat(onL4.entry("NAT", "BLK").orElseThrow().basis()).isEqualTo(PurgeBasis.EXTRAPOLATED);
        // no hold-up as small as that of L1, and no ABS, was measured
        assertThat(matrix(scenario, "L1", "PETG").count(PurgeBasis.ESTIMATED)).isZero();
        assertThat(matrix(scenario, "L3", "ABS").count(PurgeBasis.ESTIMATED)).isZero();
        assertThat(matrix(read(List.of()), "L4", "PLA").count(PurgeBasis.FORMULA))
                .isEqualTo(24 * 23);
    }

    @Test
    void calibratesOnTheMeasuredRows() throws TooLittleMeasuredException {
        Scenario scenario = estimated("/changeover/purge_estimate/leave_out=[RED]");

        Calibration calibration = Calibration.of(
                scenario.plant(), scenario.purge(), scenario.purge().estimate().orElseThrow());

        assertThat(calibration.used()).hasSize(8);
        assertThat(calibration.notUsed())
                .extracting(Calibration.NotUsed::reason)
                .containsExactly("a colour is left out", "a colour is left out");
        assertThat(calibration.used().get(0).row().origin().where()).endsWith("changeovers.csv:2");
    }

    /**
     * Measured purges made up with a known volume and exponent are found again, exactly, and one row that is three times
     * too high is the only one said to fit badly.
     */
    @Test
    void findsTheVolumeAndExponentThatMadeTheRows() throws TooLittleMeasuredException {
        Scenario scenario = estimated();
        PurgeModel truth = scenario.purge().estimate().orElseThrow().model().with(2.3, 0.7);
        List<Double> noise = Stream.generate(() -> 0.0).limit(PAIRS.size()).toList();

        Calibration exact = calibrated(scenario, truth, noise);
        List<Double> small = new ArrayList<>();
        for (int i = 0; i < PAIRS.size(); i++) {
            small.add(i == 4 ? Math.log(3) : i % 2 == 0 ? 0.05 : -0.05);
        }
        Calibration spoilt = calibrated(scenario, truth, small);

        assertThat(exact.volumeHoldUps()).isEqualTo(2.3, within(1e-6));
        assertThat(exact.mixingExponent()).isEqualTo(0.7, within(1e-6));
        for (int i = 0; i < PAIRS.size(); i++) {
            assertThat(spoilt.isOutlier(i)).as("row %d", i).isEqualTo(i == 4);
        }
    }

    /**
     * The 95 % intervals hold the truth in 95 of 100 logs: 1000 logs with lognormal errors of 20 %, fixed seed, must lie in
     * the binomial 99.9 % range 0.95 +/- 3.29 sqrt(0.95 x 0.05 / 1000) = 0.927 to 0.973.
     */
    @Test
    void itsIntervalsHoldTheTruthAsOftenAsTheySay() throws TooLittleMeasuredException {
        Scenario scenario = estimated();
        PurgeModel truth = scenario.purge().estimate().orElseThrow().model().with(1.8, 0.9);
        Random luck = new Random(20_270_301);
        int logs = 1000;
        int volumes = 0;
        int exponents = 0;
        for (int i = 0; i < logs; i++) {
            List<Double> noise = Stream.generate(() -> 0.2 * luck.nextGaussian())
                    .limit(PAIRS.size())
                    .toList();
            Calibration found = calibrated(scenario, truth, noise);
            volumes += isWithin(found, 0, Math.log(1.8)) ? 1 : 0;
            exponents += isWithin(found, 1, 0.9) ? 1 : 0;
        }

        assertThat(volumes / (double) logs).isBetween(0.927, 0.973);
        assertThat(exponents / (double) logs).isBetween(0.927, 0.973);
    }

    private static boolean isWithin(Calibration found, int parameter, double truth) {
        return Math.abs(found.fit().parameters().get(parameter) - truth)
                <= found.fit().halfWidth(parameter, 0.95);
    }

    @Test
    void doesNotCalibrateOnTooLittle() {
        Scenario scenario = estimated();
        PurgeModel model = scenario.purge().estimate().orElseThrow().model();

        assertThatExceptionOfType(TooLittleMeasuredException.class)
                .isThrownBy(() -> calibrated(scenario, model, List.of(0.0, 0.1, 0.0)))
                .withMessage("3 of 3 rows can be used");
        assertThatExceptionOfType(TooLittleMeasuredException.class)
                .isThrownBy(() -> Calibration.of(
                        scenario.plant(),
                        log(scenario, alike(scenario, model)),
                        scenario.purge().estimate().orElseThrow()))
                .withMessageContaining("too much alike");
    }

    private static final List<List<String>> PAIRS = List.of(
            List.of("BLK", "WHT"),
            List.of("WHT", "BLK"),
            List.of("RED", "YEL"),
            List.of("YEL", "RED"),
            List.of("BLU", "LGR"),
            List.of("ORG", "BRN"),
            List.of("NVY", "IVR"),
            List.of("GRN", "MNT"),
            List.of("MGR", "BLK"),
            List.of("PNK", "PUR"));

    private static Calibration calibrated(Scenario scenario, PurgeModel truth, List<Double> noise)
            throws TooLittleMeasuredException {
        Estimates estimates = ESTIMATES.get(0);
        List<LoggedPurge> rows = new ArrayList<>();
        for (int i = 0; i < noise.size(); i++) {
            String from = PAIRS.get(i).get(0);
            String to = PAIRS.get(i).get(1);
            double holdUps = truth.volumeHoldUps() * truth.washout().turnovers(estimates.hiddenShare(from, to, truth));
            rows.add(row(from, to, 0.85 * holdUps * Math.exp(noise.get(i))));
        }
        return Calibration.of(
                scenario.plant(),
                log(scenario, rows),
                scenario.purge().estimate().orElseThrow());
    }

    private static final List<Estimates> ESTIMATES = List.of(
            Estimates.of(estimated().purge(), estimated().purge().estimate().orElseThrow()));

    private static List<LoggedPurge> alike(Scenario scenario, PurgeModel model) {
        return Stream.of(1.0, 1.1, 0.9, 1.05, 0.95)
                .map(kg -> row("BLK", "WHT", 9 * kg))
                .toList();
    }

    private static LoggedPurge row(String from, String to, double kg) {
        return new LoggedPurge(
                new MeasuredPurge("L2", "PLA", from, to, kg),
                PurgeBasis.MEASURED,
                new Origin("changeovers.csv", 2, "purge_kg"));
    }

    private static PurgeInputs log(Scenario scenario, List<LoggedPurge> rows) {
        return new PurgeInputs(
                scenario.purge().polymers(),
                scenario.purge().colours(),
                rows,
                scenario.purge().estimate());
    }
}
