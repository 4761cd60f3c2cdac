package spoolyard.analysis.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class LateSearchTest {
    private static final double ROUNDING = 1e-6;

    private static Plan inOrder(SequencingProblem problem) {
        return new Plan(
                List.of(IntStream.range(0, problem.jobs().size()).boxed().toList()));
    }

    private static double cost(SequencingProblem problem, LateLine line) {
        return TimedPlan.of(problem, line.plan(line.order)).cost();
    }

    /** Reckons an exchange the plain way: makes it, and reckons the whole plan. */
    private static double costExchanged(SequencingProblem problem, LateLine line, int[] blocks) {
        int[] before = line.order.clone();
        line.exchange(blocks[0], blocks[1], blocks[2], blocks[3]);
        double cost = cost(problem, line);
        line.set(before);
        return cost;
    }

    private static double leastOfNeighbours(SequencingProblem problem, LateLine line, int a) {
        double least = line.cost;
        for (int b = a + 1; b < line.count; b++) {
            for (int d = b + 1; d <= line.count; d++) {
                least = Math.min(least, costExchanged(problem, line, new int[] {a, b, b, d}));
            }
        }
        return least;
    }

    private static double leastApart(SequencingProblem problem, LateLine line, int a, int longest) {
        double least = line.cost;
        for (int b = a + 1; b <= Math.min(a + longest, line.count - 2); b++) {
            for (int c = b + 1; c < line.count; c++) {
                for (int d = c + 1; d <= Math.min(c + longest, line.count); d++) {
                    least = Math.min(least, costExchanged(problem, line, new int[] {a, b, c, d}));
                }
            }
        }
        return least;
    }

    @Test
    void makesTheBestExchangeThereIs() {
        for (int seed = 0; seed < 100; seed++) {
            SequencingProblem problem = RandomBooks.late(seed, 12);
            LateLine line = new LateLine(problem);
            line.set(inOrder(problem));
            BlockExchange blocks = new BlockExchange(line, 3);
            for (int a = 0; a < line.count - 2; a++) {
                double least = leastOfNeighbours(problem, line, a);
                blocks.improveNeighbours(a);
                assertThat(line.cost).as("seed %d, neighbours of %d", seed, a).isCloseTo(least, within(ROUNDING));

                double leastApart = leastApart(problem, line, a, 3);
                blocks.improveApart(a);
                assertThat(line.cost).as("seed %d, apart from %d", seed, a).isCloseTo(leastApart, within(ROUNDING));
                assertThat(cost(problem, line)).as("seed %d", seed).isCloseTo(line.cost, within(ROUNDING));
            }
        }
    }

    @Test
    void findsTheBestOfSmallBooks() {
        for (int seed = 0; seed < 40; seed++) {
            SequencingProblem problem = RandomBooks.late(seed, 7);
            LateSearch search = new LateSearch(problem, seed);

            search.run(
                    inOrder(problem), new Budget(SearchLimit.iterations(20_000), 1, new Stop()), SearchWatch.UNHEARD);

            assertThat(TimedPlan.of(problem, search.best()).cost())
                    .as("seed %d", seed)
                    .isCloseTo(RandomBooks.leastByTryingAll(problem), within(ROUNDING));
        }
    }

    private static Plan searched(SequencingProblem problem, long seed) {
        LateSearch search = new LateSearch(problem, seed);
        search.run(inOrder(problem), new Budget(SearchLimit.iterations(200_000), 1, new Stop()), SearchWatch.UNHEARD);
        return search.best();
    }

    @Test
    void findsTheSamePlanWithTheSameSeedAndIterations() {
        SequencingProblem problem = RandomBooks.late(3, 40);

        assertThat(searched(problem, 1)).isEqualTo(searched(problem, 1));
        assertThat(searched(problem, 1)).isNotEqualTo(searched(problem, 2));
    }

    @Test
    void isForOneLineDayAndNightWhereLatenessAloneCosts() {
        assertThat(LateLine.isFor(RandomBooks.late(1, 12))).isTrue();
        assertThat(LateLine.isFor(RandomBooks.pure(1, 12))).isFalse();
        for (int seed = 0; seed < 100; seed++) {
            assertThat(LateLine.isFor(RandomBooks.any(seed)))
                    .as("seed %d", seed)
                    .isFalse();
        }
    }
}
