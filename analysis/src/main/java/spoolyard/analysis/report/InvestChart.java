package spoolyard.analysis.report;

import java.awt.Color;
import java.awt.Font;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.knowm.xchart.AnnotationText;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;
import spoolyard.analysis.buffer.Verdict;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.invest.InvestFinding.MixFinding;

/** What mixes are worth: an interval a mix, the cheapest on top, by whether they meet the target. */
public final class InvestChart {
    /** Name of its file. */
    public static final String FILE = "net-worth.png";

    private static final double NAMES = 0.62;
    private static final double ROOM = 0.05;
    private static final int LONGEST_NAME = 46;
    private static final float THICK = 4f;
    private static final int BLANKS = 20;

    /** Room for a label such as -140 000; the library measures the longest text, which is a blank one. */
    private static final int TICKS_PX = 110;

    private static final Map<Verdict, Color> COLOURS =
            Map.of(Verdict.MEETS, Palette.PETROL, Verdict.OPEN, Palette.MUSTARD, Verdict.MISSES, Palette.STONE);

    private final InvestReport report;
    private final List<MixFinding> shown;

    /**
     * Prepares to draw.
     *
     * @param report what
     */
    public InvestChart(InvestReport report) {
        this.report = report;
        this.shown =
                report.shown().stream().filter(mix -> mix.worth().isPresent()).toList();
    }

    /**
     * Draws it.
     *
     * @return PNG
     */
    public byte[] png() {
        return Pictures.png(chart());
    }

    XYChart chart() {
        XYChart chart = ChartLook.size(new XYChartBuilder())
                .title("What the mixes are worth"
                        + report.target().map(target -> ": " + target).orElse(""))
                .xAxisTitle("Net worth against the plant as it is, " + report.currency()
                        + " a year, 95 %, all intervals at once; in brackets the price a year")
                .build();
        double left = range(chart);
        List<Double> heights = List.of(0.4, shown.size() + 0.6);
        blankNames(chart, left, heights);
        ChartLook.line(chart, "zero", List.of(0.0, 0.0), heights, new ChartLook.Pen(Palette.FAINT_TEXT, 1.4f))
                .setShowInLegend(false);
        TreeSet<Verdict> inLegend = new TreeSet<>();
        for (int place = 0; place < shown.size(); place++) {
            add(chart, shown.get(place), shown.size() - place, left, inLegend);
        }
        return chart;
    }

    /** Names to the left of all intervals; returns where their middle is. */
    private double range(XYChart chart) {
        double low = Math.min(
                0, shown.stream().mapToDouble(mix -> end(mix, -1)).min().orElse(0));
        double high =
                Math.max(0, shown.stream().mapToDouble(mix -> end(mix, 1)).max().orElse(0));
        double wide = Math.max(1, high - low);
        XYStyler styler = chart.getStyler();
        ChartLook.dress(styler);
        styler.setXAxisTickMarkSpacingHint(TICKS_PX);
        styler.setXAxisMin(low - NAMES * wide);
        styler.setXAxisMax(high + ROOM * wide);
        styler.setYAxisMin(0.4);
        styler.setYAxisMax(shown.size() + 0.6);
        styler.setYAxisTicksVisible(false);
        styler.setPlotGridHorizontalLinesVisible(false);
        styler.setPlotGridVerticalLinesVisible(true);
        styler.setxAxisTickLabelsFormattingFunction(
                net -> net < low - ROOM * wide ? blank((low - net) / wide) : ChartLook.number(net));
        styler.setAnnotationTextFont(new Font(Font.SANS_SERIF, Font.PLAIN, 14));
        styler.setAnnotationTextFontColor(Palette.TEXT);
        return low - (NAMES + ROOM) / 2 * wide;
    }

    /** White below the names and in the margins beyond them, so that no grid line runs through them or ends beside them. */
    private void blankNames(XYChart chart, double left, List<Double> heights) {
        double from = chart.getStyler().getXAxisMin();
        double to = 2 * left - from;
        double beyond = heights.get(1) - heights.get(0);
        double bottom = heights.get(0) - beyond;
        double top = heights.get(1) + beyond;
        XYSeries blank = chart.addSeries("names", List.of(from, to, to, from), List.of(bottom, bottom, top, top));
        blank.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.PolygonArea);
        blank.setFillColor(Color.WHITE);
        blank.setLineColor(Color.WHITE);
        blank.setMarker(SeriesMarkers.NONE);
        blank.setShowInLegend(false);
    }

    /** No label below the names; of different lengths, for where two labels are the same the library draws fewer ticks. */
    private static String blank(double share) {
        return " ".repeat(1 + (int) (share * BLANKS));
    }

    private void add(XYChart chart, MixFinding mix, double height, double left, TreeSet<Verdict> inLegend) {
        Color colour = COLOURS.get(mix.verdict());
        String name = report.shortLabel(mix.number());
        boolean isFirst = report.finding().target().isPresent() && inLegend.add(mix.verdict());
        XYSeries line = ChartLook.line(
                chart,
                isFirst ? mix.verdict().words() : mix.number() + " interval",
                List.of(end(mix, -1), end(mix, 1)),
                List.of(height, height),
                new ChartLook.Pen(colour, THICK));
        line.setShowInLegend(isFirst);
        ChartLook.dot(chart, mix.number() + " mean", net(mix).mean(), height, colour)
                .setMarker(SeriesMarkers.DIAMOND)
                .setShowInLegend(false);
        String price = " (" + Figures.shown(mix.price().perYear(), 0) + ")";
        chart.addAnnotation(
                new AnnotationText(Cell.clipped(name, LONGEST_NAME - price.length()) + price, left, height, false));
    }

    private static Interval net(MixFinding mix) {
        return mix.worth().orElseThrow().net();
    }

    private static double end(MixFinding mix, int sign) {
        return net(mix).mean() + sign * net(mix).halfWidth().orElse(0);
    }
}
