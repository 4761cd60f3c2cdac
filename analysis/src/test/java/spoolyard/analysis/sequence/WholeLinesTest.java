package spoolyard.analysis.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class WholeLinesTest {
    private static final double H = 3600;

    private static Budget changes(double changes) {
        return new Budget(SearchLimit.iterations(changes), 1, new Stop());
    }

    private static double bound(SequencingProblem problem, TimedPlan plan, double changes) {
        return Math.max(LowerBound.of(problem, plan), LowerBound.byWholeLines(problem, plan, changes(changes), 2));
    }

    private static Job job(String id, int product, double dueH, double perS) {
        return new Job(id, product, 0, dueH * H, perS, List.of(10 * H));
    }

    /**
     * By hand: A1, B and A2 of 10 h on one line that holds A; A to B costs 7, B to A 9. Due at 10, 20 and 30 h, each at 0.001 a
     * second, so that 10 h late cost 36. A1, B, A2 is on time for 7 + 9; every other sequence makes one late and costs 7 at least.
     * By shared hours A is begun but once, for nothing.
     */
    @Test
    void seesThatAProductIsBegunAgain() {
        Changeovers.Table table =
                Changeovers.table(2).set(2, 1, 7, 0).set(0, 1, 7, 0).set(1, 0, 9, 0);
        SequencedLine line = new SequencedLine("L", WorkingTime.always(), table.done(), List.of());
        SequencingProblem problem = new SequencingProblem(
                List.of(job("a1", 0, 10, 0.001), job("b", 1, 20, 0.001), job("a2", 0, 30, 0.001)), List.of(line), 0);
        TimedPlan best = TimedPlan.of(problem, new Plan(List.of(List.of(0, 1, 2))));

        assertThat(best.cost()).isCloseTo(16, within(1e-9));
        assertThat(bound(problem, best, 1e6)).isCloseTo(16, within(1e-3));
        assertThat(LowerBound.of(problem, best)).isLessThan(10);
    }

    /** 400 books that are solved by the exact programme. */
    @Test
    void isNeverAboveTheBestAndNear() {
        double shared = 0;
        double whole = 0;
        int count = 0;
        int reached = 0;
        for (int seed = 0; seed < 400; seed++) {
            SequencingProblem problem = RandomBooks.any(seed);
            TimedPlan best = TimedPlan.of(problem, ExactProgramme.solve(problem));
            if (best.cost() > 0) {
                double bound = bound(problem, best, 1e6);
                assertThat(bound).as("seed %d", seed).isLessThanOrEqualTo(best.cost() + 1e-6);
                shared += LowerBound.of(problem, best) / best.cost();
                whole += bound / best.cost();
                reached += LowerBound.isReached(best.cost(), bound) ? 1 : 0;
                count++;
            }
        }
        print("up to five orders", count, shared, whole, reached);
        assertThat(whole / count).isGreaterThan(0.9);
    }

    /** 60 books of nine orders, most late: guided by a plan that is not the best. */
    @Test
    void isNeverAboveTheBestOfLargerBooks() {
        double shared = 0;
        double whole = 0;
        int reached = 0;
        for (int seed = 0; seed < 60; seed++) {
            SequencingProblem problem = nine(new Random(seed));
            TimedPlan best = TimedPlan.of(problem, ExactProgramme.solve(problem));
            TimedPlan other = TimedPlan.of(problem, CheapestInsertion.plan(problem));
            double bound = bound(problem, other, 2e5);
            assertThat(bound).as("seed %d", seed).isLessThanOrEqualTo(best.cost() + 1e-6);
            shared += LowerBound.of(problem, other) / best.cost();
            whole += bound / best.cost();
            reached += LowerBound.isReached(best.cost(), bound) ? 1 : 0;
        }
        print("nine orders", 60, shared, whole, reached);
        assertThat(whole / 60).isGreaterThan(0.9);
    }

    private static void print(String books, int count, double shared, double whole, int reached) {
        System.out.printf(
                "bound / best, mean of %d books of %s: %.3f shared hours, %.3f whole lines, which %d reach%n",
                count, books, shared / count, whole / count, reached);
    }

    /** Four products in two families, on two lines with shifts; orders of minutes to hours, so that some are shorter than a piece. */
    private static SequencingProblem nine(Random random) {
        Changeovers.Table table = Changeovers.table(4);
        for (int from = 0; from <= 4; from++) {
            for (int to = 0; to < 4; to++) {
                if (from != to) {
                    boolean isNear = from < 4 && from / 2 == to / 2;
                    table.set(from, to, isNear ? 3 + random.nextInt(5) : 15 + random.nextInt(20), isNear ? 0.2 : 1.5);
                }
            }
        }
        List<Job> jobs = new ArrayList<>();
        for (int job = 0; job < 9; job++) {
            double runS = random.nextInt(3) == 0 ? 0.05 : 1 + 6 * random.nextDouble();
            List<Double> runs = List.of(runS, random.nextInt(3) == 0 ? Double.POSITIVE_INFINITY : 1.2 * runS);
            jobs.add(new Job(
                    "J" + job, random.nextInt(4), random.nextInt(6), random.nextInt(30), random.nextInt(3), runs));
        }
        List<WorkingTime.Span> shifts = new ArrayList<>();
        for (int day = 0; day < 3; day++) {
            shifts.add(new WorkingTime.Span(24 * day + 6, 24 * day + 14 + random.nextInt(8)));
        }
        List<SequencedLine> lines = List.of(
                new SequencedLine("L0", WorkingTime.of(shifts), table.done(), List.of()),
                new SequencedLine("L1", WorkingTime.always(), table.done(), List.of()));
        return new SequencingProblem(jobs, lines, 0);
    }

    @Test
    void isTheSameWithAnyNumberOfThreadsAndStopsWhenAsked() {
        SequencingProblem problem = nine(new Random(7));
        TimedPlan plan = TimedPlan.of(problem, CheapestInsertion.plan(problem));
        Stop stop = new Stop();
        stop.ask();

        double one = LowerBound.byWholeLines(problem, plan, changes(300), 1);

        assertThat(one).isPositive();
        assertThat(LowerBound.byWholeLines(problem, plan, changes(300), 2)).isEqualTo(one);
        assertThat(LowerBound.byWholeLines(problem, plan, new Budget(SearchLimit.seconds(60), 1, stop), 2))
                .isZero();
    }

    /** After a search with the quick bound alone, and where whole sequences get no time, shared hours are shown. */
    @Test
    void leavesTheBoundBySharedHoursWhereThereIsNoTime() {
        Stop stop = new Stop();
        stop.ask();
        SearchSettings settings = new SearchSettings(SearchLimit.iterations(1), 1, 1, 1);
        int raised = 0;
        for (int seed = 0; seed < 40; seed++) {
            SequencingProblem problem = RandomBooks.any(seed);
            TimedPlan plan = TimedPlan.of(problem, ExactProgramme.solve(problem));
            double quick = Math.min(plan.cost(), LowerBound.of(problem));
            double shared = Math.min(plan.cost(), LowerBound.of(problem, plan));

            Solution bounded = new Sequencer(problem, settings, stop, SearchProgress.UNHEARD)
                    .bounded(new Solution(plan, quick, false));

            assertThat(bounded.bound()).as("seed %d", seed).isGreaterThanOrEqualTo(shared);
            raised += shared > quick + 1 ? 1 : 0;
        }
        assertThat(raised).isPositive();
    }
}
