package spoolyard.analysis.sequence;

import java.util.SplittableRandom;

/**
 * Iterated local search on one line that works day and night and where lateness alone costs: exchanges of blocks until none helps,
 * then a kick, after which the new sequence is kept or taken back. How much dearer it may be is measured by how much dearer the
 * last ones were. For one thread.
 *
 * <p>Source: Subramanian, Battarra and Potts, International Journal of Production Research 52 (2014): the scheme.
 */
final class LateSearch {
    private static final int LONGEST_APART = 3;
    private static final int LONGEST_KICKED = 8;
    private static final double SECOND_KICK = 1.0 / 3;
    private static final double HOTTEST = 0.3;
    private static final double MEMORY = 0.98;

    private final LateLine line;
    private final BlockExchange blocks;
    private final SplittableRandom random;
    private Budget budget;
    private int[] best;
    private double bestCost;

    LateSearch(SequencingProblem problem, long seed) {
        line = new LateLine(problem);
        blocks = new BlockExchange(line, LONGEST_APART);
        random = new SplittableRandom(seed);
    }

    Plan best() {
        return line.plan(best);
    }

    /** Searches from a plan. */
    void run(Plan from, Budget until, SearchWatch watch) {
        budget = until;
        line.set(from);
        bestCost = Double.POSITIVE_INFINITY;
        improve();
        remember(watch);
        int[] held = line.order.clone();
        double heldCost = line.cost;
        double typicalRise = 0;
        while (budget.progress() < 1 && bestCost > 0) {
            kick();
            improve();
            remember(watch);
            double rise = line.cost - heldCost;
            if (rise > 0) {
                typicalRise = typicalRise == 0 ? rise : MEMORY * typicalRise + (1 - MEMORY) * rise;
            }
            double temperature = HOTTEST * typicalRise * (1 - budget.progress());
            if (rise <= -temperature * Math.log(1 - random.nextDouble())) {
                System.arraycopy(line.order, 0, held, 0, held.length);
                heldCost = line.cost;
            } else {
                line.set(held);
            }
        }
    }

    private void remember(SearchWatch watch) {
        if (line.cost < bestCost) {
            bestCost = line.cost;
            best = line.order.clone();
            watch.found(bestCost);
        }
    }

    private void improve() {
        boolean isBetter = true;
        while (isBetter && budget.progress() < 1) {
            exchangeNeighbours();
            isBetter = exchangeApart();
        }
    }

    /** Until no place is left where it helps. */
    private void exchangeNeighbours() {
        int places = line.count - 1;
        int a = random.nextInt(places);
        for (int idle = 0; idle < places && budget.goesOn(triesFrom(a)); idle++) {
            if (blocks.improveNeighbours(a)) {
                idle = -1;
            }
            a = a + 1 < places ? a + 1 : 0;
        }
    }

    private long triesFrom(int place) {
        long left = line.count - place;
        return left * (left - 1) / 2;
    }

    /** Until it helps once. */
    private boolean exchangeApart() {
        int places = line.count - 2;
        int offset = random.nextInt(places);
        boolean isBetter = false;
        for (int i = 0; i < places && !isBetter && budget.goesOn(line.count); i++) {
            isBetter = blocks.improveApart((offset + i) % places);
        }
        return isBetter;
    }

    /** Three neighbouring segments B C D become D C B, whatever that costs; now and then twice. */
    private void kick() {
        int longest = Math.min(LONGEST_KICKED, line.count / 3);
        int kicks = random.nextDouble() < SECOND_KICK ? 2 : 1;
        for (int i = 0; i < kicks; i++) {
            int b = 1 + random.nextInt(longest);
            int c = b + 1 + random.nextInt(longest);
            int d = c + 1 + random.nextInt(longest);
            int start = random.nextInt(line.count - d + 1);
            line.exchange(start, start + b, start + c, start + d);
        }
    }
}
