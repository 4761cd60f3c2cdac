package spoolyard.analysis.experiment;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import spoolyard.core.random.Streams;
import spoolyard.core.random.Uniforms;

/**
 * Random walks through a grid of four levels a factor, one factor a step, for elementary effects. Each step is two thirds
 * of the range, so that from every level there is just one: each of the steps of the grid is equally likely. Immutable.
 *
 * <p>Source: M. D. Morris, Factorial sampling plans for preliminary computational experiments, Technometrics 33 (1991)
 * 161-174, with p = 4 and Delta = p / (2 (p - 1)).
 *
 * @param walks one list a walk, of one more points than factors; a point has a share of the range for each factor, in
 *     [0, 1]
 */
public record MorrisDesign(List<List<List<Double>>> walks) {
    /** Step of a factor, as a share of its range. */
    public static final double STEP = 2.0 / 3;

    private static final int LEVELS = 4;

    /** Copies the list. */
    public MorrisDesign {
        walks = List.copyOf(walks);
    }

    /**
     * Draws walks.
     *
     * @param factors number of factors, {@code >= 1}
     * @param walks number of walks, {@code >= 2}
     * @param seed any value; the same gives the same walks
     * @return the design
     */
    public static MorrisDesign of(int factors, int walks, long seed) {
        Uniforms uniforms = new Streams(seed, 0).uniforms("Morris design");
        return new MorrisDesign(IntStream.range(0, walks)
                .mapToObj(walk -> walk(factors, uniforms))
                .toList());
    }

    private static List<List<Double>> walk(int factors, Uniforms uniforms) {
        List<Double> point = new ArrayList<>();
        List<Integer> order = new ArrayList<>();
        for (int factor = 0; factor < factors; factor++) {
            point.add((int) (LEVELS * uniforms.next()) / (LEVELS - 1.0));
            order.add((int) ((factor + 1) * uniforms.next()), factor);
        }
        List<List<Double>> points = new ArrayList<>();
        points.add(List.copyOf(point));
        for (int factor : order) {
            double from = point.get(factor);
            point.set(factor, from < 0.5 ? from + STEP : from - STEP);
            points.add(List.copyOf(point));
        }
        return Collections.unmodifiableList(points);
    }

    /**
     * Number of factors.
     *
     * @return at least 1
     */
    public int factors() {
        return walks.get(0).size() - 1;
    }

    /**
     * All points, walk by walk.
     *
     * @return walks times one more than factors
     */
    public List<List<Double>> points() {
        return walks.stream().flatMap(List::stream).toList();
    }

    /**
     * Where a factor is moved in a walk.
     *
     * @param walk from 0
     * @param factor from 0
     * @return place among {@link #points()} of the point before the step; the one after it follows
     */
    public int before(int walk, int factor) {
        List<List<Double>> points = walks.get(walk);
        int step = IntStream.range(0, factors())
                .filter(i -> !points.get(i).get(factor).equals(points.get(i + 1).get(factor)))
                .findFirst()
                .orElseThrow();
        return walk * points.size() + step;
    }
}
