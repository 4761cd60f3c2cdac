package spoolyard.analysis.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.List;
import spoolyard.analysis.purge.PurgeEntry;
import spoolyard.analysis.purge.PurgeMatrix;
import spoolyard.core.colour.Viewing;
import spoolyard.core.plant.Colour;
import spoolyard.scenarios.check.PurgeBasis;

/** The purges of a line as a map: from the row to the column, the darker the dearer, with swatches of the colours. */
public final class PurgeHeatMap {
    private static final int LEFT = 190;
    private static final int TOP = 200;
    private static final int BELOW = 80;
    private static final int RIGHT = 30;
    private static final int WIDEST_CELL = 90;
    private static final int SWATCH = 18;
    private static final int LEAST_FOR_NUMBERS = 26;

    private final PurgeMatrix matrix;
    private final PurgeUnit unit;
    private final Viewing viewing;
    private final Graphics2D pen;
    private final int cell;

    private PurgeHeatMap(PurgeMatrix matrix, PurgeUnit unit, Viewing viewing, Graphics2D pen) {
        this.matrix = matrix;
        this.unit = unit;
        this.viewing = viewing;
        this.pen = pen;
        this.cell = cell(matrix);
    }

    /**
     * Draws it.
     *
     * @param matrix the purges
     * @param unit in what they are told
     * @param viewing light of the colours' L*a*b*
     * @return PNG
     */
    public static byte[] png(PurgeMatrix matrix, PurgeUnit unit, Viewing viewing) {
        int height = TOP + cell(matrix) * matrix.colours().size() + BELOW;
        BufferedImage image = new BufferedImage(ChartLook.WIDTH, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        try {
            new PurgeHeatMap(matrix, unit, viewing, pen).draw(height);
        } finally {
            pen.dispose();
        }
        return Png.of(image);
    }

    private static int cell(PurgeMatrix matrix) {
        return Math.max(
                1,
                Math.min(
                        WIDEST_CELL,
                        (ChartLook.WIDTH - LEFT - RIGHT) / matrix.colours().size()));
    }

    private void draw(int height) {
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, ChartLook.WIDTH, height);
        pen.setColor(Palette.TEXT);
        font(Font.BOLD, 22);
        pen.drawString(
                "Purge on " + matrix.line().name() + ", " + matrix.polymer().code() + ", in " + unit.label(), 20, 42);
        font(Font.PLAIN, 15);
        pen.setColor(Palette.FAINT_TEXT);
        pen.drawString("from the row to the column; colours in the order of their purges", 20, 66);
        List<Colour> colours = matrix.colours();
        for (int i = 0; i < colours.size(); i++) {
            names(colours.get(i), i);
            for (int j = 0; j < colours.size(); j++) {
                square(colours.get(i), colours.get(j), LEFT + j * cell, TOP + i * cell);
            }
        }
        legend(height - 42);
    }

    private void names(Colour colour, int place) {
        int middle = place * cell + cell / 2;
        swatch(colour, LEFT - SWATCH - 8, TOP + middle - SWATCH / 2);
        swatch(colour, LEFT + middle - SWATCH / 2, TOP - SWATCH - 8);
        font(Font.PLAIN, 14);
        pen.setColor(Palette.TEXT);
        String name = Cell.clipped(colour.name(), 16);
        pen.drawString(name, LEFT - SWATCH - 16 - pen.getFontMetrics().stringWidth(name), TOP + middle + 5);
        pen.rotate(-Math.PI / 2, LEFT + middle + 5, TOP - SWATCH - 16);
        pen.drawString(name, LEFT + middle + 5, TOP - SWATCH - 16);
        pen.rotate(Math.PI / 2, LEFT + middle + 5, TOP - SWATCH - 16);
    }

    private void swatch(Colour colour, int x, int y) {
        pen.setColor(Swatch.of(colour, viewing));
        pen.fillRect(x, y, SWATCH, SWATCH);
        pen.setColor(Palette.FAINT_TEXT);
        pen.setStroke(new BasicStroke(1));
        pen.drawRect(x, y, SWATCH, SWATCH);
    }

    private void square(Colour from, Colour to, int x, int y) {
        matrix.entry(from.code(), to.code()).ifPresentOrElse(entry -> filled(entry, x, y), () -> {
            pen.setColor(Palette.MIST);
            pen.fillRect(x, y, cell - 1, cell - 1);
        });
    }

    private void filled(PurgeEntry entry, int x, int y) {
        double largest = matrix.largest(unit::of);
        Color ground = HeatScale.shade(largest > 0 ? unit.of(entry) / largest : 0);
        pen.setColor(ground);
        pen.fillRect(x, y, cell - 1, cell - 1);
        pen.setColor(Swatch.inkOn(ground));
        if (cell >= LEAST_FOR_NUMBERS) {
            font(entry.basis() == PurgeBasis.EXTRAPOLATED ? Font.ITALIC : Font.PLAIN, 13);
            String text = unit.shown(entry);
            pen.drawString(text, x + (cell - pen.getFontMetrics().stringWidth(text)) / 2, y + cell / 2 + 5);
        }
        if (entry.basis() == PurgeBasis.MEASURED) {
            pen.setStroke(new BasicStroke(2.4f));
            pen.drawRect(x + 2, y + 2, cell - 6, cell - 6);
        }
    }

    private void legend(int y) {
        int width = 240;
        for (int i = 0; i < width; i++) {
            pen.setColor(HeatScale.shade(i / (double) width));
            pen.fillRect(LEFT + i, y, 1, 16);
        }
        font(Font.PLAIN, 14);
        pen.setColor(Palette.TEXT);
        pen.drawString("0", LEFT - 16, y + 13);
        String most = Figures.shown(matrix.largest(unit::of), 1) + " " + unit.label();
        pen.drawString(most, LEFT + width + 8, y + 13);
        int next = LEFT + width + 40 + pen.getFontMetrics().stringWidth(most);
        pen.setStroke(new BasicStroke(2.4f));
        pen.drawRect(next, y, 16, 16);
        pen.drawString("measured; numbers in italics are extrapolated", next + 26, y + 13);
    }

    private void font(int style, int size) {
        pen.setFont(new Font(Font.SANS_SERIF, style, size));
    }
}
