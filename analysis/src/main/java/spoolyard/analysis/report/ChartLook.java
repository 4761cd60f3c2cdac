package spoolyard.analysis.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.util.List;
import java.util.Locale;
import org.knowm.xchart.internal.ChartBuilder;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.CategoryStyler;
import org.knowm.xchart.style.Styler;

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
    }
}
