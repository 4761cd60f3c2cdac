package spoolyard.analysis.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import spoolyard.core.colour.Viewing;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.Plant;

/** What the marks and colours in the picture of a plan mean, light to dark. */
final class PlanLegend {
    private static final int ROW = 26;
    private static final int MARKS = 34;
    private static final int COLUMN = 176;
    private static final int PATCH = 16;
    private static final int LONGEST_NAME = 18;

    private final List<Colour> colours;
    private final Viewing viewing;
    private final int columns;

    PlanLegend(Plant plant, Viewing viewing, int width) {
        Map<String, Colour> byCode = new TreeMap<>();
        plant.book()
                .orders()
                .forEach(order -> byCode.put(
                        order.product().colour().code(), order.product().colour()));
        this.colours = byCode.values().stream()
                .sorted(Comparator.comparingDouble(Colour::lightness).reversed())
                .toList();
        this.viewing = viewing;
        this.columns = Math.max(1, width / COLUMN);
    }

    int height() {
        return MARKS + ROW * ((colours.size() + columns - 1) / columns) + 2 * ROW;
    }

    void draw(Graphics2D pen, int left, int top) {
        pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 14));
        marks(pen, left, top);
        for (int i = 0; i < colours.size(); i++) {
            Colour colour = colours.get(i);
            int x = left + i % columns * COLUMN;
            int y = top + MARKS + i / columns * ROW;
            patch(pen, x, y, Swatch.of(colour, viewing));
            text(pen, colour.code() + " " + Cell.clipped(colour.name(), LONGEST_NAME), x, y);
        }
    }

    private static void marks(Graphics2D pen, int left, int top) {
        PlanRow.hatched(pen, new Rectangle(left, top, PATCH, PATCH), true);
        int x = text(pen, "colour change", left, top);
        PlanRow.hatched(pen, new Rectangle(x, top, PATCH, PATCH), false);
        x = text(pen, "polymer or diameter change", x, top);
        patch(pen, x, top, Palette.MIST);
        x = text(pen, "closed", x, top);
        pen.setColor(Palette.RED);
        pen.fillRect(x - 6, top + PATCH - 2, PATCH + 6, 3);
        PlanRow.flag(pen, x + PATCH, top);
        x = text(pen, "late, and since when", x, top);
        pen.setColor(Palette.TEXT);
        pen.fillRect(x, top + 3, PATCH, 3);
        x = text(pen, "frozen", x, top);
        pen.setStroke(new BasicStroke(2));
        pen.drawLine(x + PATCH / 2, top, x + PATCH / 2, top + PATCH);
        text(pen, "end of the calendar", x, top);
    }

    private static void patch(Graphics2D pen, int x, int y, Color colour) {
        pen.setColor(colour);
        pen.fillRect(x, y, PATCH, PATCH);
        pen.setColor(Palette.FAINT_TEXT);
        pen.setStroke(new BasicStroke(1));
        pen.drawRect(x, y, PATCH, PATCH);
    }

    /** Writes beside a patch; tells where the next one may stand. */
    private static int text(Graphics2D pen, String text, int x, int y) {
        pen.setColor(Palette.TEXT);
        pen.drawString(text, x + PATCH + 8, y + 13);
        return x + PATCH + 36 + pen.getFontMetrics().stringWidth(text);
    }
}
