package spoolyard.analysis.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spoolyard.scenarios.ShiftRoster;
import spoolyard.scenarios.calendar.ShiftTemplate;

/** A roster drawn to the hour: a row for each crew, a bar for each of its shifts. */
public final class RosterChart {
    private static final int MARGIN = 20;
    private static final int LEFT = 150;
    private static final int RIGHT = ChartLook.WIDTH - 110;
    private static final int TOP = 110;
    private static final int BELOW = 80;
    private static final int HIGHEST_ROW = 80;
    private static final double BAR_SHARE = 0.62;
    private static final int NARROWEST_NAMED = 14;
    private static final int LONGEST_NAME = 15;
    private static final List<Color> COLOURS =
            List.of(Palette.MUSTARD, Palette.SKY, Palette.INDIGO, Palette.CORAL, Palette.PETROL, Palette.STONE);

    private final String title;
    private final ShiftRoster roster;
    private final RosterRows rows;
    private final Graphics2D pen;

    private RosterChart(String title, ShiftRoster roster, RosterRows rows, Graphics2D pen) {
        this.title = title;
        this.roster = roster;
        this.rows = rows;
        this.pen = pen;
    }

    private static int rowHeight(RosterRows rows) {
        return Math.min(
                HIGHEST_ROW, (ChartLook.HEIGHT - TOP - BELOW) / rows.rows().size());
    }

    /**
     * Draws it.
     *
     * @param title what it shows
     * @param roster who works when
     * @return PNG
     */
    public static byte[] png(String title, ShiftRoster roster) {
        RosterRows rows = new RosterRows(roster);
        int height = TOP + rows.rows().size() * rowHeight(rows) + BELOW;
        BufferedImage image = new BufferedImage(ChartLook.WIDTH, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        try {
            new RosterChart(title, roster, rows, pen).draw(height);
        } finally {
            pen.dispose();
        }
        return Png.of(image);
    }

    private void draw(int whole) {
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, ChartLook.WIDTH, whole);
        pen.setFont(new Font(Font.SANS_SERIF, Font.BOLD, 22));
        pen.setColor(Palette.TEXT);
        pen.drawString(title, MARGIN, 48);
        pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 14));
        List<RosterRows.Row> all = rows.rows();
        int height = rowHeight(rows);
        days(TOP + height * all.size());
        for (int i = 0; i < all.size(); i++) {
            row(all.get(i), TOP + i * height, height);
        }
        legend(TOP + height * all.size() + 40);
    }

    private void days(int bottom) {
        for (int day = 0; day <= rows.days(); day++) {
            boolean isWeek = day % 7 == 0;
            pen.setColor(isWeek ? Palette.FAINT_TEXT : Palette.GRID);
            pen.setStroke(new BasicStroke(1));
            pen.drawLine(x(day), TOP - (isWeek ? 8 : 0), x(day), bottom);
            if (day < rows.days()) {
                pen.setColor(Palette.FAINT_TEXT);
                centred(dayName(day), (x(day) + x(day + 1)) / 2, TOP - 10);
            }
        }
        pen.drawString("h a week", RIGHT + 14, TOP - 10);
    }

    private String dayName(int day) {
        return rows.days() % 7 == 0
                ? rows.firstDay()
                        .plusDays(day)
                        .getDayOfWeek()
                        .getDisplayName(TextStyle.SHORT, Locale.ENGLISH)
                        .substring(0, 2)
                : String.valueOf(day + 1);
    }

    private static int x(double day, int days) {
        return (int) Math.round(LEFT + (RIGHT - LEFT) * day / days);
    }

    private int x(double day) {
        return x(day, rows.days());
    }

    private void row(RosterRows.Row row, int top, int height) {
        int bar = (int) (height * BAR_SHARE);
        int middle = top + height / 2;
        pen.setColor(Palette.TEXT);
        String name = row.work().name();
        pen.drawString(name.length() > LONGEST_NAME ? name.substring(0, LONGEST_NAME) : name, MARGIN, middle + 5);
        pen.drawString(
                Figures.shown(row.weekH(), row.weekH() == Math.rint(row.weekH()) ? 0 : 1), RIGHT + 14, middle + 5);
        for (int day = 0; day < row.shifts().size(); day++) {
            int at = day;
            row.shifts().get(day).ifPresent(shift -> bar(shift, at, middle - bar / 2, bar));
        }
    }

    private void bar(String shift, int day, int top, int height) {
        ShiftTemplate template = template(shift);
        double from = day + template.start().toSecondOfDay() / 86_400.0;
        double to = from + template.end().usualLength(template.start()).toMinutes() / 1440.0;
        int left = x(from);
        int width = x(Math.min(to, rows.days())) - left;
        Color colour = colour(shift);
        pen.setColor(colour);
        pen.fillRect(left, top, Math.max(1, width - 1), height);
        if (width >= NARROWEST_NAMED && pen.getFontMetrics().stringWidth(shift) < width) {
            pen.setColor(isDark(colour) ? Color.WHITE : Palette.TEXT);
            centred(shift, left + width / 2, top + height / 2 + 5);
        }
    }

    private ShiftTemplate template(String shift) {
        return roster.plan().pattern().stream()
                .map(each -> each.template())
                .filter(each -> each.name().equals(shift))
                .findFirst()
                .orElseThrow();
    }

    private Color colour(String shift) {
        return COLOURS.get(rows.shiftNames().indexOf(shift) % COLOURS.size());
    }

    private static boolean isDark(Color colour) {
        return colour.getRed() + colour.getGreen() + colour.getBlue() < 3 * 128;
    }

    private void legend(int top) {
        List<String> names = new ArrayList<>(rows.shiftNames());
        int left = LEFT;
        for (String name : names) {
            ShiftTemplate shift = template(name);
            String text = name + " " + shift.start() + " to "
                    + shift.start().plus(shift.end().usualLength(shift.start()));
            pen.setColor(colour(name));
            pen.fillRect(left, top - 11, 14, 14);
            pen.setColor(Palette.TEXT);
            pen.drawString(text, left + 22, top + 1);
            left += 50 + pen.getFontMetrics().stringWidth(text);
        }
    }

    private void centred(String text, int x, int y) {
        pen.drawString(text, x - pen.getFontMetrics().stringWidth(text) / 2, y);
    }
}
