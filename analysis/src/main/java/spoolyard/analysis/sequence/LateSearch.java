package spoolyard.analysis.sequence;

import java.util.SplittableRandom;

/**
 * Breeds sequences for one line that works day and night and where lateness alone costs: a few good sequences are kept, two of
 * them are crossed, and the child is improved until no exchange of blocks helps; it takes the place of the worst if it is
 * cheaper. When that has brought nothing for a while, all but the best are drawn anew. For one thread.
 *
 * <p>The {@value #KEPT} sequences were measured, with 4 s and one seed: docs/benchmarks.md has the figures.
 *
 * <p>Sources: Xu, Lü, Yin, Shen and Buscher, Computers and Operations Research 50 (2014): crossing and descent for this problem,
 * from memory; Falkenauer and Bouffouix, IEEE International Conference on Robotics and Automation (1991): the linear order
 * crossover.
 */
final class LateSearch {
    private static final int KEPT = 8;
    private static final int MOST_IDLE = 5 * KEPT;

    private final LateLine line;
    private final LateDescent descent;
    private final SplittableRandom random;
    private final int[][] kept = new int[KEPT][];
    private final double[] keptCost = new double[KEPT];
    private Budget budget;
    private int[] best;
    private double bestCost;

    LateSearch(SequencingProblem problem, long seed) {
        line = new LateLine(problem);
        random = new SplittableRandom(seed);
        descent = new LateDescent(line, random);
    }

    Plan best() {
        return line.plan(best);
    }

    /** Searches from a plan. */
    void run(Plan from, Budget until, SearchWatch watch) {
        budget = until;
        line.set(from);
        best = line.order.clone();
        bestCost = line.cost;
        while (goesOn()) {
            drawAll(watch);
            for (int idle = 0; idle < MOST_IDLE && goesOn(); idle++) {
                idle = breed(watch) ? -1 : idle;
            }
        }
    }

    private boolean goesOn() {
        return budget.progress() < 1 && bestCost > 0;
    }

    private void drawAll(SearchWatch watch) {
        for (int i = 0; i < KEPT && goesOn(); i++) {
            int[] start = best.clone();
            if (i > 0) {
                shuffle(start);
            }
            improve(start, watch);
            keep(i);
        }
    }

    private void shuffle(int[] sequence) {
        for (int i = sequence.length - 1; i > 0; i--) {
            int other = random.nextInt(i + 1);
            int each = sequence[i];
            sequence[i] = sequence[other];
            sequence[other] = each;
        }
    }

    private void improve(int[] start, SearchWatch watch) {
        line.set(start);
        descent.improve(budget);
        if (line.cost < bestCost) {
            bestCost = line.cost;
            best = line.order.clone();
            watch.found(bestCost);
        }
    }

    private void keep(int at) {
        kept[at] = line.order.clone();
        keptCost[at] = line.cost;
    }

    /** Whether the child was kept. One that costs as much as another counts as the same. */
    private boolean breed(SearchWatch watch) {
        int one = random.nextInt(KEPT);
        int other = (one + 1 + random.nextInt(KEPT - 1)) % KEPT;
        improve(cross(kept[one], kept[other]), watch);
        int worst = 0;
        boolean isNew = true;
        for (int i = 0; i < KEPT; i++) {
            worst = keptCost[i] > keptCost[worst] ? i : worst;
            isNew &= Math.abs(keptCost[i] - line.cost) > 1e-9 * Math.max(1, line.cost);
        }
        boolean isKept = isNew && line.cost < keptCost[worst];
        if (isKept) {
            keep(worst);
        }
        return isKept;
    }

    /** A stretch of a quarter to three quarters stays as in the one; all others come in the order of the other. */
    private int[] cross(int[] one, int[] other) {
        int count = line.count;
        int length = count / 4 + random.nextInt(count / 2);
        int from = random.nextInt(count - length + 1);
        int[] child = one.clone();
        boolean[] isPlaced = new boolean[count];
        for (int place = from; place < from + length; place++) {
            isPlaced[one[place]] = true;
        }
        int place = 0;
        for (int each : other) {
            if (!isPlaced[each]) {
                place = place == from ? from + length : place;
                child[place++] = each;
            }
        }
        return child;
    }
}
