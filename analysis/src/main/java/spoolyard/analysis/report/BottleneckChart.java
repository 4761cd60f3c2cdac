package spoolyard.analysis.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.List;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.Activity;

/** Where the bottleneck of the first replication was, over time: a row for each station, a bar for each turn. */
final class BottleneckChart {
    /** Name of its file. */
    static final String FILE = "bottleneck-over-time.png";

    private static final int MOST_ROWS = 14;
    private static final int TALLEST_ROW = 56;
    private static final int MARGIN = 24;
    private static final int LEFT = 190;
    private static final int RIGHT = 84;
    private static final int TOP = 124;
    private static final int BOTTOM = 64;
    private static final int LONGEST_NAME = 20;
    private static final int PATCH = 16;
    private static final Color SOLE = Palette.PETROL;
    private static final Color SHIFTING = Palette.MUSTARD;

    private final RunReport report;
    private final List<Activity> all;
    private final List<Activity> rows;
    private final PlanScale scale;
    private final Graphics2D pen;

    private BottleneckChart(RunReport report, Graphics2D pen) {
        this.report = report;
        this.all = BottleneckTrace.of(report.firstActivity()).stations();
        this.rows = all.subList(0, Math.min(MOST_ROWS, all.size()));
        long endTick = report.setting().plant().horizonTicks();
        this.scale = new PlanScale(report.setting().clock(), endTick, LEFT, ChartLook.WIDTH - LEFT - RIGHT);
        this.pen = pen;
    }

    /**
     * Draws it.
     *
     * @param report with at least one station that was the bottleneck
     * @return PNG
     */
    static byte[] png(RunReport report) {
        BufferedImage image = new BufferedImage(ChartLook.WIDTH, ChartLook.HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        try {
            pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            pen.setColor(Color.WHITE);
            pen.fillRect(0, 0, image.getWidth(), image.getHeight());
            new BottleneckChart(report, pen).draw();
        } finally {
            pen.dispose();
        }
        return Png.of(image);
    }

    private void draw() {
        title();
        int height = Math.min(TALLEST_ROW, (ChartLook.HEIGHT - TOP - BOTTOM) / rows.size());
        days(TOP + height * rows.size());
        for (int row = 0; row < rows.size(); row++) {
            row(rows.get(row), TOP + row * height, height);
        }
        legend();
    }

    private void title() {
        write("Bottleneck over time", MARGIN, 44, new Font(Font.SANS_SERIF, Font.BOLD, 22), Palette.TEXT);
        write(
                report.setting().plant().name() + ", the first of " + report.replications()
                        + (report.replications() == 1 ? " replication" : " replications")
                        + "; at the right: part of its time",
                MARGIN,
                70,
                plain(15),
                Palette.FAINT_TEXT);
    }

    private void days(int bottom) {
        pen.setStroke(new BasicStroke(1));
        for (PlanScale.Day day : scale.days()) {
            pen.setColor(day.isMonday() ? Palette.FAINT_TEXT : Palette.GRID);
            pen.drawLine(day.x(), TOP - (day.isMonday() ? 12 : 6), day.x(), bottom);
            write(day.label(), day.x() + 3, TOP - 12, plain(14), Palette.FAINT_TEXT);
        }
    }

    private void row(Activity station, int top, int height) {
        int gap = height / 5;
        for (BottleneckTrace.Stretch stretch : BottleneckTrace.stretches(station)) {
            int from = scale.x(stretch.startTick());
            pen.setColor(stretch.isSole() ? SOLE : SHIFTING);
            pen.fillRect(from, top + gap, Math.max(1, scale.x(stretch.endTick()) - from), height - 2 * gap);
        }
        int baseline = top + height / 2 + 5;
        String name = station.kind().label() + " " + station.name();
        write(Cell.clipped(name, LONGEST_NAME), MARGIN, baseline, plain(15), Palette.TEXT);
        double pct = 100 * station.bottleneckS() / Ticks.toSeconds(scale.endTick());
        write(Figures.shown(pct, 1) + " %", ChartLook.WIDTH - RIGHT + 12, baseline, plain(15), Palette.TEXT);
    }

    private void legend() {
        int top = ChartLook.HEIGHT - 40;
        int x = patch(SOLE, "sole bottleneck", LEFT, top);
        x = patch(SHIFTING, "shifting to or from another", x, top);
        if (all.size() > rows.size()) {
            write((all.size() - rows.size()) + " others for less time", x, top + 13, plain(15), Palette.FAINT_TEXT);
        }
    }

    private int patch(Color colour, String text, int x, int top) {
        pen.setColor(colour);
        pen.fillRect(x, top, PATCH, PATCH);
        write(text, x + PATCH + 8, top + 13, plain(15), Palette.TEXT);
        return x + PATCH + 36 + pen.getFontMetrics().stringWidth(text);
    }

    private void write(String text, int x, int baseline, Font font, Color colour) {
        pen.setFont(font);
        pen.setColor(colour);
        pen.drawString(text, x, baseline);
    }

    private static Font plain(int size) {
        return new Font(Font.SANS_SERIF, Font.PLAIN, size);
    }
}
