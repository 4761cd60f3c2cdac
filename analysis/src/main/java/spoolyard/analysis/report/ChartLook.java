package spoolyard.analysis.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.util.List;
import java.util.Locale;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.internal.ChartBuilder;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.CategoryStyler;
import org.knowm.xchart.style.Styler;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** How all our pictures look: white ground, dark text, faint grid, legend below the plot. */
final class ChartLook {
    /** Width of a picture, pixels. */
    static final int WIDTH = 1280;

    /** Height of a picture, pixels. */
    static final int HEIGHT = 720;

    private static final int PADDING = 18;
    private static final int LETTER_WIDTH = 9;
    private static final int STEEP_DEGREES = 40;
    private static final double WIDEST_BAR_SHARE = 0.62;
    private static final int FEW_BARS = 5;

    private ChartLook() {}

    /**
     * Gives a picture its size.
     *
     * @param <B> its builder
     * @param builder its builder
     * @return the builder
     */
    static <B extends ChartBuilder<B, ?>> B size(B builder) {
        return builder.width(WIDTH).height(HEIGHT);
    }

    /**
     * Dresses a picture.
     *
     * @param styler of the picture
     */
    static void dress(AxesChartStyler styler) {
        styler.setLocale(Locale.ROOT);
        styler.setAntiAlias(true);
        grounds(styler);
        texts(styler);
        axes(styler);
    }

    /**
     * Draws a line through points, without marks.
     *
     * @param chart the picture
     * @param name in the legend
     * @param x across, one a point
     * @param y up, one a point
     * @param pen colour and width
     * @return the line
     */
    static XYSeries line(XYChart chart, String name, List<Double> x, List<Double> y, Pen pen) {
        XYSeries series = chart.addSeries(name, x, y);
        series.setLineColor(pen.colour());
        series.setLineStyle(new BasicStroke(pen.width()));
        series.setMarker(SeriesMarkers.NONE);
        return series;
    }

    /**
     * Draws a single mark.
     *
     * @param chart the picture
     * @param name in the legend
     * @param x across
     * @param y up
     * @param colour of the mark
     * @return the mark, a circle
     */
    static XYSeries dot(XYChart chart, String name, double x, double y, Color colour) {
        XYSeries series = chart.addSeries(name, List.of(x), List.of(y));
        series.setLineColor(colour);
        series.setMarkerColor(colour);
        series.setMarker(SeriesMarkers.CIRCLE);
        return series;
    }

    /**
     * What a line is drawn with.
     *
     * @param colour of it
     * @param width pixels
     */
    record Pen(Color colour, float width) {}

    /**
     * A number at an axis, as in texts: thousands parted by a space, no more decimals than needed.
     *
     * @param value any value
     * @return the text; empty if it is not a number
     */
    static String number(double value) {
        return Figures.exact(value)
                .map(exact -> Figures.shown(value, Math.max(0, exact.scale())))
                .orElse("");
    }

    /**
     * Makes bars neither too wide nor their names too close.
     *
     * @param styler of the picture
     * @param names one a bar
     */
    static void fitBars(CategoryStyler styler, List<String> names) {
        styler.setAvailableSpaceFill(Math.min(WIDEST_BAR_SHARE, WIDEST_BAR_SHARE * names.size() / FEW_BARS));
        int longest = names.stream().mapToInt(String::length).max().orElse(0);
        boolean isTight = (longest + 1) * LETTER_WIDTH * names.size() > WIDTH - 2 * PADDING;
        styler.setXAxisLabelRotation(isTight ? STEEP_DEGREES : 0);
    }

    private static void grounds(AxesChartStyler styler) {
        styler.setChartBackgroundColor(Color.WHITE);
        styler.setPlotBackgroundColor(Color.WHITE);
        styler.setPlotBorderVisible(false);
        styler.setChartPadding(PADDING);
        styler.setLegendPosition(Styler.LegendPosition.OutsideS);
        styler.setLegendLayout(Styler.LegendLayout.Horizontal);
        styler.setLegendBackgroundColor(Color.WHITE);
        styler.setLegendBorderColor(Color.WHITE);
        styler.setLegendPadding(12);
        styler.setPlotGridLinesColor(Palette.GRID);
        styler.setPlotGridLinesStroke(new BasicStroke(1));
        styler.setPlotGridVerticalLinesVisible(false);
    }

    private static void texts(AxesChartStyler styler) {
        styler.setChartFontColor(Palette.TEXT);
        styler.setChartTitleFont(new Font(Font.SANS_SERIF, Font.BOLD, 22));
        styler.setChartTitleBoxVisible(false);
        styler.setChartTitlePadding(PADDING);
        styler.setLegendFont(new Font(Font.SANS_SERIF, Font.PLAIN, 15));
        styler.setAxisTitleFont(new Font(Font.SANS_SERIF, Font.PLAIN, 16));
        styler.setAxisTickLabelsFont(new Font(Font.SANS_SERIF, Font.PLAIN, 14));
        styler.setAxisTickLabelsColor(Palette.FAINT_TEXT);
        styler.setXAxisTitleColor(Palette.TEXT);
        styler.setYAxisTitleColor(Palette.TEXT);
    }

    private static void axes(AxesChartStyler styler) {
        styler.setAxisTickMarksColor(Palette.GRID);
        styler.setAxisTicksLineVisible(false);
        styler.setAxisTickPadding(8);
        styler.setAxisTitlePadding(12);
        styler.setYAxisLabelAlignment(AxesChartStyler.TextAlignment.Right);
        styler.setErrorBarsColor(Palette.TEXT);
        styler.setyAxisTickLabelsFormattingFunction(ChartLook::number);
        if (styler instanceof XYStyler) {
            styler.setxAxisTickLabelsFormattingFunction(ChartLook::number);
        }
    }
}
