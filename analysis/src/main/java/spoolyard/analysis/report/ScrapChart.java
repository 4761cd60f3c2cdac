package spoolyard.analysis.report;

import java.util.List;
import org.knowm.xchart.CategoryChart;

/** Scrap of the plant by cause, the largest first, with intervals. */
final class ScrapChart {
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
        IntervalBars bars = new IntervalBars(
                "Scrap by cause", "% of the mass fed" + (report.replications() > 1 ? ", mean and 95 % interval" : ""));
        Estimates causes = report.table(LineSheets.SCRAP_CAUSES);
        List<List<String>> seen = ScrapList.worthShowing(causes);
        for (List<String> key : seen.isEmpty() ? causes.keys() : seen) {
            bars.add(key.get(0), causes.at(key, LineSheets.CAUSE_PCT));
        }
        return bars.chart();
    }
}
