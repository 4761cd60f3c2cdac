package spoolyard.analysis.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.sequence.TimedPlan.TimedJob;
import spoolyard.analysis.sequence.TimedPlan.WeekEnd;

/**
 * Hand-worked: one line works from 0 to 10 and from 58 to 70, is purged at 10 for 7, starts empty. Products black 0, white 1, natural
 * 2, which is clean. Black to white costs 100 and takes 4; white to black 20 and 1; natural to black 30 and 2; natural to white
 * 10 and 1. Order 0 is black and takes 8, order 1 white, takes 3, is due at 61 and costs 5 for each unit of time late.
 */
class WeekEndsTest {
    private static SequencingProblem problem(WeekEnds ends) {
        Changeovers table = Changeovers.table(3)
                .set(0, 1, 100, 4)
                .set(1, 0, 20, 1)
                .set(2, 0, 30, 2)
                .set(2, 1, 10, 1)
                .done();
        WorkingTime hours = WorkingTime.of(List.of(new WorkingTime.Span(0, 10), new WorkingTime.Span(58, 70)));
        return new SequencingProblem(
                List.of(
                        new Job("black", 0, 0, Double.POSITIVE_INFINITY, 0, List.of(8.0)),
                        new Job("white", 1, 0, 61, 5, List.of(3.0))),
                List.of(new SequencedLine("L", hours, table, List.of(), ends)),
                0);
    }

    private static WeekEnds atTen() {
        return new WeekEnds(List.of(10.0), List.of(2, 2, -1, -1), List.of(7.0, 7.0, 0.0, 0.0));
    }

    private static TimedPlan plan(WeekEnds ends, int... orders) {
        List<Integer> sequence = new ArrayList<>();
        for (int order : orders) {
            sequence.add(order);
        }
        return TimedPlan.of(problem(ends), new Plan(List.of(sequence)));
    }

    /** 8 + 4 are 12 worked, 60 on the clock; 3 more are 63. */
    @Test
    void withoutThemAChangeoverIsCutByTheWeekend() {
        TimedPlan plan = plan(WeekEnds.NONE, 0, 1);

        assertThat(plan.lines().get(0))
                .containsExactly(new TimedJob(0, 3, 0, 0, 8, 0), new TimedJob(1, 0, 8, 60, 63, 2));
        assertThat(plan.cost()).isEqualTo(100 + 2 * 5);
    }

    /** 4 do not fit between 8 and 10: white starts from natural at 58, is made from 59 to 62. */
    @Test
    void aChangeoverThatDoesNotFitWaitsAndStartsFromClean() {
        TimedPlan plan = plan(atTen(), 0, 1);

        assertThat(plan.lines().get(0))
                .containsExactly(new TimedJob(0, 3, 0, 0, 8, 0), new TimedJob(1, 2, 58, 59, 62, 1));
        assertThat(plan.weekEnds().get(0)).containsExactly(new WeekEnd(10, 0, 2, 1, false));
        assertThat(plan.cost()).isEqualTo(7 + 10 + 5);
    }

    /** White 0 to 3, change to 4, black 4 to 10, purge, 58 to 60 back from natural, black 60 to 62. */
    @Test
    void anOrderUnderWayGoesOnFromClean() {
        TimedPlan plan = plan(atTen(), 1, 0);

        assertThat(plan.lines().get(0))
                .containsExactly(new TimedJob(1, 3, 0, 0, 3, 0), new TimedJob(0, 1, 3, 4, 62, 0));
        assertThat(plan.weekEnds().get(0)).containsExactly(new WeekEnd(10, 0, 2, 1, true));
        assertThat(plan.cost()).isEqualTo(20 + 7 + 30);
    }

    @Test
    void theBestPlanIsAnotherWithThem() {
        assertThat(solved(problem(WeekEnds.NONE)).plan().plan().lines()).containsExactly(List.of(1, 0));
        Solution with = solved(problem(atTen()));
        assertThat(with.plan().plan().lines()).containsExactly(List.of(0, 1));
        assertThat(with.bound()).isLessThanOrEqualTo(22);
    }

