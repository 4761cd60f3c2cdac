package spoolyard.analysis.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.List;
import spoolyard.analysis.schedule.Experience;
import spoolyard.analysis.schedule.PlacedOrder;
import spoolyard.analysis.schedule.PlanFigures;
import spoolyard.core.colour.Viewing;
import spoolyard.core.plant.Plant;
import spoolyard.core.quantity.Ticks;

/** All lines over time: a row for each line, a bar for each order in its true colour. */
public final class PlanChart {
    private static final int MARGIN = 24;
    private static final int LEFT = 96;
    private static final int TOP = 124;
    private static final int PIXELS_A_DAY = 62;
    private static final int WIDEST = 2600;
    private static final int ROOM_FOR_ROWS = 1080;
    private static final int LOWEST_ROW = 34;
    private static final int HIGHEST_ROW = 72;
    private static final int LONGEST_NAME = 9;

    private final PlanFigures plan;
    private final List<List<PlacedOrder>> rows;
    private final PlanScale scale;
    private final Viewing viewing;
    private final Graphics2D pen;

    private PlanChart(PlanFigures plan, PlanScale scale, Viewing viewing, Graphics2D pen) {
        this.plan = plan;
        this.rows = PlacedOrder.all(plan);
        this.scale = scale;
        this.viewing = viewing;
        this.pen = pen;
    }

    /**
     * Draws it.
     *
     * @param plan the plan
     * @param clock the plant's clock
     * @param viewing light of the colours' L*a*b*
     * @return PNG
     */
    public static byte[] png(PlanFigures plan, PlantClock clock, Viewing viewing) {
        PlanScale scale = scale(plan, clock);
        int width = LEFT + scale.width() + MARGIN;
        PlanLegend legend = new PlanLegend(plan.book().plant(), viewing, width - LEFT - MARGIN);
        int bottom = TOP + rowHeight(plan) * plan.timed().lines().size();
        BufferedImage image = new BufferedImage(width, bottom + legend.height(), BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        try {
            pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            pen.setColor(Color.WHITE);
            pen.fillRect(0, 0, width, image.getHeight());
            new PlanChart(plan, scale, viewing, pen).draw(bottom);
            legend.draw(pen, LEFT, bottom + MARGIN);
        } finally {
            pen.dispose();
        }
        return Png.of(image);
    }

    private static PlanScale scale(PlanFigures plan, PlantClock clock) {
        double lastS = plan.timed().lines().stream()
                .flatMap(List::stream)
                .mapToDouble(job -> job.endS())
                .max()
                .orElse(0);
        long endTick = Math.max(plan.book().plant().horizonTicks(), Ticks.ofSeconds(lastS));
        double days = endTick / (24.0 * Ticks.PER_HOUR);
        int width = (int) Math.max(ChartLook.WIDTH, Math.min(WIDEST, LEFT + days * PIXELS_A_DAY + MARGIN));
        return new PlanScale(clock, endTick, LEFT, width - LEFT - MARGIN);
    }

    private static int rowHeight(PlanFigures plan) {
        int each = ROOM_FOR_ROWS / plan.timed().lines().size();
        return Math.max(LOWEST_ROW, Math.min(HIGHEST_ROW, each));
    }

    private void draw(int bottom) {
        title();
        int height = rowHeight(plan);
        Plant plant = plan.book().plant();
        for (int line = 0; line < rows.size(); line++) {
            int top = TOP + line * height;
            OpenTime open = OpenTime.of(plant.lines().get(line), plant.horizonTicks());
            new PlanRow(scale, open, viewing, pen).closed(top, height);
        }
        days(bottom);
        for (int line = 0; line < rows.size(); line++) {
            int top = TOP + line * height;
            OpenTime open = OpenTime.of(plant.lines().get(line), plant.horizonTicks());
            PlanRow row = new PlanRow(scale, open, viewing, pen);
            rows.get(line).forEach(order -> row.order(order, top, height));
            name(plant.lines().get(line).name(), top, height);
        }
    }

    private void title() {
        Plant plant = plan.book().plant();
        pen.setColor(Palette.TEXT);
        pen.setFont(new Font(Font.SANS_SERIF, Font.BOLD, 22));
        pen.drawString(
                plant.name() + ": " + plant.book().orders().size() + " orders on "
                        + plant.lines().size() + " lines",
                MARGIN,
                44);
        pen.setColor(Palette.FAINT_TEXT);
        pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 15));
        pen.drawString(
                "Planned times from " + scale.clock().minute(0) + ", "
                        + scale.clock().start().getZone() + "; " + times(),
                MARGIN,
                70);
    }

    private String times() {
        return plan.book().experience().equals(Experience.NONE)
                ? "stoppages at their mean, no waiting for people"
                : "as long as orders took in simulated runs";
    }

    private void days(int bottom) {
        pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 14));
        pen.setStroke(new BasicStroke(1));
        for (PlanScale.Day day : scale.days()) {
            pen.setColor(day.isMonday() ? Palette.FAINT_TEXT : Palette.GRID);
            pen.drawLine(day.x(), TOP - (day.isMonday() ? 12 : 6), day.x(), bottom);
            pen.setColor(Palette.FAINT_TEXT);
            pen.drawString(day.label(), day.x() + 3, TOP - 12);
        }
        long horizon = plan.book().plant().horizonTicks();
        if (horizon < scale.endTick()) {
            pen.setColor(Palette.TEXT);
            pen.setStroke(new BasicStroke(2));
            pen.drawLine(scale.x(horizon), TOP - 12, scale.x(horizon), bottom);
        }
    }

    private void name(String name, int top, int height) {
        pen.setColor(Palette.TEXT);
        pen.setFont(new Font(Font.SANS_SERIF, Font.BOLD, 15));
        pen.drawString(Cell.clipped(name, LONGEST_NAME), MARGIN, top + height / 2 + 5);
    }
}
