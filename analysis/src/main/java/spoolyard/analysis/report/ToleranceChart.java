package spoolyard.analysis.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.SeriesMarkers;
import spoolyard.core.gauge.ToleranceFinding;

/** Mass lost over the tolerance, on a logarithmic scale, a curve for each line with a product. */
public final class ToleranceChart {
    private static final double LEAST_PCT = 1e-3;

    private ToleranceChart() {}

    /**
     * Draws it.
     *
     * @param reports one a curve, each with tolerances close enough for one; at least one
     * @return PNG
     */
    public static byte[] png(List<ToleranceReport> reports) {
        XYChart chart = new XYChartBuilder()
                .width(ChartLook.WIDTH)
                .height(ChartLook.HEIGHT)
                .title("What a tolerance costs")
                .xAxisTitle("Tolerance, mm either side")
                .yAxisTitle("Lost to excursions, % of the mass made (logarithmic)")
                .build();
        ChartLook.dress(chart.getStyler());
        chart.getStyler().setYAxisLogarithmic(true);
        chart.getStyler().setYAxisMin(LEAST_PCT);
        chart.getStyler().setYAxisMax(100.0);
        chart.getStyler().setXAxisDecimalPattern("0.000");
        reports.forEach(report -> add(chart, report));
        return Pictures.png(chart);
    }

    private static void add(XYChart chart, ToleranceReport report) {
        ToleranceCase study = report.study();
        List<ToleranceFinding> shown = report.findings().stream()
                .filter(finding -> 100 * study.lostShare(finding) >= LEAST_PCT)
                .toList();
        if (shown.isEmpty()) {
            return;
        }
        int number = chart.getSeriesMap().size();
        Color colour = Palette.SERIES.get(number % Palette.SERIES.size());
        XYSeries series = chart.addSeries(
                study.line().name() + " " + study.name() + ", " + study.lostAs(),
                shown.stream().map(ToleranceFinding::toleranceMm).toList(),
                shown.stream().map(finding -> 100 * study.lostShare(finding)).toList());
        series.setLineColor(colour);
        series.setLineStyle(new BasicStroke(number < Palette.SERIES.size() ? 2.4f : 1.2f));
        series.setMarker(SeriesMarkers.NONE);
    }
}
