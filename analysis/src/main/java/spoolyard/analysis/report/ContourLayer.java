package spoolyard.analysis.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Draws contours over a map, each with its value where it is furthest from the points and other values. */
final class ContourLayer {
    private static final BasicStroke HALO = new BasicStroke(4, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    private static final BasicStroke THIN = new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    private static final Color VEIL = new Color(255, 255, 255, 150);
    private static final int FONT_SIZE = 12;
    private static final Font FONT = new Font(Font.SANS_SERIF, Font.BOLD, FONT_SIZE);

    private final Graphics2D pen;
    private final Function<Contours.Spot, Point2D> place;
    private final List<Point2D> taken = new ArrayList<>();

    /**
     * Prepares to draw.
     *
     * @param pen draws
     * @param place where a place of the grid is on the picture
     */
    ContourLayer(Graphics2D pen, Function<Contours.Spot, Point2D> place) {
        this.pen = pen;
        this.place = place;
    }

    /**
     * Draws them.
     *
     * @param grid shape {@code [row][column]}; values of the points, not a number where there is none
     * @param levels the values that get a line
     */
    void draw(double[][] grid, List<Double> levels) {
        for (int row = 0; row < grid.length; row++) {
            for (int column = 0; column < grid[row].length; column++) {
                taken.add(place.apply(new Contours.Spot(column, row)));
            }
        }
        int digits = decimals(levels);
        pen.setFont(FONT);
        List<Contours.Contour> contours = levels.stream()
                .flatMap(level -> Contours.of(grid, level).stream())
                .filter(contour -> carriesItsValue(contour, digits))
                .toList();
        contours.forEach(this::line);
        contours.forEach(contour -> label(contour, digits));
        pen.setStroke(new BasicStroke(1));
    }

    private void line(Contours.Contour contour) {
        Path2D path = new Path2D.Double();
        List<Point2D> points = contour.spots().stream().map(place).toList();
        path.moveTo(points.get(0).getX(), points.get(0).getY());
        points.forEach(point -> path.lineTo(point.getX(), point.getY()));
        pen.setColor(VEIL);
        pen.setStroke(HALO);
        pen.draw(path);
        pen.setColor(Palette.TEXT);
        pen.setStroke(THIN);
        pen.draw(path);
    }

    /** A line that its value would hide is a stub at one point or two, and tells nothing. */
    private boolean carriesItsValue(Contours.Contour contour, int digits) {
        List<Point2D> points = contour.spots().stream().map(place).toList();
        double length = IntStream.range(1, points.size())
                .mapToDouble(i -> points.get(i).distance(points.get(i - 1)))
                .sum();
        return length > 2 * pen.getFontMetrics().stringWidth(Figures.shown(contour.value(), digits));
    }

    private void label(Contours.Contour contour, int digits) {
        List<Point2D> points = contour.spots().stream().map(place).toList();
        String text = Figures.shown(contour.value(), digits);
        Optional<Point2D> roomiest = IntStream.range(1, points.size())
                .mapToObj(i -> middle(points.get(i - 1), points.get(i)))
                .max(Comparator.comparingDouble(this::clearance));
        roomiest.ifPresent(spot -> {
            text(text, spot);
            taken.add(spot);
        });
    }

    private double clearance(Point2D point) {
        return taken.stream().mapToDouble(point::distance).min().orElse(0);
    }

    private void text(String text, Point2D at) {
        int width = pen.getFontMetrics().stringWidth(text);
        int left = (int) Math.round(at.getX() - width / 2.0);
        int top = (int) Math.round(at.getY() - FONT_SIZE / 2.0 - 1);
        pen.setColor(Color.WHITE);
        pen.fillRoundRect(left - 3, top - 1, width + 6, FONT_SIZE + 4, 6, 6);
        pen.setColor(Palette.TEXT);
        pen.drawString(text, left, top + FONT_SIZE);
    }

    private static Point2D middle(Point2D one, Point2D other) {
        return new Point2D.Double((one.getX() + other.getX()) / 2, (one.getY() + other.getY()) / 2);
    }

    private static int decimals(List<Double> levels) {
        return levels.stream()
                .mapToInt(
                        level -> BigDecimal.valueOf(level).stripTrailingZeros().scale())
                .reduce(0, Math::max);
    }
}
