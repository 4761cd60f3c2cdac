package spoolyard.analysis.sequence;

import java.util.SplittableRandom;

/**
 * Iterated local search on one line where lateness costs: every segment is tried in every other place and against every other
 * order until nothing helps; then three short neighbouring segments change places, and it begins again. For one thread.
 *
 * <p>Source: Subramanian, Battarra and Potts, International Journal of Production Research 52 (2014): the neighbourhoods.
 */
final class Descent {
    private static final int LONGEST = 13;
    private static final int LONGEST_SWAPPED = 3;
    private static final int LONGEST_KICKED = 4;
    private static final double HOTTEST = 0.01;
    private static final double LEAST_GAIN = 1e-6;

    private final Schedule schedule;
    private final SplittableRandom random;
    private final Pieces pieces = new Pieces();
    private final int first;
    private final Budget budget;

    Descent(Schedule schedule, SplittableRandom random, Budget budget) {
        this.schedule = schedule;
        this.random = random;
        this.budget = budget;
        first = schedule.kernels[0].frozen;
    }

    /** Searches from the plan that the schedule is at; returns when the budget is used up, at the last plan kept. */
    void run(Runnable remember) {
        improve();
        remember.run();
        Plan held = schedule.plan();
        double heldCost = schedule.cost;
        while (budget.goesOn()) {
            kick();
            improve();
            remember.run();
            double temperature = HOTTEST * heldCost * (1 - budget.progress());
            if (schedule.cost <= heldCost - temperature * Math.log(1 - random.nextDouble())) {
                held = schedule.plan();
                heldCost = schedule.cost;
            } else {
                schedule.set(held);
            }
        }
    }

    private void improve() {
        boolean isBetter = true;
        while (isBetter && budget.progress() < 1) {
            isBetter = false;
            int start = random.nextInt(LONGEST);
            for (int i = 0; i < LONGEST && !isBetter; i++) {
                isBetter = insertions(1 + (start + i) % LONGEST);
            }
            isBetter = isBetter || swaps();
        }
    }

    private boolean insertions(int segment) {
        int end = schedule.length[0];
        int places = end - segment + 1 - first;
        if (places <= 1) {
            return false;
        }
        boolean isBetter = false;
        int offset = random.nextInt(places);
        for (int i = 0; i < places; i++) {
            isBetter |= insertBest(first + (offset + i) % places, segment, end);
        }
        return isBetter;
    }

    private boolean insertBest(int from, int segment, int end) {
        int to = from + segment;
        double limit = schedule.cost - LEAST_GAIN;
        int bestGap = -1;
        budget.goesOn();
        for (int gap = first; gap <= end; gap++) {
            if (gap < from || gap > to) {
                cut(from, to, gap, end);
                double cost = schedule.costWith(0, pieces, limit);
                if (cost < limit) {
                    limit = cost;
                    bestGap = gap;
                }
            }
        }
        if (bestGap >= 0) {
            cut(from, to, bestGap, end);
            schedule.apply(0, pieces);
        }
        return bestGap >= 0;
    }

    private void cut(int from, int to, int gap, int end) {
        if (gap > to) {
            pieces.keep(from).add(0, to, gap).add(0, from, to).add(0, gap, end);
        } else {
            pieces.keep(gap).add(0, from, to).add(0, gap, from).add(0, to, end);
        }
    }

    private boolean swaps() {
        int end = schedule.length[0];
        boolean isBetter = false;
        for (int a = first; a < end; a++) {
            for (int b = a + 1; b < end; b++) {
                for (int one = 1; one <= LONGEST_SWAPPED && a + one <= b; one++) {
                    isBetter |= swap(a, one, b, end);
                }
            }
        }
        return isBetter;
    }

    private boolean swap(int a, int one, int b, int end) {
        for (int other = 1; other <= LONGEST_SWAPPED && b + other <= end; other++) {
            pieces.keep(a)
                    .add(0, b, b + other)
                    .add(0, a + one, b)
                    .add(0, a, a + one)
                    .add(0, b + other, end);
            if (schedule.costWith(0, pieces, schedule.cost - LEAST_GAIN) < Double.POSITIVE_INFINITY) {
                schedule.apply(0, pieces);
                return true;
            }
        }
        return false;
    }

    /** Three neighbouring segments B C D become D C B, whatever that costs. */
    private void kick() {
        int end = schedule.length[0];
        int b = 1 + random.nextInt(LONGEST_KICKED);
        int c = 1 + random.nextInt(LONGEST_KICKED);
        int d = 1 + random.nextInt(LONGEST_KICKED);
        int room = end - first - b - c - d;
        if (room >= 0) {
            int start = first + random.nextInt(room + 1);
            pieces.keep(start)
                    .add(0, start + b + c, start + b + c + d)
                    .add(0, start + b, start + b + c)
                    .add(0, start, start + b)
                    .add(0, start + b + c + d, end);
            schedule.apply(0, pieces);
        }
    }
}
