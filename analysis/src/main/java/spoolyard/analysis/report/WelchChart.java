package spoolyard.analysis.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** The average of the replications shift by shift, its moving average, and where the warm-up ends. */
public final class WelchChart {
    private WelchChart() {}

    /**
     * Draws it.
     *
     * @param report what
     * @return PNG
     */
    public static byte[] png(WarmupReport report) {
        return Pictures.png(chart(report));
    }

    static XYChart chart(WarmupReport report) {
        XYChart chart = ChartLook.size(new XYChartBuilder())
                .title("Welch plot of good spools per shift")
                .xAxisTitle("Full shifts since the start")
                .yAxisTitle("Good spools, mean of the replications")
                .build();
        ChartLook.dress(chart.getStyler());
        chart.getStyler().setYAxisDecimalPattern("0");
        chart.getStyler().setXAxisDecimalPattern("0");
        double[] average = report.average();
        add(chart, "each shift", numbers(average.length), average, Palette.SKY, 1.2f);
        double[] smooth = report.smooth();
        int width = 2 * report.window() + 1;
        add(chart, "moving average of " + width, numbers(smooth.length), smooth, Palette.PETROL, 3f);
        double low = Arrays.stream(average).min().orElse(0);
        double high = Arrays.stream(average).max().orElse(1);
        double cut = report.cut() + 0.5;
        add(chart, "end of the warm-up, MSER-5", new double[] {cut, cut}, new double[] {low, high}, Palette.RED, 2f);
        return chart;
    }

    private static double[] numbers(int count) {
        return IntStream.rangeClosed(1, count).mapToDouble(i -> i).toArray();
    }

    private static void add(XYChart chart, String name, double[] x, double[] y, Color colour, float width) {
        XYSeries series = chart.addSeries(name, x, y);
        series.setLineColor(colour);
        series.setLineStyle(new BasicStroke(width));
        series.setMarker(SeriesMarkers.NONE);
    }
}
