package spoolyard.analysis.report;

import java.awt.BasicStroke;
import java.awt.Font;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategoryChartBuilder;
import org.knowm.xchart.CategorySeries;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.internal.chartpart.Chart;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;
import spoolyard.analysis.experiment.Interval;

/** A measure over the only factor of a study: a line with a band where it is a number, dots with bars elsewhere. */
final class FactorLine {
    private static final float THICK = 2.6f;
    private static final double MARGIN = 0.1;
    private static final int LONGEST_NAME = 24;

    private final StudyReport report;
    private final FactorAxis axis;

    FactorLine(StudyReport report) {
        this.report = report;
        this.axis = FactorAxis.of(report, 0);
    }

    /**
     * The chart of a measure.
     *
     * @param measure which
     * @param width pixels
     * @param height pixels
     * @return dressed
     */
    Chart<?, ?> panel(Measure measure, int width, int height) {
        List<Integer> points = IntStream.range(0, report.points().size())
                .boxed()
                .filter(point -> report.interval(point, measure).isPresent())
                .sorted((one, other) -> Integer.compare(index(one), index(other)))
                .toList();
        if (axis.isNumeric()) {
            XYChart chart = new XYChartBuilder().width(width).height(height).build();
            dress(chart, chart.getStyler(), measure);
            line(chart, points, measure);
            return chart;
        }
        CategoryChart chart =
                new CategoryChartBuilder().width(width).height(height).build();
        dress(chart, chart.getStyler(), measure);
        dots(chart, points, measure);
        return chart;
    }

    private void dress(Chart<?, ?> chart, AxesChartStyler styler, Measure measure) {
        chart.setTitle(measure.label());
        chart.setXAxisTitle(axis.title());
        ChartLook.dress(styler);
        styler.setChartTitleFont(new Font(Font.SANS_SERIF, Font.BOLD, 16));
        styler.setChartTitlePadding(6);
        styler.setYAxisTitleVisible(false);
        styler.setLegendVisible(false);
    }

    private int index(int point) {
        return axis.index(report.points().get(point).get(0));
    }

    private void line(XYChart chart, List<Integer> points, Measure measure) {
        List<Double> x =
                points.stream().map(point -> axis.numbers().get(index(point))).toList();
        List<Interval> y =
                points.stream().map(point -> report.interval(point, measure)).toList();
        XYSeries band = chart.addSeries("95 % interval", thereAndBack(x, x), thereAndBack(ends(y, 1), ends(y, -1)));
        band.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.PolygonArea);
        band.setFillColor(Palette.GRID);
        band.setLineColor(Palette.GRID);
        band.setMarker(SeriesMarkers.NONE);
        XYSeries mean = chart.addSeries("mean", x, ends(y, 0));
        mean.setLineColor(Palette.PETROL);
        mean.setLineStyle(new BasicStroke(THICK));
        mean.setMarker(SeriesMarkers.CIRCLE);
        mean.setMarkerColor(Palette.PETROL);
    }

    private void dots(CategoryChart chart, List<Integer> points, Measure measure) {
        List<String> names = points.stream()
                .map(point -> Cell.clipped(report.points().get(point).get(0).label(), LONGEST_NAME))
                .toList();
        List<Interval> y =
                points.stream().map(point -> report.interval(point, measure)).toList();
        List<Double> halves =
                y.stream().map(interval -> interval.halfWidth().orElse(0)).toList();
        CategorySeries mean = chart.addSeries("mean", names, ends(y, 0), halves);
        mean.setChartCategorySeriesRenderStyle(CategorySeries.CategorySeriesRenderStyle.Scatter);
        mean.setMarker(SeriesMarkers.CIRCLE);
        mean.setMarkerColor(Palette.PETROL);
        double low = Collections.min(ends(y, -1));
        double high = Collections.max(ends(y, 1));
        if (high > low) {
            chart.getStyler().setYAxisMin(low - MARGIN * (high - low));
            chart.getStyler().setYAxisMax(high + MARGIN * (high - low));
        }
    }

    private static List<Double> ends(List<Interval> intervals, int side) {
        return intervals.stream()
                .map(interval -> interval.mean() + side * interval.halfWidth().orElse(0))
                .toList();
    }

    private static List<Double> thereAndBack(List<Double> there, List<Double> back) {
        List<Double> reversed = new ArrayList<>(back);
        Collections.reverse(reversed);
        return Stream.concat(there.stream(), reversed.stream()).toList();
    }
}
