package spoolyard.analysis.experiment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import spoolyard.core.random.Normal;
import spoolyard.core.random.Streams;

/** By hand, and on normal observations whose means are known. */
final class NearBestTest {
    /** Student's one-sided 95 % points for 1 and 2 degrees of freedom: Law 2015, table T.1. */
    private static final double T1 = 6.314;

    private static final double T2 = 2.920;

    private static final int MACRO_REPLICATIONS = 4000;

    /** Remembers which systems were asked for. */
    private static final class Given implements Observations {
        private final double[][] values;
        private final List<List<Integer>> asked = new ArrayList<>();

        Given(double[]... values) {
            this.values = values;
        }

        @Override
        public int systems() {
            return values.length;
        }

        @Override
        public double[] at(int number, List<Integer> systems) {
            asked.add(systems);
            return systems.stream()
                    .mapToDouble(system -> values[system][number])
                    .toArray();
        }
    }

    /**
     * Second less first: -1 and -3, mean -2, standard deviation 1.414; so at most -2 + 6.314 * 1.414 / 1.414 = 4.314 above
     * it. To be at most 1 above takes (6.314 * 1.414 / 3)^2 = 8.86 observations.
     */
    @Test
    void boundsWhatTheOtherMayBeAbove() {
        NearBest.Choice choice = new NearBest(0.05, 1, List.of(2))
                .select(
                        new Given(new double[] {5, 7}, new double[] {4, 4}),
                        OptionalDouble.of(1),
                        (systems, count) -> true);

        assertThat(choice.best()).isZero();
        assertThat(choice.atMostBelow()).isCloseTo(T1 - 2, within(0.001));
        assertThat(choice.isDecided()).isFalse();
        assertThat(choice.mayBeat()).containsExactly(1);
        assertThat(choice.wouldTake()).isEqualTo(9);
    }

    /**
     * After two observations the third is at most 6.314 * 0.1 = 0.631 above the second, which a half of 2 allows: it is
     * dropped. After three the second is at most -2 + 2.920 * sqrt(7 / 3) = 2.460 above the first, the third 0.631 more.
     */
    @Test
    void addsWhatTheOneThatMadeUpForAnotherStandsFor() {
        Given given = new Given(new double[] {3, -1, 4}, new double[] {0, 0, 0}, new double[] {-0.1, 0.1, Double.NaN});

        NearBest.Choice choice =
                new NearBest(0.3, 3, List.of(2, 3)).select(given, OptionalDouble.of(2), (systems, count) -> true);

        assertThat(given.asked).containsExactly(List.of(0, 1, 2), List.of(0, 1, 2), List.of(0, 1));
        assertThat(choice.best()).isZero();
        assertThat(choice.atMostBelow()).isCloseTo(0.1 * T1 + T2 * Math.sqrt(7 / 3.0) - 2, within(0.001));
    }

    /** A twentieth of the spread from 0 to 100 is 5: that the second is just 4 below the best is near enough at once. */
    @Test
    void allowsATwentiethOfTheSpreadUnlessToldOtherwise() {
        Given given = new Given(new double[] {0, 0, 0}, new double[] {96, 96, 96}, new double[] {92, 108, 100});

        NearBest.Choice choice =
                new NearBest(0.3, 3, List.of(2, 3)).select(given, OptionalDouble.empty(), (systems, count) -> true);

        assertThat(choice.within()).isCloseTo(5, within(1e-12));
        assertThat(given.asked).hasSize(3);
    }

    @Test
    void stopsWhenItMayNotGoOn() {
        Given given = new Given(new double[] {5, 7}, new double[] {4, 4});

        NearBest.Choice choice =
                new NearBest(0.05, 1, List.of(2, 100)).select(given, OptionalDouble.of(1), (systems, count) -> false);

        assertThat(choice.count()).isEqualTo(2);
        assertThat(choice.isDecided()).isFalse();
    }

    /**
     * Two systems 0.05 apart, ten observations, standard deviation of the difference 1: the bound reaches far over 0.05, so
     * that the promise fails just when Student's bound does: with chance alpha. 4000 times with alpha = 0.25: standard error
     * 0.0068; four of them.
     */
    @Test
    void failsAsOftenAsStudentsBoundDoes() {
        double failed = shareFailed(0.25, 1, List.of(10), 0.05, 0);

        assertThat(failed).isCloseTo(0.25, within(4 * 0.0068));
    }

    /** Ten systems, the best 0.5 ahead of all others: in at most 20 % of 4000, and four standard errors of 0.0063. */
    @Test
    void keepsItsPromiseWithManyAlikeAndManyLooks() {
        double failed = shareFailed(0.2, 45, List.of(5, 10, 20, 40), 0.5, 8);

        assertThat(failed).isLessThanOrEqualTo(0.2 + 4 * 0.0063);
    }

    /** System 0 has mean {@code ahead}, the others 0. */
    private static double shareFailed(double alpha, int pairs, List<Integer> looks, double ahead, int more) {
        int failed = 0;
        for (int macro = 0; macro < MACRO_REPLICATIONS; macro++) {
            int seed = macro;
            Observations normal = new Observations() {
                @Override
                public int systems() {
                    return 2 + more;
                }

                @Override
                public double[] at(int number, List<Integer> systems) {
                    return systems.stream()
                            .mapToDouble(system -> (system == 0 ? ahead : 0)
                                    + Math.sqrt(0.5)
                                            * Normal.quantile(new Streams(seed, number)
                                                    .uniforms("system " + system)
                                                    .next()))
                            .toArray();
                }
            };
            NearBest.Choice choice =
                    new NearBest(alpha, pairs, looks).select(normal, OptionalDouble.of(0.1), (systems, count) -> true);
            failed += choice.best() != 0 && choice.atMostBelow() < ahead ? 1 : 0;
        }
        return failed / (double) MACRO_REPLICATIONS;
    }
}
