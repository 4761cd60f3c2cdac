package spoolyard.analysis.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The cheapest sequence of a line against all sequences of some of its orders, tried one by one as a plan is reckoned. */
final class CheapestSequenceTest {
    private static final double EXACT = 1e-9;

    private static double leastByTryingAll(SequencingProblem problem, int line, double[] worth) {
        List<Integer> begun = new ArrayList<>(problem.lines().get(line).frozen());
        double frozen = new LineWalk(problem, line).along(begun).lateCost();
        int state = problem.lines().get(line).changeovers().atStart();
        for (int order : begun) {
            int product = problem.jobs().get(order).product();
            frozen += problem.lines().get(line).changeovers().cost(state, product);
            state = product;
        }
        return tryAll(problem, line, worth, begun, 0) - frozen;
    }

    private static double tryAll(
            SequencingProblem problem, int line, double[] worth, List<Integer> begun, double worths) {
        LineWalk walk = new LineWalk(problem, line).along(begun);
        double least = walk.changeoverCost() + walk.lateCost() - worths;
        for (int order = 0; order < worth.length; order++) {
            int each = order;
            boolean isFrozen =
                    problem.lines().stream().anyMatch(other -> other.frozen().contains(each));
            if (!isFrozen && !begun.contains(order) && problem.jobs().get(order).canRunOn(line)) {
                begun.add(order);
                least = Math.min(least, tryAll(problem, line, worth, begun, worths + worth[order]));
                begun.remove(begun.size() - 1);
            }
        }
        return least;
    }

    /** 300 books, each line with worths of either sign: pieces of all lengths, none to all orders remembered, cut short or not. */
    @Test
    void isThatOfTryingAllAndNeverMoreWhenCutShort() {
        int lines = 0;
        int exact = 0;
        for (int seed = 0; seed < 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            SequencingProblem problem = RandomBooks.any(seed);
            double[] worth = problem.jobs().stream()
                    .mapToDouble(job -> random.nextInt(60) - 5)
                    .toArray();
            List<LineOrders> all = LineOrders.of(problem);
            for (int line = 0; line < all.size(); line++) {
                double least = leastByTryingAll(problem, line, worth);
                int pieces = 1 + random.nextInt(40);
                double pieceS = (0.2 + 2 * random.nextDouble()) * (random.nextBoolean() ? 1 : 5);
                CostToGo toGo = new CostToGo(all.get(line), pieces, pieceS, random.nextInt(4));
                CheapestSequence search = new CheapestSequence(toGo);

                CheapestSequence.Found cut = search.find(worth, random.nextInt(4), new PartialSequences());
                CheapestSequence.Found whole = search.find(worth, Integer.MAX_VALUE, new PartialSequences());

                assertThat(toGo.whole()).as("seed %d line %d", seed, line).isLessThanOrEqualTo(least + EXACT);
                assertThat(cut.least()).as("seed %d line %d", seed, line).isLessThanOrEqualTo(least + EXACT);
                assertThat(whole.least()).as("seed %d line %d", seed, line).isCloseTo(least, within(EXACT));
                assertThat(whole.best().reduced(worth)).isCloseTo(least, within(EXACT));
                lines++;
                exact += cut.isExact() ? 1 : 0;
            }
        }
        assertThat(exact).isBetween(lines / 20, lines * 19 / 20);
    }

    /**
     * By hand: two orders of 10 h that are worth 5 each, one product, no changeover, due at 10 h, 0.1 an hour late. The second is 10 h
     * late and costs 1: 5 + 5 - 1 = 9. Remembering none, the relaxation makes one again and again: due at 10 h, then 10, 20, 30
     * and 40 h late, five in all in 50 h: 25 - 10 = 15, and nothing beyond.
     */
    @Test
    void remembersWhatIsMade() {
        Job first = new Job("a", 0, 0, 10, 0.1, List.of(10.0));
        Job second = new Job("b", 0, 0, 10, 0.1, List.of(10.0));
        SequencedLine line = new SequencedLine(
                "L", WorkingTime.always(), Changeovers.table(1).done(), List.of());
        SequencingProblem problem = new SequencingProblem(List.of(first, second), List.of(line), 0);
        LineOrders orders = LineOrders.of(problem).get(0);
        double[] worth = {5, 5};
        CostToGo none = new CostToGo(orders, 6, 10, 0);
        CostToGo both = new CostToGo(orders, 6, 10, 2);

        none.fill(worth);
        both.fill(worth);

        assertThat(none.whole()).isCloseTo(-15, within(1e-4));
        assertThat(both.whole()).isCloseTo(-9, within(1e-4));
    }

    /** By hand: 4 orders of 3 s in pieces of 10 s, worth 1 each, nothing late: 4, in one piece or two, though only one is remembered. */
    @Test
    void makesShortOrdersInOnePiece() {
        List<Job> jobs = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            jobs.add(new Job("J" + i, i, 0, 100, 1, List.of(3.0)));
        }
        SequencedLine line = new SequencedLine(
                "L", WorkingTime.always(), Changeovers.table(4).done(), List.of());
        SequencingProblem problem = new SequencingProblem(jobs, List.of(line), 0);
        CostToGo toGo = new CostToGo(LineOrders.of(problem).get(0), 20, 10, 1);

        CheapestSequence.Found found =
                new CheapestSequence(toGo).find(new double[] {1, 1, 1, 1}, Integer.MAX_VALUE, new PartialSequences());

        assertThat(toGo.whole()).isLessThanOrEqualTo(-4);
        assertThat(found.least()).isCloseTo(-4, within(1e-9));
    }
}
