package spoolyard.analysis.experiment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

final class IntervalTest {
    /** Source of the quantiles: GNU R 4.2.2, qt(p, df); see SOURCES.md beside the file. */
    @ParameterizedTest
    @CsvFileSource(resources = "student_t_quantiles.csv", numLinesToSkip = 1)
    void usesTheQuantilesOfStudentsT(int degreesOfFreedom, double p, double quantile) {
        double[] values = unitVariance(degreesOfFreedom + 1);

        Interval interval = Interval.of(values, 2 * p - 1);

        double expected = quantile / Math.sqrt(degreesOfFreedom + 1);
        assertThat(interval.halfWidth().orElseThrow()).isCloseTo(expected, within(1e-9 * expected + 1e-12));
    }

    /** Source: NIST/ITL Statistical Reference Datasets, certified mean and standard deviation. */
    @ParameterizedTest
    @CsvSource({"nist_lew.txt, -177.435, 277.332168044316", "nist_mavro.txt, 2.001856, 0.000429123454003053"})
    void agreesWithCertifiedMeanAndDeviation(String file, double mean, double deviation) throws IOException {
        double[] values = numbersIn(file);

        Interval interval = Interval.of(values, 0.95);

        assertThat(interval.mean()).isCloseTo(mean, within(1e-13 * Math.abs(mean)));
        assertThat(deviationBehind(interval)).isCloseTo(deviation, within(1e-9 * deviation));
    }

    /** Source: NIST/ITL StRD, NumAcc3 and NumAcc4: a deviation of 0.1 about a mean of 1e6 and 1e7. */
    @ParameterizedTest
    @CsvSource({"1000000.2, 1e-8", "10000000.2, 1e-7"})
    void keepsTheDeviationBesideALargeMean(double mean, double relativeError) {
        double[] values = DoubleStream.concat(
                        DoubleStream.of(mean),
                        IntStream.range(0, 1000).mapToDouble(i -> i % 2 == 0 ? mean - 0.1 : mean + 0.1))
                .toArray();

        Interval interval = Interval.of(values, 0.95);

        assertThat(interval.mean()).isCloseTo(mean, within(1e-13 * mean));
        assertThat(deviationBehind(interval)).isCloseTo(0.1, within(0.1 * relativeError));
    }

    /**
     * Source: Law, Simulation Modeling and Analysis, example of a 90 % interval from ten observations, 1.34 +/- 0.24
     * (from memory; the arithmetic is checked here to the two decimals printed there).
     */
    @Test
    void givesTheIntervalOfTheTextbookExample() {
        double[] values = {1.20, 1.50, 1.68, 1.89, 0.95, 1.49, 1.58, 1.55, 0.50, 1.09};

        Interval interval = Interval.of(values, 0.90);

        assertThat(interval.mean()).isCloseTo(1.34, within(0.005));
        assertThat(interval.halfWidth().orElseThrow()).isCloseTo(0.24, within(0.005));
    }

    @Test
    void hasNoHalfWidthFromOneReplicationAndSaysSo() {
        Interval interval = Interval.of(new double[] {871}, 0.95);

        assertThat(interval.mean()).isEqualTo(871);
        assertThat(interval.halfWidth()).isEmpty();
        assertThat(interval).hasToString("871.000, no interval (one replication)");
    }

    @Test
    void leavesOutReplicationsWithoutAValue() {
        Interval interval = Interval.of(new double[] {3, Double.NaN, 5}, 0.95);

        assertThat(interval.mean()).isEqualTo(4);
        assertThat(interval.count()).isEqualTo(2);
    }

    @Test
    void isAbsentWhenNoReplicationHasAValue() {
        Interval interval = Interval.of(new double[] {Double.NaN}, 0.95);

        assertThat(interval.isPresent()).isFalse();
        assertThat(interval.mean()).isNaN();
        assertThat(interval).hasToString("no value");
    }

    @Test
    void refusesALevelThatIsNoProbability() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Interval.of(new double[] {1, 2}, 1))
                .withMessage("level = 1.0. Must be between 0 and 1.");
    }

    private static double deviationBehind(Interval interval) {
        double[] unit = unitVariance(interval.count());
        return interval.halfWidth().orElseThrow()
                / Interval.of(unit, interval.level()).halfWidth().orElseThrow();
    }

    /** n values of mean 0 and sample variance 1: one pair of opposite values among zeros. */
    private static double[] unitVariance(int n) {
        double[] values = new double[n];
        values[0] = Math.sqrt((n - 1) / 2.0);
        values[1] = -values[0];
        return values;
    }

    private static double[] numbersIn(String file) throws IOException {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(IntervalTest.class.getResourceAsStream(file)), StandardCharsets.UTF_8))) {
            List<String> lines = reader.lines().filter(line -> !line.isBlank()).toList();
            return lines.stream().mapToDouble(Double::parseDouble).toArray();
        }
    }
}
