package spoolyard.analysis.sequence;

import java.util.Arrays;

/**
 * Local search on a tour: three edges out, three in, no segment turned round. Looks at near nodes only, and only round the
 * nodes that are on its queue. For one thread.
 *
 * <p>Source: or-3opt, Kanellakis and Papadimitriou, Operations Research 28 (1980); neighbour lists and queue after Johnson and
 * McGeoch, in Aarts and Lenstra, Local Search in Combinatorial Optimization, 1997.
 */
final class SegmentExchange {
    private static final double LEAST_GAIN = 1e-9;

    private final Tour tour;
    private final int[] near;
    private final int width;
    private final int[] queue;
    private final boolean[] isQueued;
    private int head;
    private int waiting;

    /** Looks at as many near nodes of each as there are, the nearest first: those of node 0, then of 1 and so on. */
    SegmentExchange(Tour tour, int[] near) {
        this.tour = tour;
        this.near = near;
        width = near.length / tour.size;
        queue = new int[tour.size];
        isQueued = new boolean[tour.size];
    }

    void push(int city) {
        if (!isQueued[city]) {
            isQueued[city] = true;
            queue[(head + waiting++) % queue.length] = city;
        }
    }

    void pushAll() {
        Arrays.stream(tour.node).forEach(this::push);
    }

    /** Improves until the queue is empty; returns what was gained. */
    double improve() {
        double gained = 0;
        while (waiting > 0) {
            int city = queue[head];
            head = head + 1 == queue.length ? 0 : head + 1;
            waiting--;
            isQueued[city] = false;
            double gain = improveAt(city);
            while (gain > 0) {
                gained += gain;
                gain = improveAt(city);
            }
        }
        return gained;
    }

    /** Takes out the edge behind a node and two others, if that gains anything. */
    private double improveAt(int a) {
        int afterA = tour.after(a);
        double edge = tour.distance(a, afterA);
        for (int i = a * width; i < (a + 1) * width; i++) {
            int afterB = near[i];
            double gain = edge - tour.distance(a, afterB);
            if (gain <= LEAST_GAIN) {
                return 0;
            }
            if (afterB != afterA) {
                double whole = closeAt(a, afterA, afterB, gain);
                if (whole > 0) {
                    return whole;
                }
            }
        }
        return 0;
    }

    private double closeAt(int a, int afterA, int afterB, double gainSoFar) {
        int b = tour.before(afterB);
        double gain = gainSoFar + tour.distance(b, afterB);
        int start = tour.place[afterA];
        int first = steps(start, tour.place[afterB]);
        for (int i = b * width; i < (b + 1) * width; i++) {
            int afterC = near[i];
            double left = gain - tour.distance(b, afterC);
            if (left <= LEAST_GAIN) {
                return 0;
            }
            int both = steps(start, tour.place[afterC]);
            if (both > first) {
                int c = tour.before(afterC);
                double whole = left + tour.distance(c, afterC) - tour.distance(c, afterA);
                if (whole > LEAST_GAIN) {
                    tour.exchange(start, first, both - first);
                    pushEnds(a, afterA, b);
                    pushEnds(afterB, c, afterC);
                    return whole;
                }
            }
        }
        return 0;
    }

    private int steps(int from, int to) {
        return to >= from ? to - from : to - from + tour.size;
    }

    private void pushEnds(int one, int two, int three) {
        push(one);
        push(two);
        push(three);
    }
}
