package spoolyard.analysis.experiment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import spoolyard.core.random.Normal;
import spoolyard.core.random.Streams;
import spoolyard.core.random.Uniforms;

final class DifferenceTest {
    private static final int EXPERIMENTS = 500;

    /**
     * Source: Law, Simulation Modeling and Analysis, example 10.2 of the paired t interval: two inventory policies, five
     * replications; mean difference 4.98, variance of the mean 2.44, 90 % interval [1.65, 8.31] (from memory; the
     * arithmetic is checked here to the two decimals printed there).
     */
    @Test
    void givesThePairedIntervalOfTheTextbookExample() {
        double[] first = {126.97, 124.31, 126.68, 122.66, 127.23};
        double[] second = {118.21, 120.22, 122.45, 122.68, 119.40};

        Difference difference = Difference.of(second, first, 0.90);

        assertThat(difference.interval().mean()).isCloseTo(4.98, within(0.005));
        assertThat(difference.low()).isCloseTo(1.65, within(0.006));
        assertThat(difference.high()).isCloseTo(8.31, within(0.006));
        assertThat(difference.verdict()).isEqualTo(Difference.Verdict.MORE);
    }

    /** By hand: variances 1 and 4, and the differences -1, 0, 1 have 1: (1 + 4) / 1. */
    @Test
    void tellsHowMuchVarianceTheCommonNumbersRemoved() {
        Difference difference = Difference.of(new double[] {1, 2, 3}, new double[] {0, 2, 4}, 0.95);

        assertThat(difference.varianceRatio()).isCloseTo(5, within(1e-12));
        assertThat(difference.verdict()).isEqualTo(Difference.Verdict.OPEN);
    }

    @Test
    void seesThatNothingDiffersThroughTheRoundingOfSums() {
        Difference difference =
                Difference.of(new double[] {0.1 + 0.2, 0.3, 7.7}, new double[] {0.3, 0.1 + 0.2, 7.7}, 0.95);

        assertThat(difference.verdict()).isEqualTo(Difference.Verdict.SAME);
        assertThat(difference.varianceRatio()).isNaN();
    }

    @Test
    void isExactWhereTheDifferenceNeverVaries() {
        Difference difference = Difference.of(new double[] {1, 5, 9}, new double[] {4, 8, 12}, 0.99);

        assertThat(difference.low()).isEqualTo(3);
        assertThat(difference.high()).isEqualTo(3);
        assertThat(difference.verdict()).isEqualTo(Difference.Verdict.MORE);
    }

    @Test
    void leavesOutReplicationsInWhichEitherHasNoValue() {
        Difference difference =
                Difference.of(new double[] {1, Double.NaN, 3, 10}, new double[] {2, 5, Double.NaN, 10}, 0.95);

        assertThat(difference.interval().count()).isEqualTo(2);
        assertThat(difference.baseMean()).isEqualTo(5.5);
        assertThat(difference.mean()).isEqualTo(6);
    }

    @Test
    void cannotTellFromOneReplication() {
        Difference difference = Difference.of(new double[] {1}, new double[] {2}, 0.95);

        assertThat(difference.verdict()).isEqualTo(Difference.Verdict.OPEN);
        assertThat(difference.low()).isNaN();
    }

    @Test
    void refusesSamplesOfUnequalLength() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Difference.of(new double[2], new double[3], 0.95))
                .withMessage("replications = 2 and 3. Must be as many of both.");
    }

    /**
     * Two normal samples with unequal variances and correlation, whose true difference is 0.4. Of 500 intervals at 95 %
     * the true difference is in 475 +- 10 (2 points, about two standard errors of a binomial share); fixed seed.
     */
    @Test
    void coversTheTruthAsOftenAsItSays() {
        long covered = IntStream.range(0, EXPERIMENTS)
                .mapToObj(DifferenceTest::correlated)
                .filter(pair -> holds(Difference.of(pair[0], pair[1], 0.95), 0.4))
                .count();

        assertThat(covered / (double) EXPERIMENTS).isCloseTo(0.95, within(0.02));
    }

    /**
     * Three alternatives in three measures, all correlated, no true difference: all nine intervals hold at once in at
     * least 95 % of 500 experiments, less two standard errors (2 points); Bonferroni's inequality gives no upper limit.
     */
    @Test
    void coversAllTruthsAtOnceAsOftenAsItSays() {
        double each = new Simultaneous(0.95, 9).eachLevel();

        long covered = IntStream.range(0, EXPERIMENTS)
                .filter(experiment -> allHold(experiment, each))
                .count();

        assertThat(covered / (double) EXPERIMENTS).isGreaterThanOrEqualTo(0.93);
    }

    private static boolean allHold(int experiment, double level) {
        Uniforms uniforms = new Streams(3, experiment).uniforms("joint coverage");
        double[] base = normals(uniforms, 10);
        return IntStream.range(0, 9).allMatch(i -> {
            double[] other = normals(uniforms, 10);
            double[] mixed = IntStream.range(0, 10)
                    .mapToDouble(k -> 0.5 * base[k] + other[k])
                    .toArray();
            return holds(Difference.of(base, mixed, level), 0);
        });
    }

    private static double[][] correlated(int experiment) {
        Uniforms uniforms = new Streams(2, experiment).uniforms("coverage");
        double[] shared = normals(uniforms, 8);
        double[] own = normals(uniforms, 8);
        double[] second = IntStream.range(0, 8)
                .mapToDouble(i -> 0.4 + shared[i] + 2 * own[i])
                .toArray();
        return new double[][] {shared, second};
    }

    private static double[] normals(Uniforms uniforms, int count) {
        return IntStream.range(0, count)
                .mapToDouble(i -> Normal.quantile(uniforms.next()))
                .toArray();
    }

    private static boolean holds(Difference difference, double truth) {
        return difference.low() <= truth && difference.high() >= truth;
    }
}
