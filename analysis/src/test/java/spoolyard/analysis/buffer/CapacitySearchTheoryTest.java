package spoolyard.analysis.buffer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.theory.SwapOverflow;
import spoolyard.core.plant.Law;
import spoolyard.core.quantity.Filament;

/**
 * The search on a line with its own operator, whose answer is known: the smallest capacity with P(S > C/v) at or below the
 * target. Source: the closed form of {@link SwapOverflow}. Swaps are drawn here, outside the plant model, so that 200
 * searches take a few seconds; the same luck at all capacities; fixed seed.
 */
final class CapacitySearchTheoryTest {
    private static final int SEARCHES = 200;
    private static final double LEVEL = 0.95;
    private static final int SWAPS = 400;
    private static final double SPEED_M_PER_S = new Filament(1240, 1.75).speedMPerS(18);
    private static final Law.Lognormal SWAP = new Law.Lognormal(30, 0.3);
    private static final List<Double> CAPACITIES = Capacities.from(40, 120, 5);

    /**
     * At least 190 of 200. The guarantee is 95 % or more of all searches; it is far on the safe side (Bonferroni), so the
     * expected number of wrong ones is below 1 and the test does not fail by chance.
     */
    @Test
    void findsTheKnownAnswerInAtLeast95OutOf100Searches() {
        LossTarget target = new LossTarget(LossMeasure.OVERFLOW, between(75, 80));

        List<Finding> findings = searches(target, 640);

        assertThat(findings)
                .filteredOn(found ->
                        found.answer() == Finding.Answer.FOUND && found.meetsM().orElse(0) == 80)
                .hasSizeGreaterThanOrEqualTo((int) (LEVEL * SEARCHES));
    }

    /** With few replications it may say that it cannot tell, but what it says is right. */
    @Test
    void neverCallsACapacityGoodThatIsNotMoreOftenThanItMay() {
        LossTarget target = new LossTarget(LossMeasure.OVERFLOW, between(75, 80));

        List<Finding> findings = searches(target, 20);

        assertThat(findings)
                .filteredOn(found ->
                        found.meetsM().orElse(1000) < 80 || found.missesM().orElse(0) > 75)
                .hasSizeLessThanOrEqualTo((int) ((1 - LEVEL) * SEARCHES));
        assertThat(findings)
                .filteredOn(found -> found.answer() == Finding.Answer.BETWEEN)
                .isNotEmpty();
    }

    /** Where the target lies exactly on a capacity, that capacity meets it and no smaller one does. */
    @Test
    void isRightAboutItsNeighboursWhereTheTargetIsExactlyThatOfACapacity() {
        LossTarget target = new LossTarget(LossMeasure.OVERFLOW, pct(80));

        List<Finding> findings = searches(target, 160);

        assertThat(findings)
                .filteredOn(found ->
                        found.meetsM().orElse(1000) < 80 || found.missesM().orElse(0) >= 80)
                .hasSizeLessThanOrEqualTo((int) ((1 - LEVEL) * SEARCHES));
    }

    private static List<Finding> searches(LossTarget target, int most) {
        SearchPlan plan = new SearchPlan(CAPACITIES, LEVEL, 10, most);
        return IntStream.range(0, SEARCHES)
                .mapToObj(search -> new CapacitySearch(plan, target, new SeenLosses(new Swaps(search))).run())
                .toList();
    }

    private static double between(double below, double above) {
        return Math.sqrt(pct(below) * pct(above));
    }

    private static double pct(double capacityM) {
        return 100 * new SwapOverflow(SWAP, capacityM, SPEED_M_PER_S).probability();
    }

    /** Draws the swaps of a replication once and holds them against any capacity. */
    private static final class Swaps implements LossTrial {
        private final long search;
        private final List<double[]> seconds = new ArrayList<>();

        Swaps(long search) {
            this.search = search;
        }

        @Override
        public List<Loss> observe(double capacityM, int first, int count) {
            while (seconds.size() < first + count) {
                seconds.add(draw(seconds.size()));
            }
            return IntStream.range(first, first + count)
                    .mapToObj(number -> loss(seconds.get(number), capacityM / SPEED_M_PER_S))
                    .toList();
        }

        private double[] draw(int replication) {
            SplittableRandom random = new SplittableRandom(20270301L + 1_000_003 * search + replication);
            double sigma = Math.sqrt(Math.log1p(SWAP.cv() * SWAP.cv()));
            return IntStream.range(0, SWAPS)
                    .mapToDouble(i -> SWAP.mean() * Math.exp(sigma * random.nextGaussian() - sigma * sigma / 2))
                    .toArray();
        }

        private static Loss loss(double[] seconds, double graceS) {
            long overflows = Arrays.stream(seconds).filter(s -> s > graceS).count();
            return SketchedLoss.of(SWAPS, overflows);
        }
    }
}
