package spoolyard.analysis.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

final class TradeOffTest {
    private static final double ROUNDING = 1e-9;

    private record Point(double changeovers, double late) {
        static Point of(TimedPlan plan) {
            return new Point(rounded(plan.changeoverCost()), rounded(plan.lateCost()));
        }

        private static double rounded(double value) {
            return Math.round(value / ROUNDING) * ROUNDING;
        }

        boolean beats(Point other) {
            return changeovers <= other.changeovers && late <= other.late && !equals(other);
        }
    }

    private static SequencingProblem book(long seed) {
        SequencingProblem any = RandomBooks.any(seed);
        return new SequencingProblem(any.jobs(), any.lines(), 0);
    }

    private static List<Point> byTryingAll(SequencingProblem problem) {
        List<Point> all = new ArrayList<>();
        RandomBooks.forEachPlan(problem, plan -> {
            Point point = Point.of(TimedPlan.of(problem, plan));
            if (all.stream().noneMatch(other -> other.beats(point) || other.equals(point))) {
                all.removeIf(point::beats);
                all.add(point);
            }
        });
        return all;
    }

    private static TradeOff tradeOff(SequencingProblem problem, double iterations, int threads) {
        SearchSettings settings = new SearchSettings(SearchLimit.iterations(iterations), 3, 2, threads);
        return new TradeOff(problem, settings, 3, Double.POSITIVE_INFINITY, new Stop());
    }

    private static List<TimedPlan> searched(SequencingProblem problem, double iterations, int threads) {
        return tradeOff(problem, iterations, threads).search(List.of(), (plans, share) -> {});
    }

    @Test
    void provesEveryPointAndNoOtherOfSmallBooks() {
        int bent = 0;
        for (int seed = 0; seed < 150; seed++) {
            SequencingProblem problem = book(seed);

            List<Point> points = tradeOff(problem, 1, 1).solve(List.of(), (plans, share) -> {}).stream()
                    .map(Point::of)
                    .toList();

            assertThat(points).as("seed %d", seed).containsExactlyInAnyOrderElementsOf(byTryingAll(problem));
            bent += points.size() > 2 ? 1 : 0;
        }
        assertThat(bent).as("books with more than two points").isGreaterThan(30);
    }

    /** The search that large books get finds nearly every point of small books. */
    @Test
    void searchFindsNearlyEveryPoint() {
        int there = 0;
        int found = 0;
        for (int seed = 0; seed < 150; seed++) {
            SequencingProblem problem = book(seed);
            List<Point> all = byTryingAll(problem);

            List<Point> points =
                    searched(problem, 150_000, 2).stream().map(Point::of).toList();

            there += all.size();
            found += (int) all.stream().filter(points::contains).count();
        }
        assertThat(found / (double) there).isGreaterThan(0.98);
    }

    @Test
    void goesFromTheLeastChangeoversToTheLeastLateness() {
        for (int seed = 0; seed < 20; seed++) {
            List<TimedPlan> plans = searched(book(seed), 50_000, 2);

            for (int i = 1; i < plans.size(); i++) {
                assertThat(plans.get(i).changeoverCost())
                        .isGreaterThan(plans.get(i - 1).changeoverCost());
                assertThat(plans.get(i).lateCost()).isLessThan(plans.get(i - 1).lateCost());
            }
        }
    }

    @Test
    void leavesOutPlansThatAreTooLate() {
        for (int seed = 0; seed < 20; seed++) {
            SequencingProblem problem = book(seed);
            List<Point> all = byTryingAll(problem);
            double mostLate = all.stream().mapToDouble(Point::late).average().orElse(0);
            SearchSettings settings = new SearchSettings(SearchLimit.iterations(200_000), 3, 2, 2);
            TradeOff tradeOff = new TradeOff(problem, settings, 3, mostLate, new Stop());

            assertThat(tradeOff.solve(List.of(), (plans, share) -> {}).stream().map(Point::of))
                    .as("seed %d", seed)
                    .containsExactlyInAnyOrderElementsOf(all.stream()
                            .filter(point -> point.late() <= mostLate)
                            .toList());
            assertThat(new TradeOff(problem, settings, 3, mostLate, new Stop()).search(List.of(), (plans, share) -> {}))
                    .as("seed %d", seed)
                    .isNotEmpty()
                    .allMatch(plan -> plan.lateCost() <= mostLate);
        }
    }

    @Test
    void givesTheSameForTheSameSeedOnAnyNumberOfThreads() {
        assertThat(searched(book(11), 30_000, 1)).isEqualTo(searched(book(11), 30_000, 2));
    }

    @Test
    void refusesAProblemWithAThirdPart() {
        SequencingProblem any = RandomBooks.any(1);
        SequencingProblem timed = new SequencingProblem(any.jobs(), any.lines(), 2);
        SearchSettings settings = new SearchSettings(SearchLimit.iterations(1), 1, 1, 1);

        assertThatThrownBy(() -> new TradeOff(timed, settings, 1, 5, new Stop()))
                .hasMessage("makespanPerS = 2.0. Must be 0.");
    }
}
