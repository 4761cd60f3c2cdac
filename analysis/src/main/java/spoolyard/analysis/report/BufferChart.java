package spoolyard.analysis.report;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.knowm.xchart.BitmapEncoder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.Styler;
import org.knowm.xchart.style.markers.SeriesMarkers;
import spoolyard.analysis.buffer.CapacityCurve;
import spoolyard.analysis.buffer.Finding;
import spoolyard.analysis.buffer.LossMeasure;
import spoolyard.analysis.experiment.Interval;

/** Losses over the capacity of an accumulator: a panel for each measure, with band, knee, target and closed form. */
public final class BufferChart {
    /** Name of its file. */
    public static final String FILE = "losses-over-capacity.png";

    private static final int PANEL_WIDTH = ChartLook.WIDTH / 2;
    private static final int PANEL_HEIGHT = 440;
    private static final int HEADING = 56;
    private static final int FINE = 100;
    private static final String BAND = "95 % interval";

    static final float THICK = 2.6f;
    static final float THIN = 1.6f;

    private final BufferReport report;

    /**
     * Prepares to draw.
     *
     * @param report what
     */
    public BufferChart(BufferReport report) {
        this.report = report;
    }

    /**
     * Draws it.
     *
     * @return PNG
     */
    public byte[] png() {
        List<LossMeasure> measures = report.measures();
        int rows = (measures.size() + 1) / 2;
        BufferedImage whole =
                new BufferedImage(ChartLook.WIDTH, HEADING + rows * PANEL_HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = whole.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, whole.getWidth(), whole.getHeight());
        title(graphics);
        for (int i = 0; i < measures.size(); i++) {
            BufferedImage panel = BitmapEncoder.getBufferedImage(panel(measures.get(i)));
            graphics.drawImage(panel, i % 2 * PANEL_WIDTH, HEADING + i / 2 * PANEL_HEIGHT, null);
        }
        graphics.dispose();
        return Png.of(whole);
    }

    private void title(Graphics2D graphics) {
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setColor(Palette.TEXT);
        graphics.setFont(new Font(Font.SANS_SERIF, Font.BOLD, 22));
        String text = "What full accumulators cost line " + report.line().name();
        int width = graphics.getFontMetrics().stringWidth(text);
        graphics.drawString(text, (ChartLook.WIDTH - width) / 2, 36);
    }

    XYChart panel(LossMeasure measure) {
        return measure == LossMeasure.OVERFLOW && RarePanel.isFor(report)
                ? new RarePanel(report).chart()
                : straight(measure);
    }

    /** Without any curve. */
    static XYChart empty(BufferReport report, LossMeasure measure) {
        XYChart chart = new XYChartBuilder()
                .width(PANEL_WIDTH)
                .height(PANEL_HEIGHT)
                .title(measure.word() + ", " + report.unit(measure))
                .xAxisTitle("Capacity, m")
                .build();
        ChartLook.dress(chart.getStyler());
        chart.getStyler().setChartTitleFont(new Font(Font.SANS_SERIF, Font.BOLD, 16));
        chart.getStyler().setChartTitlePadding(6);
        chart.getStyler().setYAxisTitleVisible(false);
        chart.getStyler().setLegendPosition(Styler.LegendPosition.InsideNE);
        chart.getStyler().setLegendLayout(Styler.LegendLayout.Vertical);
        return chart;
    }

    private XYChart straight(LossMeasure measure) {
        XYChart chart = empty(report, measure);
        chart.getStyler().setYAxisMin(0.0);
        List<CapacityCurve.Point> points = report.curve().points();
        List<Double> x = points.stream().map(CapacityCurve.Point::capacityM).toList();
        List<Interval> losses =
                points.stream().map(point -> point.losses().get(measure)).toList();
        band(chart, x, losses, loss -> Math.max(0, loss));
        List<Double> means = losses.stream().map(Interval::mean).toList();
        ChartLook.line(chart, "simulated", x, means, new ChartLook.Pen(Palette.PETROL, THICK));
        if (measure == LossMeasure.OVERFLOW) {
            dedicated(chart, x.get(0), x.get(x.size() - 1));
        }
        report.finding()
                .filter(found -> found.target().measure() == measure)
                .ifPresent(found -> target(chart, x, found, loss -> loss));
        knee(chart, report, measure, loss -> loss);
        return chart;
    }

    /** Between the ends of intervals, each placed on the axis. */
    static XYSeries band(XYChart chart, List<Double> x, List<Interval> losses, DoubleUnaryOperator place) {
        List<Double> low = losses.stream()
                .map(loss -> place.applyAsDouble(loss.mean() - loss.halfWidth().orElse(0)))
                .toList();
        List<Double> high = losses.stream()
                .map(loss -> place.applyAsDouble(loss.mean() + loss.halfWidth().orElse(0)))
                .toList();
        String name = BAND + " ".repeat(chart.getSeriesMap().size());
        XYSeries series = chart.addSeries(name, thereAndBack(x, x), thereAndBack(high, low));
        series.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.PolygonArea);
        series.setFillColor(Palette.GRID);
        series.setLineColor(Palette.GRID);
        series.setMarker(SeriesMarkers.NONE);
        return series;
    }

    private static List<Double> thereAndBack(List<Double> there, List<Double> back) {
        List<Double> reversed = new ArrayList<>(back);
        Collections.reverse(reversed);
        return Stream.concat(there.stream(), reversed.stream()).toList();
    }

    private void dedicated(XYChart chart, double firstM, double lastM) {
        List<Double> x = fine(firstM, lastM);
        List<Double> pct = x.stream().map(report.operator()::overflowPct).toList();
        if (pct.stream().noneMatch(value -> value.isNaN())) {
            ChartLook.line(chart, "dedicated operator", x, pct, new ChartLook.Pen(Palette.MUSTARD, THIN));
        }
    }

    /** Many capacities at equal distances. */
    static List<Double> fine(double firstM, double lastM) {
        return IntStream.rangeClosed(0, FINE)
                .mapToObj(i -> firstM + i * (lastM - firstM) / FINE)
                .toList();
    }

    static void target(XYChart chart, List<Double> x, Finding finding, DoubleUnaryOperator place) {
        double atMost = place.applyAsDouble(finding.target().atMost());
        List<Double> ends = List.of(x.get(0), x.get(x.size() - 1));
        ChartLook.line(chart, "target", ends, List.of(atMost, atMost), new ChartLook.Pen(Palette.RED, THIN));
        finding.meetsM()
                .ifPresent(capacityM -> ChartLook.dot(chart, "smallest that meets it", capacityM, atMost, Palette.RED)
                        .setMarker(SeriesMarkers.DIAMOND));
    }

    static void knee(XYChart chart, BufferReport report, LossMeasure measure, DoubleUnaryOperator place) {
        OptionalDouble kneeM = report.curve().kneeM(measure);
        if (kneeM.isPresent()) {
            double loss = report.curve().points().stream()
                    .filter(point -> point.capacityM() == kneeM.getAsDouble())
                    .mapToDouble(point -> point.losses().get(measure).mean())
                    .findFirst()
                    .orElseThrow();
            ChartLook.dot(chart, "knee", kneeM.getAsDouble(), place.applyAsDouble(loss), Palette.INDIGO);
        }
    }
}
