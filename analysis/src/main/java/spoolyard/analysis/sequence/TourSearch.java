package spoolyard.analysis.sequence;

import java.util.SplittableRandom;

/**
 * One line whose changeovers alone cost: an asymmetric travelling salesman, solved by iterated local search. A kick reverses
 * the order of three neighbouring segments, short ones or, every other time, such that near nodes meet; {@link SegmentExchange}
 * repairs it, and the new tour is kept or taken back as in annealing, at a temperature
 * that begins at what an edge costs above the least assignment on average, or at less. For one thread.
 *
 * <p>Source: iterated local search, Lourenço, Martin and Stützle, in Handbook of Metaheuristics, 2003; double bridge: Martin, Otto
 * and Felten, Complex Systems 5 (1991).
 */
final class TourSearch {
    private static final int LONGEST = 50;
    private static final double HOTTEST = 0.4;
    private static final double HOTTEST_ABOVE = 1;
    private static final double COOLED = 0.1;
    private static final int CYCLES = 3;
    private static final int NEAR_PERCENT = 50;
    private static final int TRIES = 10;

    private final LineTour line;
    private final Tour tour;
    private final SegmentExchange repair;
    private final SplittableRandom random;
    private final int longest;
    private final int[] near;
    private final int width;
    private double length;
    private int[] best;
    private double bestLength;

    TourSearch(LineTour line, long seed) {
        this.line = line;
        tour = new Tour(line.size, line.distance);
        near = line.near();
        width = near.length / line.size;
        repair = new SegmentExchange(tour, line.near());
        random = new SplittableRandom(seed);
        longest = Math.max(1, Math.min(LONGEST, (tour.size - 1) / 3));
    }

    Plan best() {
        return line.plan(best);
    }

    void run(Plan from, Budget budget, SearchWatch watch) {
        start(from);
        double hottest = Math.min(HOTTEST_ABOVE * length, HOTTEST * (line.least + length)) / tour.size;
        double temperature = 0;
        long iteration = 0;
        while (budget.goesOn()) {
            if (iteration++ % 256 == 0) {
                double phase = budget.progress() * CYCLES % 1;
                temperature = hottest * Math.pow(COOLED, phase);
            }
            double before = length;
            tour.mark();
            kick();
            length -= repair.improve();
            if (length > before - temperature * Math.log(1 - random.nextDouble())) {
                tour.takeBack();
                length = before;
            } else if (length < bestLength - 1e-7) {
                keep();
                watch.found(line.least + bestLength);
            }
        }
    }

    private void start(Plan from) {
        tour.set(line.nodes(from));
        keep();
        repair.pushAll();
        repair.improve();
        keep();
    }

    /** Keeps the tour as the best; reckons its length anew, so that rounding doesn't add up. */
    private void keep() {
        length = tour.length();
        best = tour.node.clone();
        bestLength = length;
    }

    private void kick() {
        boolean isNear = random.nextInt(100) < NEAR_PERCENT;
        if (!isNear || !kickNear()) {
            int start = random.nextInt(tour.size);
            reverseOrder(start, 1 + random.nextInt(longest), 1 + random.nextInt(longest), 1 + random.nextInt(longest));
        }
    }

    /** An edge to a near node closes a circle, which is joined to the rest again; returns false if that cannot be. */
    private boolean kickNear() {
        int a = random.nextInt(tour.size);
        int start = tour.place[tour.after(a)];
        int inner = steps(start, tour.place[near(a)]);
        return inner >= 2 && inner <= tour.size - 2 && joinCircle(start, inner);
    }

    /** Of some edges to near nodes out of the circle, the one that adds least. */
    private boolean joinCircle(int start, int inner) {
        double least = Double.POSITIVE_INFINITY;
        int first = 0;
        int all = 0;
        for (int attempt = 0; attempt < TRIES; attempt++) {
            int at = random.nextInt(inner - 1);
            int b = tour.at(start + at);
            int afterD = near(b);
            int whole = steps(start, tour.place[afterD]);
            double added = whole > inner ? added(b, afterD) : Double.POSITIVE_INFINITY;
            if (added < least) {
                least = added;
                first = at + 1;
                all = whole;
            }
        }
        if (all > 0) {
            reverseOrder(start, first, inner - first, all - inner);
        }
        return all > 0;
    }

    private double added(int b, int afterD) {
        int afterB = tour.after(b);
        int d = tour.before(afterD);
        return tour.distance(b, afterD)
                + tour.distance(d, afterB)
                - tour.distance(b, afterB)
                - tour.distance(d, afterD);
    }

    private int near(int node) {
        return near[node * width + random.nextInt(width)];
    }

    private int steps(int from, int to) {
        return to >= from ? to - from : to - from + tour.size;
    }

    /** Three neighbouring segments B C D become D C B: four edges change, which no single exchange undoes. */
    private void reverseOrder(int start, int b, int c, int d) {
        int beforeB = tour.at(start == 0 ? tour.size - 1 : start - 1);
        int[] ends = {
            beforeB,
            tour.at(start),
            tour.at(wrap(start + b - 1)),
            tour.at(wrap(start + b)),
            tour.at(wrap(start + b + c - 1)),
            tour.at(wrap(start + b + c)),
            tour.at(wrap(start + b + c + d - 1)),
            tour.at(wrap(start + b + c + d))
        };
        length += tour.distance(ends[0], ends[5]) + tour.distance(ends[6], ends[3]);
        length += tour.distance(ends[4], ends[1]) + tour.distance(ends[2], ends[7]);
        for (int i = 0; i < ends.length; i += 2) {
            length -= tour.distance(ends[i], ends[i + 1]);
        }
        tour.exchange(start, b, c + d);
        tour.exchange(tour.place[ends[3]], c, d);
        for (int end : ends) {
            repair.push(end);
        }
    }

    private int wrap(int index) {
        return index < tour.size ? index : index - tour.size;
    }
}
