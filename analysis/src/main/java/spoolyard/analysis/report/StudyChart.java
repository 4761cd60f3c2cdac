package spoolyard.analysis.report;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.BitmapEncoder;
import spoolyard.analysis.study.Design;

/**
 * The picture of a study: of one factor a line for each measure, of two a map for each measure, of more a map for each
 * pair of them.
 */
public final class StudyChart {
    /** Name of its file. */
    public static final String FILE = "study.png";

    private static final int PANEL_WIDTH = ChartLook.WIDTH / 2;
    private static final int PANEL_HEIGHT = 440;
    private static final int HEADING = 84;
    private static final int MOST_PANELS = 6;
    private static final List<Measure> SHOWN = List.of(
            Measure.GOOD_SPOOLS_PER_SHIFT,
            Measure.OVERFLOW_PCT,
            Measure.SCRAP_PCT,
            Measure.COST_PER_GOOD_SPOOL,
            Measure.ORDERS_LATE,
            Measure.GOOD_SPOOLS_PER_WEEK);

    private final StudyReport report;

    /**
     * Prepares to draw.
     *
     * @param report what
     */
    public StudyChart(StudyReport report) {
        this.report = report;
    }

    /**
     * Draws it.
     *
     * @return PNG
     */
    public byte[] png() {
        List<Panel> panels = panels();
        int rows = (panels.size() + 1) / 2;
        BufferedImage whole =
                new BufferedImage(ChartLook.WIDTH, HEADING + rows * PANEL_HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = whole.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, whole.getWidth(), whole.getHeight());
        heading(pen);
        for (int i = 0; i < panels.size(); i++) {
            panels.get(i)
                    .draw(
                            pen,
                            new Rectangle(
                                    i % 2 * PANEL_WIDTH, HEADING + i / 2 * PANEL_HEIGHT, PANEL_WIDTH, PANEL_HEIGHT));
        }
        pen.dispose();
        return Png.of(whole);
    }

    private void heading(Graphics2D pen) {
        pen.setColor(Palette.TEXT);
        pen.setFont(new Font(Font.SANS_SERIF, Font.BOLD, 22));
        pen.drawString(report.plant(), 24, 40);
        pen.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 15));
        pen.setColor(Palette.FAINT_TEXT);
        pen.drawString(note(), 24, 66);
    }

    private String note() {
        String size = report.points().size() + " points, " + report.replications() + " replications each";
        if (report.factors().size() == 1) {
            return size + "; bands and bars are 95 % confidence intervals of the means";
        }
        String marks = report.design() == Design.GRID
                ? "; the frame and * mark the best mean, = what cannot be told from it"
                : "; the point with the best mean has a thick ring";
        String others = report.design() == Design.GRID && report.factors().size() > 2
                ? "; each square the mean over the other factors"
                : report.factors().size() > 2 ? "; a dot for each point" : "";
        String lines = FactorMap.hasContours(report) ? "; lines join equal values" : "";
        return size + (report.factors().size() > 2 && report.design() == Design.GRID ? "" : marks) + lines + others;
    }

    private List<Panel> panels() {
        int factors = report.factors().size();
        List<Panel> panels = new ArrayList<>();
        if (factors > 2) {
            for (int i = 0; i < factors; i++) {
                for (int j = i + 1; j < factors; j++) {
                    panels.add(new FactorMap(report, report.measure(), i, j)::draw);
                }
            }
            return panels;
        }
        for (Measure measure : measures()) {
            panels.add(factors == 1 ? lines(measure) : new FactorMap(report, measure, 0, 1)::draw);
        }
        return panels;
    }

    private Panel lines(Measure measure) {
        FactorLine line = new FactorLine(report);
        return (pen, room) -> pen.drawImage(
                BitmapEncoder.getBufferedImage(line.panel(measure, room.width, room.height)), room.x, room.y, null);
    }

    /** The measure of the study first, then the usual ones. */
    private List<Measure> measures() {
        List<Measure> measures = new ArrayList<>(List.of(report.measure()));
        SHOWN.stream()
                .filter(measure ->
                        measure != report.measure() && report.measures().contains(measure))
                .forEach(measures::add);
        return measures.subList(0, Math.min(MOST_PANELS, measures.size()));
    }

    /** Draws a part of the picture. */
    @FunctionalInterface
    private interface Panel {
        void draw(Graphics2D pen, Rectangle room);
    }
}