    /**
     * Black then white: 7 for the purge at 10 and 10 from natural, as above, though white and black cost 100 from each other. The bound
     * knows of the 10 alone: 10 from natural to white, against 30 to black.
     */
    @Test
    void theBoundAllowsForChangeoversFromClean() {
        SequencingProblem cheap = problem(atTen());
        Changeovers dear = Changeovers.table(3)
                .set(0, 1, 100, 4)
                .set(1, 0, 100, 4)
                .set(2, 0, 30, 2)
                .set(2, 1, 10, 1)
                .done();
        SequencedLine line = cheap.lines().get(0);
        SequencedLine dearLine = new SequencedLine("L", line.hours(), dear, List.of(), line.weekEnds());
        Job white = new Job("white", 1, 0, Double.POSITIVE_INFINITY, 0, List.of(3.0));

        Solution found = solved(new SequencingProblem(List.of(cheap.jobs().get(0), white), List.of(dearLine), 0));

        assertThat(found.plan().cost()).isEqualTo(7 + 10);
        assertThat(found.bound()).isCloseTo(10, within(1e-6));
        assertThat(found.isProvedBest()).isFalse();
    }

    private static Solution solved(SequencingProblem problem) {
        SearchSettings settings = new SearchSettings(new SearchLimit(2000, Double.POSITIVE_INFINITY), 1, 1, 1);
        return new Sequencer(problem, settings, new Stop(), (cost, bound, share) -> {}).solve(List.of());
    }

    private static double bounded(SequencingProblem problem, Solution found) {
        SearchSettings settings = new SearchSettings(SearchLimit.iterations(1e6), 1, 1, 1);
        return new Sequencer(problem, settings, new Stop(), SearchProgress.UNHEARD)
                .bounded(found)
                .bound();
    }

    /** Every order of five on one line is tried. */
    @Test
    void noPlanOfRandomBooksIsBelowTheBoundAndFewAreMissed() {
        int missed = 0;
        for (int seed = 1; seed <= 40; seed++) {
            SequencingProblem problem = random(new SplittableRandom(seed));
            double best = best(problem, new ArrayList<>());

            Solution found = solved(problem);

            assertThat(found.bound()).as("seed %d", seed).isLessThanOrEqualTo(best + 1e-6);
            assertThat(bounded(problem, found)).as("seed %d", seed).isBetween(found.bound(), best + 1e-6);
            assertThat(found.plan().cost()).as("seed %d", seed).isGreaterThanOrEqualTo(best - 1e-6);
            missed += found.plan().cost() > best + 1e-6 ? 1 : 0;
        }
        assertThat(missed).isLessThanOrEqualTo(4);
    }

    private static SequencingProblem random(SplittableRandom random) {
        int products = 4;
        Changeovers.Table table = Changeovers.table(products);
        for (int from = 0; from < products; from++) {
            for (int to = 0; to < products; to++) {
                if (from != to) {
                    table.set(from, to, random.nextInt(100), random.nextInt(4));
                }
            }
        }
        List<Job> jobs = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            jobs.add(new Job(
                    "J" + i,
                    random.nextInt(3),
                    0,
                    random.nextInt(120),
                    random.nextInt(4),
                    List.of(1.0 + random.nextInt(6))));
        }
        WorkingTime hours = WorkingTime.of(
                List.of(new WorkingTime.Span(0, 10), new WorkingTime.Span(58, 68), new WorkingTime.Span(116, 140)));
        WeekEnds ends = new WeekEnds(List.of(10.0, 20.0), List.of(3, 3, 3, -1, -1), List.of(5.0, 5.0, 5.0, 0.0, 0.0));
        return new SequencingProblem(jobs, List.of(new SequencedLine("L", hours, table.done(), List.of(), ends)), 0);
    }

    private static double best(SequencingProblem problem, List<Integer> begun) {
        if (begun.size() == problem.jobs().size()) {
            return TimedPlan.of(problem, new Plan(List.of(begun))).cost();
        }
        double best = Double.POSITIVE_INFINITY;
        for (int job = 0; job < problem.jobs().size(); job++) {
            if (!begun.contains(job)) {
                List<Integer> longer = new ArrayList<>(begun);
                longer.add(job);
                best = Math.min(best, best(problem, longer));
            }
        }
        return best;
    }
}
