package spoolyard.analysis.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.IntStream;
import spoolyard.analysis.experiment.BestSubset;
import spoolyard.analysis.study.Design;
import spoolyard.scenarios.factor.Level;

/**
 * A measure over two factors: squares with their values where the points lie in a grid, dots elsewhere. With more factors
 * a square is the mean over all levels of the others. A grid of two factors that are numbers has contours.
 */
final class FactorMap {
    private static final int LEFT = 104;
    private static final int TOP = 44;
    private static final int BELOW = 104;
    private static final int RIGHT = 24;
    private static final int DOT = 18;
    private static final int LEGEND = 150;
    private static final int LETTERS = 13;
    private static final int SMALL_LETTERS = 10;
    private static final int MOST_TICKS = 12;

    private final StudyReport report;
    private final Measure measure;
    private final int across;
    private final int up;
    private final FactorAxis x;
    private final FactorAxis y;
    private final BestSubset best;

    FactorMap(StudyReport report, Measure measure, int across, int up) {
        this.report = report;
        this.measure = measure;
        this.across = across;
        this.up = up;
        this.x = FactorAxis.of(report, across);
        this.y = FactorAxis.of(report, up);
        this.best = report.best();
    }

    /**
     * Draws it.
     *
     * @param pen draws
     * @param room where
     */
    void draw(Graphics2D pen, Rectangle room) {
        Rectangle plot =
                new Rectangle(room.x + LEFT, room.y + TOP, room.width - LEFT - RIGHT, room.height - TOP - BELOW);
        pen.setColor(Palette.TEXT);
        pen.setFont(new Font(Font.SANS_SERIF, Font.BOLD, 16));
        pen.drawString(measure.label(), plot.x, room.y + 28);
        int after = plot.x + pen.getFontMetrics().stringWidth(measure.label() + "   ");
        pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 14));
        pen.setColor(Palette.FAINT_TEXT);
        pen.drawString(sureness(), after, room.y + 28);
        if (report.design() == Design.GRID) {
            squares(pen, plot);
        } else {
            dots(pen, plot);
        }
        titles(pen, plot);
    }

    /** Beside the colours, which stretch over whatever there is, noise too. */
    private String sureness() {
        OptionalDouble half = usualHalfWidth();
        return half.isEmpty()
                ? ""
                : "half of the points known to \u00b1 " + Figures.shown(half.getAsDouble(), measure.decimals());
    }

    private OptionalDouble usualHalfWidth() {
        double[] halves = IntStream.range(0, report.points().size())
                .mapToObj(point -> report.interval(point, measure).halfWidth())
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .sorted()
                .toArray();
        return halves.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(halves[halves.length / 2]);
    }

    private void squares(Graphics2D pen, Rectangle plot) {
        Map<Integer, List<Integer>> cells = new TreeMap<>();
        for (int point = 0; point < report.points().size(); point++) {
            int column = x.index(report.points().get(point).get(across));
            int row = y.index(report.points().get(point).get(up));
            cells.computeIfAbsent(row * x.labels().size() + column, any -> new ArrayList<>())
                    .add(point);
        }
        // Maps of several pairs share the scale of the points, so that they compare.
        Shades shades = Shades.of(
                report.factors().size() > 2
                        ? pointMeans()
                        : cells.values().stream().map(this::mean).toList());
        cells.forEach((cell, points) ->
                square(pen, at(plot, cell % x.labels().size(), cell / x.labels().size()), points, shades));
        for (int column = 0; column < x.labels().size(); column++) {
            tickBelow(
                    pen,
                    plot,
                    at(plot, column, 0).x + at(plot, column, 0).width / 2,
                    column,
                    x.labels().size());
        }
        for (int row = 0; row < y.labels().size(); row++) {
            tickBeside(pen, plot, at(plot, 0, row).y + at(plot, 0, row).height / 2, row);
        }
        if (hasContours(report)) {
            contours(pen, plot, cells);
        }
        cells.forEach((cell, points) ->
                value(pen, at(plot, cell % x.labels().size(), cell / x.labels().size()), points, shades));
        legend(pen, plot, shades);
    }

    /**
     * Whether the maps of a study have contours, if their values differ enough.
     *
     * @param report the study
     * @return true for a grid of two factors that are numbers
     */
    static boolean hasContours(StudyReport report) {
        return report.design() == Design.GRID
                && report.factors().size() == 2
                && FactorAxis.of(report, 0).isNumeric()
                && FactorAxis.of(report, 1).isNumeric();
    }

    /** No closer to each other than half of the points are known. */
    private void contours(Graphics2D pen, Rectangle plot, Map<Integer, List<Integer>> cells) {
        double[][] grid = new double[y.labels().size()][x.labels().size()];
        cells.forEach((cell, points) ->
                grid[cell / x.labels().size()][cell % x.labels().size()] = mean(points));
        Shades shades = Shades.of(pointMeans());
        List<Double> values = Contours.roundValues(
                shades.least(), shades.most(), usualHalfWidth().orElse(0));
        Rectangle clip = pen.getClipBounds();
        pen.setClip(plot);
        new ContourLayer(pen, spot -> centre(plot, spot)).draw(grid, values);
        pen.setClip(clip);
    }

    private Point2D centre(Rectangle plot, Contours.Spot spot) {
        return new Point2D.Double(
                plot.x + plot.width * (spot.across() + 0.5) / x.labels().size() - 1,
                plot.y + plot.height * (1 - (spot.up() + 0.5) / y.labels().size()) - 1);
    }

    private Rectangle at(Rectangle plot, int column, int row) {
        int left = plot.x + plot.width * column / x.labels().size();
        int right = plot.x + plot.width * (column + 1) / x.labels().size();
        int bottom = plot.y + plot.height - plot.height * row / y.labels().size();
        int top = plot.y + plot.height - plot.height * (row + 1) / y.labels().size();
        return new Rectangle(left, top, right - left - 2, bottom - top - 2);
    }

    private void square(Graphics2D pen, Rectangle square, List<Integer> points, Shades shades) {
        Color ground = ground(points, shades);
        pen.setColor(ground);
        pen.fill(square);
        if (isBest(points)) {
            pen.setColor(Swatch.inkOn(ground));
            pen.setStroke(new BasicStroke(3));
            pen.drawRect(square.x + 2, square.y + 2, square.width - 5, square.height - 5);
            pen.setStroke(new BasicStroke(1));
        }
    }

    /** In small letters, or not at all, where it would not fit. */
    private void value(Graphics2D pen, Rectangle square, List<Integer> points, Shades shades) {
        double value = mean(points);
        if (Double.isNaN(value) || square.height < LETTERS + 5) {
            return;
        }
        String mark = isBest(points) ? "*" : isMember(points) ? "=" : "";
        String text = mark + Figures.shown(value, measure.decimals());
        pen.setColor(Swatch.inkOn(ground(points, shades)));
        for (int size = LETTERS; size >= SMALL_LETTERS; size--) {
            pen.setFont(new Font(Font.SANS_SERIF, isBest(points) ? Font.BOLD : Font.PLAIN, size));
            if (pen.getFontMetrics().stringWidth(text) < square.width) {
                centred(pen, text, square.x + square.width / 2, square.y + square.height / 2 + 5);
                return;
            }
        }
    }

    private Color ground(List<Integer> points, Shades shades) {
        double value = mean(points);
        return Double.isNaN(value) ? Palette.MIST : HeatScale.shade(shades.share(value));
    }

    private boolean isBest(List<Integer> points) {
        return isByMeasure() && points.equals(List.of(best.best()));
    }

    private boolean isByMeasure() {
        return measure == report.measure();
    }

    private boolean isMember(List<Integer> points) {
        return isByMeasure() && points.size() == 1 && best.members().containsAll(points);
    }

    private void dots(Graphics2D pen, Rectangle plot) {
        pen.setColor(Palette.GRID);
        pen.draw(plot);
        Shades shades = Shades.of(pointMeans());
        for (int point = 0; point < report.points().size(); point++) {
            dot(pen, plot, point, shades);
        }
        if (isByMeasure() && best.best() >= 0) {
            dot(pen, plot, best.best(), shades);
        }
        for (int i : ticks(x)) {
            tickBelow(pen, plot, placeX(plot, i), i, ticks(x).size());
        }
        for (int i : ticks(y)) {
            tickBeside(pen, plot, placeY(plot, i), i);
        }
        legend(pen, plot, shades);
    }

    /** All levels if they are few, else the ends. */
    private static List<Integer> ticks(FactorAxis axis) {
        int count = axis.labels().size();
        return count <= MOST_TICKS ? IntStream.range(0, count).boxed().toList() : List.of(0, count - 1);
    }

    private void dot(Graphics2D pen, Rectangle plot, int point, Shades shades) {
        List<Level> levels = report.points().get(point);
        int centreX = placeX(plot, x.index(levels.get(across)));
        int centreY = placeY(plot, y.index(levels.get(up)));
        double value = report.mean(point, measure);
        pen.setColor(Double.isNaN(value) ? Palette.MIST : HeatScale.shade(shades.share(value)));
        pen.fillOval(centreX - DOT / 2, centreY - DOT / 2, DOT, DOT);
        boolean isBest = isByMeasure() && point == best.best();
        pen.setColor(isBest ? Palette.TEXT : Palette.STONE);
        pen.setStroke(new BasicStroke(isBest ? 3 : 1));
        pen.drawOval(centreX - DOT / 2, centreY - DOT / 2, DOT, DOT);
        pen.setStroke(new BasicStroke(1));
    }

    private int placeX(Rectangle plot, int index) {
        return plot.x + DOT + (int) (x.places().get(index) * (plot.width - 2 * DOT));
    }

    private int placeY(Rectangle plot, int index) {
        return plot.y + plot.height - DOT - (int) (y.places().get(index) * (plot.height - 2 * DOT));
    }

    private void tickBelow(Graphics2D pen, Rectangle plot, int centre, int index, int count) {
        pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 13));
        pen.setColor(Palette.FAINT_TEXT);
        int letters = Math.max(3, plot.width / Math.max(1, count) / 8);
        centred(pen, Cell.clipped(x.shown(index), letters), centre, plot.y + plot.height + 18);
    }

    private void tickBeside(Graphics2D pen, Rectangle plot, int middle, int index) {
        pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 13));
        pen.setColor(Palette.FAINT_TEXT);
        String text = Cell.clipped(y.shown(index), 9);
        pen.drawString(text, plot.x - 8 - pen.getFontMetrics().stringWidth(text), middle + 5);
    }

    private void titles(Graphics2D pen, Rectangle plot) {
        pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 14));
        pen.setColor(Palette.TEXT);
        centred(pen, x.title(), plot.x + plot.width / 2, plot.y + plot.height + 42);
        int left = plot.x - LEFT + 22;
        int middle = plot.y + plot.height / 2;
        pen.rotate(-Math.PI / 2, left, middle);
        centred(pen, y.title(), left, middle);
        pen.rotate(Math.PI / 2, left, middle);
    }

    private void legend(Graphics2D pen, Rectangle plot, Shades shades) {
        int top = plot.y + plot.height + 62;
        int left = plot.x + (plot.width - LEGEND) / 2;
        for (int i = 0; i < LEGEND; i++) {
            pen.setColor(HeatScale.shade(i / (double) LEGEND));
            pen.fillRect(left + i, top, 1, 12);
        }
        pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 13));
        pen.setColor(Palette.FAINT_TEXT);
        String least = shades.isEmpty() ? "" : Figures.shown(shades.least(), measure.decimals());
        pen.drawString(least, left - 8 - pen.getFontMetrics().stringWidth(least), top + 11);
        pen.drawString(
                shades.isEmpty() ? "" : Figures.shown(shades.most(), measure.decimals()), left + LEGEND + 8, top + 11);
    }

    private List<Double> pointMeans() {
        return IntStream.range(0, report.points().size())
                .mapToObj(point -> report.mean(point, measure))
                .toList();
    }

    private double mean(List<Integer> points) {
        return points.stream()
                .mapToDouble(point -> report.mean(point, measure))
                .average()
                .orElse(Double.NaN);
    }

    private static void centred(Graphics2D pen, String text, int centre, int baseline) {
        pen.drawString(text, centre - pen.getFontMetrics().stringWidth(text) / 2, baseline);
    }

    /**
     * The values between which the colours go.
     *
     * @param least palest
     * @param most darkest
     */
    private record Shades(double least, double most) {
        static Shades of(List<Double> values) {
            var known = values.stream()
                    .filter(value -> !value.isNaN())
                    .mapToDouble(Double::doubleValue)
                    .summaryStatistics();
            return new Shades(known.getMin(), known.getMax());
        }

        double share(double value) {
            return most > least ? (value - least) / (most - least) : 0;
        }

        boolean isEmpty() {
            return least > most;
        }
    }
}
