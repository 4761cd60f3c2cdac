package spoolyard.analysis.report;

import java.util.List;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategoryChartBuilder;
import spoolyard.analysis.experiment.Interval;

/** Good spools per shift, with intervals, a bar for each shift name. */
final class ShiftNameChart {
    private final RunReport report;

    ShiftNameChart(RunReport report) {
        this.report = report;
    }

    /**
     * Draws it.
     *
     * @return the picture
     */
    CategoryChart chart() {
        CategoryChart chart = new CategoryChartBuilder()
                .width(ChartLook.WIDTH)
                .height(ChartLook.HEIGHT)
                .title("Good spools per shift")
                .xAxisTitle("Shift")
                .yAxisTitle(ShiftChart.axisTitle(report))
                .build();
        ChartLook.dress(chart.getStyler());
        chart.getStyler().setYAxisDecimalPattern("0");
        chart.getStyler().setLegendVisible(false);
        Estimates table = report.table(ShiftSheets.SHIFT_NAMES);
        List<String> names = table.keys().stream().map(key -> key.get(0)).toList();
        List<Interval> spools = table.keys().stream()
                .map(key -> table.at(key, ShiftSheets.SPOOLS_PER_SHIFT))
                .toList();
        ChartLook.fitBars(chart.getStyler(), names);
        chart.addSeries(
                        "spools",
                        names,
                        spools.stream().map(Interval::mean).toList(),
                        spools.stream().map(each -> each.halfWidth().orElse(0)).toList())
                .setFillColor(Palette.PETROL);
        return chart;
    }
}
