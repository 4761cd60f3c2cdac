package spoolyard.analysis.report;

import java.util.List;
import org.knowm.xchart.CategoryChart;

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
        IntervalBars bars = new IntervalBars("Good spools per shift", ShiftChart.axisTitle(report));
        Estimates table = report.table(ShiftSheets.SHIFT_NAMES);
        for (List<String> key : table.keys()) {
            bars.add(key.get(0), table.at(key, ShiftSheets.SPOOLS_PER_SHIFT));
        }
        return bars.chart();
    }
}
