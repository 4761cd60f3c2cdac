package spoolyard.analysis.report;

import java.awt.Color;
import java.util.List;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategoryChartBuilder;
import org.knowm.xchart.CategorySeries;
import spoolyard.core.plant.Line;

/** Time by state, a bar for each line. States that mean much the same to a reader share a colour. */
final class StateChart {
    private final RunReport report;

    StateChart(RunReport report) {
        this.report = report;
    }

    /**
     * Draws it.
     *
     * @return the picture
     */
    CategoryChart chart() {
        List<String> lines =
                report.setting().plant().lines().stream().map(Line::name).toList();
        CategoryChart chart = ChartLook.size(new CategoryChartBuilder())
                .title("Time by state")
                .yAxisTitle("% of the run")
                .build();
        ChartLook.dress(chart.getStyler());
        chart.getStyler().setStacked(true);
        chart.getStyler().setXAxisTitleVisible(false);
        ChartLook.fitBars(chart.getStyler(), lines);
        chart.getStyler().setYAxisMin(0.0);
        chart.getStyler().setYAxisMax(100.0);
        for (StateGroup group : StateGroup.values()) {
            add(chart, group, lines);
        }
        return chart;
    }

    private void add(CategoryChart chart, StateGroup group, List<String> lines) {
        List<Double> shares = lines.stream().map(line -> share(line, group)).toList();
        if (shares.stream().anyMatch(share -> share > 0)) {
            CategorySeries series = chart.addSeries(group.label(), lines, shares);
            series.setFillColor(group.colour());
            series.setLineColor(Color.WHITE);
        }
    }

    private double share(String line, StateGroup group) {
        Estimates states = report.table(StateSheet.SHEET);
        return group.states().stream()
                .map(state -> List.of("line", line, state.label()))
                .mapToDouble(key -> states.at(key, StateSheet.PCT).mean())
                .sum();
    }
}
