package spoolyard.core.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.core.random.Streams;

/**
 * The simulated diameter against published formulas. Fixed seeds; tolerances are four standard errors of the mean of 40
 * batches (two-sided level 99.97 % by Student's t with 39 degrees of freedom).
 */
class DiameterTraceTheoryTest {
    private static final int BATCHES = 40;
    private static final int SAMPLES = 40_000;
    private static final double STANDARD_ERRORS = 4;

    private interface Count {
        double of(double before, double now);
    }

    private static void assertMean(GaugeLoop loop, Count count, double expected) {
        DiameterTrace trace = new DiameterTrace(loop, new Streams(20270304, 0).uniforms("trace"));
        double sum = 0;
        double squares = 0;
        double before = trace.nextMm();
        for (int batch = 0; batch < BATCHES; batch++) {
            double ofBatch = 0;
            for (int i = 0; i < SAMPLES; i++) {
                double now = trace.nextMm();
                ofBatch += count.of(before, now) / SAMPLES;
                before = now;
            }
            sum += ofBatch;
            squares += ofBatch * ofBatch;
        }
        double mean = sum / BATCHES;
        double error = Math.sqrt((squares / BATCHES - mean * mean) / (BATCHES - 1));
        assertThat(mean).isCloseTo(expected, within(STANDARD_ERRORS * error));
        assertThat(error).isLessThan(0.05 * expected);
    }

    @ParameterizedTest
    @CsvSource({"0.3", "0.9", "0.98"})
    void withoutCorrectionCrossesNominalAsOftenAsTheCosineFormulaSays(double phi) {
        // Chance of a change of sign of a normal process: acos(rho) / pi. Kedem, Time Series Analysis by Higher Order
        // Crossings, 1994, chapter 4.
        GaugeLoop loop = new GaugeLoop(1, 5, 0, 1, phi, 0);

        assertMean(loop, (before, now) -> before * now < 0 ? 1 : 0, Math.acos(phi) / Math.PI);
    }

    @ParameterizedTest
    @CsvSource({"7,0.006,0.008,0.5", "7,0.006,0.008,0", "18,0.004,0.012,0.9", "1,0.006,0.008,0.2"})
    void hasTheExactVariance(int dead, double white, double drift, double gain) {
        GaugeLoop loop = new GaugeLoop(1, dead, white, drift, 0.98, gain);
        double sd = StationaryDiameter.of(loop).standardDeviationMm();

        assertMean(loop, (before, now) -> now * now, sd * sd);
    }

    @ParameterizedTest
    @CsvSource({"7,0.5,0.015", "7,0,0.02", "18,0.9,0.02", "1,0.2,0.015"})
    void leavesTheToleranceAtTheExactRate(int dead, double gain, double tolerance) {
        GaugeLoop loop = new GaugeLoop(1, dead, 0.006, 0.008, 0.98, gain);
        double exits = StationaryDiameter.of(loop).exitsPerS(tolerance);

        assertMean(loop, (before, now) -> Math.abs(before) <= tolerance && Math.abs(now) > tolerance ? 1 : 0, exits);
    }

    @Test
    void joinsRunsThatAreCloserThanTheJoiningTime() {
        ExcursionCounter apart = new ExcursionCounter(1, 1);
        ExcursionCounter joined = new ExcursionCounter(1, 3);

        for (double y : new double[] {0, 2, 0, 0, -3, 2, 0, 0, 0, 5, 0, 0, 0, 0}) {
            apart.add(y);
            joined.add(y);
        }

        assertThat(apart.sortedLengths()).containsExactly(1, 1, 2);
        assertThat(joined.sortedLengths()).containsExactly(1, 5);
        assertThat(joined.exits()).isEqualTo(3);
        assertThat(joined.outside()).isEqualTo(4);
    }

    @Test
    void rateTimesLengthIsTheShareOutsideWhenNothingIsJoined() {
        GaugeLoop loop = new GaugeLoop(1, 7, 0.006, 0.008, Math.exp(-1 / 300.0), 0.5);

        List<ToleranceFinding> findings =
                new ToleranceStudy(loop, 0, 1_000_000).of(List.of(0.01, 0.015, 0.02, 0.03), 7);

        for (ToleranceFinding finding : findings) {
            double share = finding.perRunningH() / 3600 * finding.lengthS().mean();
            // Lengths of n excursions: standard error of their mean is below 1 / sqrt(n) of it, as its cv is below 1.
            assertThat(share)
                    .isCloseTo(
                            finding.shareOutside(),
                            within(4 * finding.shareOutside() / Math.sqrt(Math.max(16, finding.seen()))));
        }
        assertThat(findings.get(0).seen()).isGreaterThan(1000);
    }

    @Test
    void aRareExcursionHasTheExactRateAndLengthAlthoughNoneIsSeen() {
        GaugeLoop loop = new GaugeLoop(1, 7, 0.006, 0, 0.5, 0);

        ToleranceFinding finding =
                new ToleranceStudy(loop, 5, 1000).of(List.of(0.03), 1).get(0);

        // White noise: out with p = 2 (1 - Phi(5)) = 5.733e-7 (Abramowitz and Stegun, table 26.2, from memory), so
        // p (1 - p) exits a second, each of 1 / (1 - p) seconds.
        assertThat(finding.seen()).isZero();
        assertThat(finding.perRunningH()).isCloseTo(3600 * 5.733e-7, within(1e-6));
        assertThat(finding.lengthS().mean()).isCloseTo(1, within(1e-6));
    }

    @Test
    void theSameSeedFindsTheSame() {
        GaugeLoop loop = new GaugeLoop(1, 7, 0.006, 0.008, 0.99, 0.5);
        ToleranceStudy study = new ToleranceStudy(loop, 2, 100_000);

        assertThat(study.of(List.of(0.015), 1)).isEqualTo(study.of(List.of(0.015), 1));
        assertThat(study.of(List.of(0.015), 1)).isNotEqualTo(study.of(List.of(0.015), 2));
    }
}
