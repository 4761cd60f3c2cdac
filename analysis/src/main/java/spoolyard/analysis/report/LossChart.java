package spoolyard.analysis.report;

import java.awt.Color;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategoryChartBuilder;
import org.knowm.xchart.CategorySeries;

/** From the full rate of all lines day and night down to their good spools, a bar for each loss that can be seen. */
final class LossChart {
    private static final double VISIBLE_SHARE = 0.002;
    private static final String OTHERS = "others";

    private final RunReport report;

    LossChart(RunReport report) {
        this.report = report;
    }

    /**
     * Draws it. Each loss hangs where the ones before it have left off; the smallest are one bar.
     *
     * @return the picture
     */
    CategoryChart chart() {
        Map<String, Double> steps = steps();
        List<String> names = List.copyOf(steps.keySet());
        CategoryChart chart = ChartLook.size(new CategoryChartBuilder())
                .title("From full rate to good spools")
                .yAxisTitle("Spools in the whole run")
                .build();
        ChartLook.dress(chart.getStyler());
        chart.getStyler().setStacked(true);
        chart.getStyler().setLegendVisible(false);
        chart.getStyler().setXAxisTitleVisible(false);
        chart.getStyler().setYAxisMin(0.0);
        ChartLook.fitBars(chart.getStyler(), names);
        List<Double> heights = List.copyOf(steps.values());
        add(chart, "below", Color.WHITE, names, below(heights));
        add(chart, "whole", Palette.PETROL, names, only(heights, true));
        add(chart, "lost", Palette.CORAL, names, only(heights, false));
        return chart;
    }

    /** Full rate, the losses in their order, the small ones together, good spools. */
    private Map<String, Double> steps() {
        Estimates table = report.table(LossSheet.SHEET);
        Map<String, Double> steps = new LinkedHashMap<>();
        double full =
                table.at(List.of(LossSheet.ALL, Loss.FULL), LossSheet.SPOOLS).mean();
        double good =
                table.at(List.of(LossSheet.ALL, Loss.GOOD), LossSheet.SPOOLS).mean();
        double left = full - good;
        steps.put(Loss.FULL, full);
        for (List<String> key : table.keys()) {
            double spools = table.at(key, LossSheet.SPOOLS).mean();
            boolean isLoss = key.get(0).equals(LossSheet.ALL)
                    && !key.get(1).equals(Loss.FULL)
                    && !key.get(1).equals(Loss.GOOD);
            if (isLoss && spools > VISIBLE_SHARE * full) {
                steps.put(key.get(1), spools);
                left -= spools;
            }
        }
        steps.put(OTHERS, Math.max(0, left));
        steps.put(Loss.GOOD, good);
        return steps;
    }

    /** Where each bar begins: the whole ones at the bottom, a loss below those before it. */
    private static List<Double> below(List<Double> heights) {
        List<Double> below = new ArrayList<>(List.of(0.0));
        double level = heights.get(0);
        for (double height : heights.subList(1, heights.size() - 1)) {
            level -= height;
            below.add(level);
        }
        below.add(0.0);
        return below;
    }

    private static List<Double> only(List<Double> heights, boolean isWhole) {
        List<Double> some = new ArrayList<>();
        for (int i = 0; i < heights.size(); i++) {
            boolean isAtEnd = i == 0 || i == heights.size() - 1;
            some.add(isAtEnd == isWhole ? heights.get(i) : 0.0);
        }
        return some;
    }

    private static void add(CategoryChart chart, String name, Color colour, List<String> names, List<Double> heights) {
        CategorySeries series = chart.addSeries(name, names, heights);
        series.setFillColor(colour);
        series.setLineColor(Color.WHITE);
    }
}
