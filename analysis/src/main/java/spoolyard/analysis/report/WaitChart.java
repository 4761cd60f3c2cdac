package spoolyard.analysis.report;

import java.awt.BasicStroke;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.SeriesMarkers;
import spoolyard.analysis.buffer.SwapWaits;

/** How long full spools wait: the share that waits longer, over the wait, on a logarithmic scale that shows the tail. */
public final class WaitChart {
    /** Name of its file. */
    public static final String FILE = "waits.png";

    private static final double MOST_PCT = 100;
    private static final int MOST_POINTS = 400;

    private WaitChart() {}

    /**
     * Draws it.
     *
     * @param report with at least one swap that was begun
     * @return PNG
     */
    public static byte[] png(SwapReport report) {
        SwapWaits waits = report.waits();
        XYChart chart = ChartLook.size(new XYChartBuilder())
                .title("How long full spools of line " + report.line().name() + " wait")
                .xAxisTitle("Wait until the work begins, s")
                .yAxisTitle("Swaps that wait longer, % (logarithmic)")
                .build();
        ChartLook.dress(chart.getStyler());
        chart.getStyler().setLegendVisible(false);
        LogCurve.axis(
                chart.getStyler(), LogCurve.decade(MOST_PCT / waits.sortedS().length), MOST_PCT, ChartLook::number);
        XYSeries series = series(chart, waits);
        series.setLineColor(Palette.PETROL);
        series.setLineStyle(new BasicStroke(2.4f));
        series.setMarker(SeriesMarkers.NONE);
        return Pictures.png(chart);
    }

    private static XYSeries series(XYChart chart, SwapWaits waits) {
        double[] sortedS = waits.sortedS();
        int n = sortedS.length;
        List<Double> x = new ArrayList<>(List.of(0.0));
        List<Double> y = new ArrayList<>(List.of(MOST_PCT * waits.shareAbove(0)));
        double rest = 1;
        for (int point = 0; point < MOST_POINTS; point++) {
            int at = Math.min(n - 1, (int) ((1 - rest) * n));
            if (at < n - 1 && sortedS[at] > x.get(x.size() - 1)) {
                x.add(sortedS[at]);
                y.add(MOST_PCT * (n - at - 1) / n);
            }
            rest *= Math.pow(1.0 / n, 1.0 / MOST_POINTS);
        }
        LogCurve curve = LogCurve.of(x, y, LogCurve.decade(MOST_PCT / n));
        return chart.addSeries("waits", curve.x(), curve.y());
    }
}
