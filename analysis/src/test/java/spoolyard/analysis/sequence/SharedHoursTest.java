package spoolyard.analysis.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

final class SharedHoursTest {
    private static final double H = 3600;

    private static Job job(String id, int product, double dueH, double perS) {
        return new Job(id, product, 0, dueH * H, perS, List.of(10 * H));
    }

    private static SequencingProblem onOneLine(Changeovers.Table table, Job... jobs) {
        SequencedLine line = new SequencedLine("L", WorkingTime.always(), table.done(), List.of());
        return new SequencingProblem(List.of(jobs), List.of(line), 0);
    }

    private static double bound(SequencingProblem problem, double lastS, double cost) {
        return new SharedHours(LineKernel.of(problem), lastS).bound(cost);
    }

    /**
     * By hand: two orders of 10 h due at 10 h. One is 10 h late whatever comes first: 36 000 s at 0.01. The programme says the same:
     * the piece at u > 10 h costs 0.01 (u - 10 h + 5 h), on average 0.01 times 10 h over the second order. Hours are taken in 1600
     * pieces of 24 h, at the price of their beginning: at most 54 s at 0.01 too little.
     */
    @Test
    void twoOrdersCannotBothHaveTheFirstHours() {
        SequencingProblem problem = onOneLine(Changeovers.table(1), job("a", 0, 10, 0.01), job("b", 0, 10, 0.01));

        assertThat(LowerBound.of(problem)).isZero();
        assertThat(bound(problem, 20 * H, 360)).isBetween(357.0, 360.0);
    }

    /** By hand: the same orders of two products with 2 h from one to the other, none at the start: the second is 12 h late. */
    @Test
    void aChangeoverTakesHoursToo() {
        Changeovers.Table table = Changeovers.table(2).set(0, 1, 0, 2 * H).set(1, 0, 0, 2 * H);
        SequencingProblem problem = onOneLine(table, job("a", 0, 10, 0.01), job("b", 1, 10, 0.01));

        assertThat(bound(problem, 22 * H, 432)).isBetween(360.0, 432.0);
    }

    /** By hand: the line holds A. A then B costs 0 + 7, B then A 5 + 9. */
    @Test
    void theFirstPlaceOfALineIsThereOnce() {
        Changeovers.Table table =
                Changeovers.table(2).set(2, 1, 5, 0).set(0, 1, 7, 0).set(1, 0, 9, 0);
        SequencingProblem problem = onOneLine(table, job("a", 0, 1000, 0), job("b", 1, 1000, 0));

        assertThat(bound(problem, 20 * H, 7)).isCloseTo(7, within(1e-6));
    }

    /** Two hundred books that are solved by trying all plans. */
    @Test
    void isNeverAboveTheBestAndNearerThanTheQuickBound() {
        double quick = 0;
        double shared = 0;
        int count = 0;
        for (int seed = 0; seed < 200; seed++) {
            SequencingProblem problem = RandomBooks.any(seed);
            TimedPlan best = TimedPlan.of(problem, ExactProgramme.solve(problem));
            if (best.cost() > 0) {
                double bound = LowerBound.of(problem, best);
                assertThat(bound).as("seed %d", seed).isLessThanOrEqualTo(best.cost() + 1e-6);
                quick += LowerBound.of(problem) / best.cost();
                shared += bound / best.cost();
                count++;
            }
        }
        System.out.printf(
                "bound / best, mean of %d books: %.3f quick, %.3f shared hours%n",
                count, quick / count, shared / count);
        assertThat(shared).isGreaterThan(quick);
    }
}
