package spoolyard.analysis.report;

import java.awt.BasicStroke;
import java.awt.Font;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.SeriesMarkers;
import spoolyard.analysis.experiment.Interval;

/** A measure over the only factor of a study: a line with a band where it is a number, dots with bars elsewhere. */
final class FactorLine {
    private static final float THICK = 2.6f;

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
    XYChart panel(Measure measure, int width, int height) {
        XYChart chart = new XYChartBuilder()
                .width(width)
                .height(height)
                .title(measure.label())
                .xAxisTitle(axis.title())
                .build();
        ChartLook.dress(chart.getStyler());
        chart.getStyler().setChartTitleFont(new Font(Font.SANS_SERIF, Font.BOLD, 16));
        chart.getStyler().setChartTitlePadding(6);
        chart.getStyler().setYAxisTitleVisible(false);
        chart.getStyler().setLegendVisible(false);
        List<Integer> points = IntStream.range(0, report.points().size())
                .boxed()
                .filter(point -> report.interval(point, measure).isPresent())
                .sorted((one, other) -> Integer.compare(index(one), index(other)))
                .toList();
        if (axis.isNumeric()) {
            line(chart, points, measure);
        } else {
            dots(chart, points, measure);
        }
        return chart;
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

    private void dots(XYChart chart, List<Integer> points, Measure measure) {
        List<Double> x = points.stream().map(point -> index(point) + 1.0).toList();
        List<Interval> y =
                points.stream().map(point -> report.interval(point, measure)).toList();
        List<Double> halves =
                y.stream().map(interval -> interval.halfWidth().orElse(0)).toList();
        XYSeries mean = chart.addSeries("mean", x, ends(y, 0), halves);
        mean.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
        mean.setMarker(SeriesMarkers.CIRCLE);
        mean.setMarkerColor(Palette.PETROL);
        chart.getStyler().setXAxisMin(0.5);
        chart.getStyler().setXAxisMax(axis.labels().size() + 0.5);
        chart.setCustomXAxisTickLabelsFormatter(this::label);
    }

    private String label(double place) {
        int index = (int) Math.round(place) - 1;
        boolean isLevel = Math.abs(place - Math.round(place)) < 0.01
                && index >= 0
                && index < axis.labels().size();
        return isLevel ? Cell.clipped(axis.labels().get(index), 20) : " ";
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
