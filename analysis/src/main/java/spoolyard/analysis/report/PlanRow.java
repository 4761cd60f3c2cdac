package spoolyard.analysis.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Polygon;
import java.awt.Rectangle;
import java.util.Comparator;
import java.util.List;
import spoolyard.analysis.schedule.ChangeKind;
import spoolyard.analysis.schedule.PlacedOrder;
import spoolyard.core.colour.Viewing;
import spoolyard.core.plant.Window;

/**
 * Draws the orders of one line, in its open time as tall as the row, in closed time as a thin strip.
 *
 * @param scale where instants stand
 * @param open when the line is open
 * @param viewing light of the colours' L*a*b*
 * @param pen draws
 */
record PlanRow(PlanScale scale, OpenTime open, Viewing viewing, Graphics2D pen) {
    private static final int GAP = 7;
    private static final int STRIP = 4;
    private static final int PAD = 3;
    private static final int TALL_ENOUGH_FOR_TWO = 34;
    private static final int NARROWEST_UPRIGHT = 14;
    private static final int FLAG = 10;

    /** The ground of a row: closed time shaded. */
    void closed(int top, int height) {
        pen.setColor(Palette.MIST);
        pen.fillRect(scale.left(), top + 1, scale.width(), height - 2);
        pen.setColor(Color.WHITE);
        for (Window each : open.within(0, scale.endTick())) {
            int x = scale.x(each.startTick());
            pen.fillRect(x, top + 1, scale.x(each.endTick()) - x, height - 2);
        }
    }

    void order(PlacedOrder order, int top, int height) {
        int y = top + GAP;
        int tall = height - 2 * GAP;
        changeover(order, y, tall);
        making(order, y, tall);
        if (order.isFrozen()) {
            pen.setColor(Palette.TEXT);
            int x = scale.x(order.startTick());
            pen.fillRect(x, y - 4, scale.x(order.endTick()) - x, 3);
        }
        if (order.lateDays() > 0) {
            late(order, y, tall);
        }
    }

    private void changeover(PlacedOrder order, int y, int tall) {
        boolean isColourOnly = order.kinds().equals(List.of(ChangeKind.COLOUR));
        for (Window each : open.within(order.startTick(), order.makingTick())) {
            int x = scale.x(each.startTick());
            int wide = Math.max(2, scale.x(each.endTick()) - x);
            hatched(pen, new Rectangle(x, y, wide, tall), isColourOnly);
        }
    }

    /** Grey stripes, darker where more than the colour changes. */
    static void hatched(Graphics2D pen, Rectangle area, boolean isColourOnly) {
        Graphics2D cut = (Graphics2D) pen.create(area.x, area.y, area.width, area.height);
        try {
            cut.setColor(isColourOnly ? Palette.MIST : Palette.STONE);
            cut.fillRect(0, 0, area.width, area.height);
            cut.setColor(isColourOnly ? Palette.STONE : Palette.TEXT);
            cut.setStroke(new BasicStroke(1.4f));
            for (int i = 0; i < area.width + area.height; i += 5) {
                cut.drawLine(i, 0, i - area.height, area.height);
            }
        } finally {
            cut.dispose();
        }
    }

    private void making(PlacedOrder order, int y, int tall) {
        Color colour = Swatch.of(order.order().product().colour(), viewing);
        pen.setStroke(new BasicStroke(1));
        int from = scale.x(order.makingTick());
        filled(colour, new Rectangle(from, y + (tall - STRIP) / 2, scale.x(order.endTick()) - from, STRIP));
        List<Rectangle> bars = open.within(order.makingTick(), order.endTick()).stream()
                .map(each -> bar(each, y, tall))
                .toList();
        bars.forEach(bar -> filled(colour, bar));
        pen.setColor(Swatch.inkOn(colour));
        bars.stream().max(Comparator.comparingInt(bar -> bar.width)).ifPresent(widest -> names(order, widest));
    }

    private Rectangle bar(Window window, int y, int tall) {
        int x = scale.x(window.startTick());
        return new Rectangle(x, y, Math.max(1, scale.x(window.endTick()) - x), tall);
    }

    private void filled(Color colour, Rectangle bar) {
        pen.setColor(colour);
        pen.fill(bar);
        pen.setColor(Palette.FAINT_TEXT);
        pen.draw(bar);
    }

    /** Order and colour in words, as far as there is room for whole words; upright in a narrow bar. */
    private void names(PlacedOrder order, Rectangle bar) {
        String id = order.order().id();
        String product = order.order().product().polymer().code() + " "
                + order.order().product().colour().code();
        pen.setFont(new Font(Font.SANS_SERIF, Font.BOLD, 11));
        int middle = bar.y + bar.height / 2;
        if (!fits(id, bar.width)) {
            upright(id, bar);
        } else if (bar.height < TALL_ENOUGH_FOR_TWO) {
            pen.drawString(id, bar.x + PAD, middle + 4);
        } else {
            pen.drawString(id, bar.x + PAD, middle - 3);
            pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 11));
            pen.drawString(fits(product, bar.width) ? product : "", bar.x + PAD, middle + 12);
        }
    }

    private boolean fits(String text, int room) {
        return pen.getFontMetrics().stringWidth(text) + 2 * PAD <= room;
    }

    private void upright(String text, Rectangle bar) {
        pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 10));
        if (bar.width >= NARROWEST_UPRIGHT && fits(text, bar.height)) {
            Graphics2D turned = (Graphics2D) pen.create();
            turned.rotate(-Math.PI / 2, bar.x + bar.width / 2.0 + 4, bar.y + bar.height - PAD);
            turned.drawString(text, bar.x + bar.width / 2 + 4, bar.y + bar.height - PAD);
            turned.dispose();
        }
    }

    /** A red line from the due date to the end, below the bar, and a flag at its end. */
    private void late(PlacedOrder order, int y, int tall) {
        int x = scale.x(order.endTick());
        int due = Math.max(scale.x(Math.max(0, order.order().dueTick())), scale.x(order.startTick()));
        pen.setColor(Palette.RED);
        pen.fillRect(due, y + tall + 2, Math.max(2, x - due), 3);
        flag(pen, x, y - 3);
    }

    /** A red triangle whose right corner stands at a point. */
    static void flag(Graphics2D pen, int x, int y) {
        Polygon flag = new Polygon(new int[] {x - FLAG, x, x}, new int[] {y, y, y + FLAG}, 3);
        pen.setColor(Palette.RED);
        pen.fill(flag);
        pen.setColor(Color.WHITE);
        pen.setStroke(new BasicStroke(1));
        pen.draw(flag);
    }
}
