package spoolyard.analysis.report;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * A curve on a logarithmic axis: drawn down to the axis' lower edge and never along it. What is below, zero too, is no
 * line but a mark at the edge. Immutable.
 *
 * <p>The axis itself is straight in the decimal logarithm: the drawing library writes the ticks of a straight axis beside a
 * logarithmic one as soon as it is told how to write numbers.
 *
 * @param x across, one a point, with the crossings of the edge
 * @param y up, one a point, decimal logarithms; not a number below the edge
 * @param below across, those points that are below the edge
 */
record LogCurve(List<Double> x, List<Double> y, List<Double> below) {
    private static final double ROUNDING = 1e-9;
    private static final double ALL_PCT = 100;
    private static final double MILLION = 1e6;
    private static final double BILLION = 1e9;
    private static final double TRILLION = 1e12;

    /** Copies the lists. */
    LogCurve {
        x = List.copyOf(x);
        y = List.copyOf(y);
        below = List.copyOf(below);
    }

    /**
     * Cuts a curve at the edge.
     *
     * @param x across
     * @param y up, one an x, {@code >= 0}
     * @param floor lower edge, {@code > 0}
     * @return the curve, straight between two points in its logarithm
     */
    static LogCurve of(List<Double> x, List<Double> y, double floor) {
        List<Double> cutX = new ArrayList<>();
        List<Double> cutY = new ArrayList<>();
        List<Double> below = new ArrayList<>();
        for (int i = 0; i < x.size(); i++) {
            boolean isAbove = y.get(i) >= floor;
            if (i > 0 && isAbove != y.get(i - 1) >= floor && y.get(i) > 0 && y.get(i - 1) > 0) {
                double part = Math.log(floor / y.get(i - 1)) / Math.log(y.get(i) / y.get(i - 1));
                cutX.add(x.get(i - 1) + part * (x.get(i) - x.get(i - 1)));
                cutY.add(Math.log10(floor));
            }
            cutX.add(x.get(i));
            cutY.add(isAbove ? Math.log10(y.get(i)) : Double.NaN);
            if (!isAbove) {
                below.add(x.get(i));
            }
        }
        return new LogCurve(cutX, cutY, below);
    }

    /**
     * Makes the vertical axis of a picture one of decimal logarithms.
     *
     * @param styler of the picture, dressed
     * @param least lower edge, a power of ten
     * @param most upper edge, a power of ten
     * @param shown how a value is written; asked for powers of ten only
     */
    static void axis(AxesChartStyler styler, double least, double most, DoubleFunction<String> shown) {
        styler.setYAxisMin(Math.log10(least));
        styler.setYAxisMax(Math.log10(most));
        styler.setyAxisTickLabelsFormattingFunction(power ->
                Math.abs(power - Math.rint(power)) < ROUNDING ? shown.apply(Math.pow(10, Math.rint(power))) : " ");
    }

    /**
     * The power of ten at or below a value.
     *
     * @param value {@code > 0}
     * @return in the same unit
     */
    static double decade(double value) {
        return Math.pow(10, Math.floor(Math.log10(value) + ROUNDING));
    }

    /**
     * Whether any of it is a line.
     *
     * @return false if all is below the edge
     */
    boolean isSeen() {
        return y.stream().anyMatch(value -> !value.isNaN());
    }

    /**
     * Marks places at the lower edge.
     *
     * @param chart the picture
     * @param name in the legend
     * @param places across
     * @param floor lower edge
     * @param colour of the marks
     * @return marks without a line
     */
    static XYSeries marks(XYChart chart, String name, List<Double> places, double floor, Color colour) {
        XYSeries marks = chart.addSeries(
                name, places, places.stream().map(place -> Math.log10(floor)).toList());
        marks.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
        marks.setMarker(SeriesMarkers.TRIANGLE_DOWN);
        marks.setMarkerColor(colour);
        return marks;
    }

    /**
     * A chance in words.
     *
     * @param pct per cent, {@code > 0}
     * @return for example {@code 1 in 10 000}
     */
    static String oneIn(double pct) {
        double times = ALL_PCT / pct;
        if (times >= TRILLION) {
            return "1 in 1e" + Math.round(Math.log10(times));
        }
        if (times >= BILLION) {
            return "1 in " + ChartLook.number(times / BILLION) + " billion";
        }
        return "1 in " + (times >= MILLION ? ChartLook.number(times / MILLION) + " million" : ChartLook.number(times));
    }
}
