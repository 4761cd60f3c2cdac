package spoolyard.analysis.report;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;

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
        double[] average = report.average();
        add(chart, "each shift", average, new ChartLook.Pen(Palette.SKY, 1.2f));
        double[] smooth = report.smooth();
        int width = 2 * report.window() + 1;
        add(chart, "moving average of " + width, smooth, new ChartLook.Pen(Palette.PETROL, 3f));
        double low = Arrays.stream(average).min().orElse(0);
        double high = Arrays.stream(average).max().orElse(1);
        double cut = report.cut() + 0.5;
        ChartLook.Pen red = new ChartLook.Pen(Palette.RED, 2f);
        ChartLook.line(chart, "end of the warm-up, MSER-5", List.of(cut, cut), List.of(low, high), red);
        return chart;
    }

    private static void add(XYChart chart, String name, double[] means, ChartLook.Pen pen) {
        List<Double> numbers =
                IntStream.rangeClosed(1, means.length).mapToObj(i -> (double) i).toList();
        ChartLook.line(chart, name, numbers, DoubleStream.of(means).boxed().toList(), pen);
    }
}
