package spoolyard.analysis.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategoryChartBuilder;
import spoolyard.analysis.experiment.Interval;

/** A picture of one bar for each name, with intervals. */
final class IntervalBars {
    private final String title;
    private final String upright;
    private final Map<String, Interval> bars = new LinkedHashMap<>();

    /**
     * Begins a picture.
     *
     * @param title what it shows
     * @param upright title of the upright axis
     */
    IntervalBars(String title, String upright) {
        this.title = title;
        this.upright = upright;
    }

    /**
     * Adds a bar to the right of the others.
     *
     * @param name its name
     * @param height its height
     */
    void add(String name, Interval height) {
        bars.put(name, height);
    }

    /**
     * Draws it.
     *
     * @return the picture
     */
    CategoryChart chart() {
        CategoryChart chart = ChartLook.size(new CategoryChartBuilder())
                .title(title)
                .yAxisTitle(upright)
                .build();
        List<String> names = List.copyOf(bars.keySet());
        ChartLook.dress(chart.getStyler());
        ChartLook.fitBars(chart.getStyler(), names);
        chart.getStyler().setLegendVisible(false);
        chart.getStyler().setXAxisTitleVisible(false);
        List<Double> means = bars.values().stream().map(Interval::mean).toList();
        List<Double> halfWidths =
                bars.values().stream().map(bar -> bar.halfWidth().orElse(0)).toList();
        chart.addSeries(title, names, means, halfWidths).setFillColor(Palette.PETROL);
        return chart;
    }
}
