package spoolyard.analysis.report;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.knowm.xchart.AnnotationText;
import org.knowm.xchart.BitmapEncoder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.style.markers.SeriesMarkers;
import spoolyard.analysis.experiment.Difference;

/** The differences of every measure, a panel for each: an interval an alternative, beside a line at no difference. */
public final class DifferenceChart {
    /** Name of its file. */
    public static final String FILE = "differences.png";

    private static final int COLUMNS = 3;
    private static final int PANEL_WIDTH = ChartLook.WIDTH / COLUMNS;
    private static final int HEADING = 92;
    private static final int TITLE_BASE = 34;
    private static final int LINE = 24;
    private static final int LONGEST_LINE = 150;
    private static final int PANEL_FRAME = 110;
    private static final int ROW = 34;
    private static final int LEAST_PANEL = 210;
    private static final double ROOM = 0.12;
    private static final double ABOVE = 0.3;

    private final Comparison comparison;

    /**
     * Prepares to draw.
     *
     * @param comparison what
     */
    public DifferenceChart(Comparison comparison) {
        this.comparison = comparison;
    }

    /**
     * Draws it.
     *
     * @return PNG
     */
    public byte[] png() {
        int rows = (comparison.measures().size() + COLUMNS - 1) / COLUMNS;
        int panelHeight =
                Math.max(LEAST_PANEL, PANEL_FRAME + ROW * comparison.plants().size());
        BufferedImage whole =
                new BufferedImage(ChartLook.WIDTH, HEADING + rows * panelHeight, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = whole.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, whole.getWidth(), whole.getHeight());
        title(graphics);
        for (int i = 0; i < comparison.measures().size(); i++) {
            BufferedImage panel =
                    BitmapEncoder.getBufferedImage(panel(comparison.measures().get(i), panelHeight));
            graphics.drawImage(panel, i % COLUMNS * PANEL_WIDTH, HEADING + i / COLUMNS * panelHeight, null);
        }
        graphics.dispose();
        return Png.of(whole);
    }

    private void title(Graphics2D graphics) {
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        List<Alternative> plants = comparison.plants();
        graphics.setColor(Palette.TEXT);
        graphics.setFont(new Font(Font.SANS_SERIF, Font.BOLD, 22));
        centred(graphics, "Difference from A " + plants.get(0).name(), TITLE_BASE);
        graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 15));
        String names = IntStream.range(1, plants.size())
                .mapToObj(plant ->
                        Comparison.letter(plant) + " " + plants.get(plant).name())
                .collect(Collectors.joining("     "));
        centred(graphics, Cell.clipped(names, LONGEST_LINE), TITLE_BASE + LINE);
        graphics.setColor(Palette.FAINT_TEXT);
        centred(
                graphics,
                "All intervals hold at once with 95 % confidence; grey: the data cannot tell",
                TITLE_BASE + 2 * LINE);
    }

    private static void centred(Graphics2D graphics, String text, int baseline) {
        int width = graphics.getFontMetrics().stringWidth(text);
        graphics.drawString(text, Math.max(20, (ChartLook.WIDTH - width) / 2), baseline);
    }

    XYChart panel(Measure measure, int height) {
        XYChart chart = new XYChartBuilder()
                .width(PANEL_WIDTH)
                .height(height)
                .title(measure.label())
                .build();
        int alternatives = comparison.plants().size() - 1;
        dress(chart, alternatives);
        range(chart, measure);
        ChartLook.line(
                chart,
                "zero",
                List.of(0.0, 0.0),
                List.of(0.4, alternatives + 0.6),
                new ChartLook.Pen(Palette.FAINT_TEXT, 1.4f));
        for (int plant = 1; plant <= alternatives; plant++) {
            add(chart, comparison.difference(plant, measure), plant);
        }
        return chart;
    }

    private void dress(XYChart chart, int alternatives) {
        ChartLook.dress(chart.getStyler());
        chart.getStyler().setChartTitleFont(new Font(Font.SANS_SERIF, Font.BOLD, 15));
        chart.getStyler().setChartTitlePadding(6);
        chart.getStyler().setAxisTickLabelsFont(new Font(Font.SANS_SERIF, Font.PLAIN, 12));
        chart.getStyler().setLegendVisible(false);
        chart.getStyler().setAxisTitlesVisible(false);
        chart.getStyler().setPlotGridVerticalLinesVisible(true);
        chart.getStyler().setPlotGridHorizontalLinesVisible(false);
        chart.getStyler().setXAxisMaxLabelCount(5);
        chart.getStyler().setYAxisMin(0.4);
        chart.getStyler().setYAxisMax(alternatives + 0.6);
        chart.getStyler().setYAxisTicksVisible(false);
        chart.getStyler().setAnnotationTextFont(new Font(Font.SANS_SERIF, Font.BOLD, 12));
        chart.getStyler().setAnnotationTextFontColor(Palette.TEXT);
    }

    /** From below the lowest end to above the highest, zero included. */
    private void range(XYChart chart, Measure measure) {
        double lowest = 0;
        double highest = 0;
        for (int plant = 1; plant < comparison.plants().size(); plant++) {
            Difference difference = comparison.difference(plant, measure);
            lowest = Math.min(lowest, difference.low());
            highest = Math.max(highest, difference.high());
        }
        double room = lowest == highest ? 1 : ROOM * (highest - lowest);
        chart.getStyler().setXAxisMin(lowest - room);
        chart.getStyler().setXAxisMax(highest + room);
    }

    private void add(XYChart chart, Difference difference, int plant) {
        double height = comparison.plants().size() - (double) plant;
        String letter = Comparison.letter(plant);
        Color colour = difference.verdict() == Difference.Verdict.OPEN ? Palette.STONE : Palette.PETROL;
        List<Double> ends = List.of(difference.low(), difference.high());
        ChartLook.line(chart, letter, ends, List.of(height, height), new ChartLook.Pen(colour, 4f));
        ChartLook.dot(chart, letter + " mean", difference.interval().mean(), height, colour)
                .setMarker(SeriesMarkers.DIAMOND);
        chart.addAnnotation(new AnnotationText(letter, difference.interval().mean(), height + ABOVE, false));
    }
}
