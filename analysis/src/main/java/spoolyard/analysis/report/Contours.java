package spoolyard.analysis.report;

import java.math.BigDecimal;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;

/**
 * Lines of equal value over a full grid: straight through each square of four neighbours, between spots found by linear
 * interpolation on its edges (marching squares, from memory: W. E. Lorensen and H. E. Cline, Computer Graphics 21(4), 1987, in two
 * dimensions). Where opposite corners are on the same side, the mean of the four says which are joined. A square that
 * lacks a value has no line.
 *
 * <p>A spot is off the true line by as much as linear interpolation errs: in value at most h^2 / 8 times the greatest second
 * derivative, h the distance of the points.
 */
final class Contours {
    private static final List<Long> ROUND = List.of(1L, 2L, 5L, 10L);
    private static final int USUAL_COUNT = 5;
    private static final double ROUNDING = 1e-9;

    private final double[][] values;
    private final double at;
    private final Map<Edge, Spot> spots = new LinkedHashMap<>();
    private final Map<Edge, List<Edge>> joined = new LinkedHashMap<>();

    private Contours(double[][] values, double at) {
        this.values = values;
        this.at = at;
    }

    /**
     * A place of the grid.
     *
     * @param across columns from the first, a fraction between two
     * @param up rows from the first, a fraction between two
     */
    record Spot(double across, double up) {}

    /**
     * A line of equal value. Immutable.
     *
     * @param value on all of it
     * @param spots in order along it, at least two; the first again at the end if it is closed
     */
    record Contour(double value, List<Spot> spots) {
        Contour {
            spots = List.copyOf(spots);
        }
    }

    /**
     * From a point of the grid to the next.
     *
     * @param row of the point
     * @param column of the point
     * @param isAcross to the next column, else to the next row
     */
    private record Edge(int row, int column, boolean isAcross) {}

    /**
     * All lines of a value.
     *
     * @param values shape {@code [row][column]}, all rows of the same length; not a number where there is none
     * @param at the value
     * @return may be empty
     */
    static List<Contour> of(double[][] values, double at) {
        Contours contours = new Contours(values, at);
        for (int row = 0; row + 1 < values.length; row++) {
            for (int column = 0; column + 1 < values[row].length; column++) {
                contours.square(row, column);
            }
        }
        return contours.lines();
    }

    /**
     * Values worth a line: round, inside a range, some five of them.
     *
     * @param least of the range
     * @param most of the range
     * @param closest least distance of two, {@code >= 0}
     * @return ascending; empty if the range is no wider than that
     */
    static List<Double> roundValues(double least, double most, double closest) {
        if (!(most - least > closest)) {
            return List.of();
        }
        BigDecimal step = roundStep(Math.max(closest, (most - least) / USUAL_COUNT));
        long first = (long) Math.floor(least / step.doubleValue() + ROUNDING) + 1;
        long last = (long) Math.ceil(most / step.doubleValue() - ROUNDING) - 1;
        return LongStream.rangeClosed(first, last)
                .mapToObj(i -> step.multiply(BigDecimal.valueOf(i)).doubleValue())
                .toList();
    }

    private static BigDecimal roundStep(double atLeast) {
        int exponent = (int) Math.floor(Math.log10(atLeast));
        return ROUND.stream()
                .map(round -> BigDecimal.valueOf(round).scaleByPowerOfTen(exponent))
                .filter(step -> step.doubleValue() >= atLeast * (1 - ROUNDING))
                .findFirst()
                .orElseThrow();
    }

    /** Corners and edges run round the square: below, right, above, left; edge i leads from corner i to the next. */
    private void square(int row, int column) {
        double[] corners = {
            values[row][column], values[row][column + 1], values[row + 1][column + 1], values[row + 1][column]
        };
        double middle = (corners[0] + corners[1] + corners[2] + corners[3]) / 4;
        if (Double.isNaN(middle)) {
            return;
        }
        List<Edge> edges = List.of(
                new Edge(row, column, true),
                new Edge(row, column + 1, false),
                new Edge(row + 1, column, true),
                new Edge(row, column, false));
        List<Edge> crossed = new ArrayList<>();
        for (int i = 0; i < corners.length; i++) {
            if (isAbove(corners[i]) != isAbove(corners[(i + 1) % corners.length])) {
                crossed.add(edges.get(i));
            }
        }
        boolean isFirstCutOff = isAbove(corners[0]) != isAbove(middle);
        for (int i = 0; i < crossed.size(); i += 2) {
            int from = crossed.size() == 4 && isFirstCutOff ? (i + 3) % 4 : i;
            join(crossed.get(from), crossed.get((from + 1) % crossed.size()));
        }
    }

    private boolean isAbove(double value) {
        return value >= at;
    }

    private void join(Edge one, Edge other) {
        joined.computeIfAbsent(one, this::crossed).add(other);
        joined.computeIfAbsent(other, this::crossed).add(one);
    }

    private List<Edge> crossed(Edge edge) {
        double from = values[edge.row][edge.column];
        double to = edge.isAcross ? values[edge.row][edge.column + 1] : values[edge.row + 1][edge.column];
        double part = (at - from) / (to - from);
        spots.put(edge, new Spot(edge.column + (edge.isAcross ? part : 0), edge.row + (edge.isAcross ? 0 : part)));
        return new ArrayList<>();
    }

    /** Those with ends first, so that what is left is closed. */
    private List<Contour> lines() {
        List<Contour> lines = new ArrayList<>();
        List<Edge> ends = joined.keySet().stream()
                .filter(edge -> joined.get(edge).size() == 1)
                .toList();
        Deque<Edge> starts = new ArrayDeque<>(ends);
        starts.addAll(joined.keySet());
        for (Edge start : starts) {
            if (!joined.get(start).isEmpty()) {
                lines.add(new Contour(at, walked(start)));
            }
        }
        return lines;
    }

    private List<Spot> walked(Edge start) {
        List<Spot> walked = new ArrayList<>(List.of(spots.get(start)));
        Edge here = start;
        while (!joined.get(here).isEmpty()) {
            Edge next = joined.get(here).remove(0);
            joined.get(next).remove(here);
            walked.add(spots.get(next));
            here = next;
        }
        return walked;
    }
}
