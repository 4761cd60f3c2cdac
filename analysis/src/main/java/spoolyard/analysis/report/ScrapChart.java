package spoolyard.analysis.report;

import java.util.Comparator;
import java.util.List;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategoryChartBuilder;
import spoolyard.analysis.experiment.Interval;

/** Scrap of the plant by cause, the largest first, with intervals. */
final class ScrapChart {
    private static final double WORTH_SHOWING_PCT = 0.005;

    private final RunReport report;

    ScrapChart(RunReport report) {
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
                .title("Scrap by cause")
                .yAxisTitle("% of the mass fed" + (report.replications() > 1 ? ", mean and 95 % interval" : ""))
                .build();
        ChartLook.dress(chart.getStyler());
        chart.getStyler().setLegendVisible(false);
        chart.getStyler().setXAxisTitleVisible(false);
        chart.getStyler().setYAxisDecimalPattern("0.0#");
        Estimates causes = report.table(LineSheets.SCRAP_CAUSES);
        List<List<String>> shown = shown(causes);
        List<String> names = shown.stream().map(key -> key.get(0)).toList();
        ChartLook.fitBars(chart.getStyler(), names);
        List<Interval> shares =
                shown.stream().map(key -> causes.at(key, LineSheets.CAUSE_PCT)).toList();
        chart.addSeries(
                        "scrap",
                        names,
                        shares.stream().map(Interval::mean).toList(),
                        shares.stream()
                                .map(share -> share.halfWidth().orElse(0))
                                .toList())
                .setFillColor(Palette.PETROL);
        return chart;
    }

    /** The causes that can be seen; if there are none, all of them, as an empty plot cannot be drawn. */
    private static List<List<String>> shown(Estimates causes) {
        List<List<String>> seen = causes.keys().stream()
                .filter(key -> causes.at(key, LineSheets.CAUSE_PCT).mean() >= WORTH_SHOWING_PCT)
                .sorted(Comparator.comparingDouble(
                        key -> -causes.at(key, LineSheets.CAUSE_PCT).mean()))
                .toList();
        return seen.isEmpty() ? causes.keys() : seen;
    }
}
