package spoolyard.analysis.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.AnnotationText;
import org.knowm.xchart.BitmapEncoder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;
import spoolyard.analysis.schedule.FrontierPoint;

/** Purge over lateness: every plan of the frontier, those that the table shows with their letters, and the knee. */
public final class FrontierChart {
    /** Name of its file. */
    public static final String FILE = "frontier.png";

    private static final double ROOM = 0.06;
    private static final double ABOVE = 0.035;

    private final FrontierReport report;

    /**
     * Prepares to draw.
     *
     * @param report what
     */
    public FrontierChart(FrontierReport report) {
        this.report = report;
    }

    /**
     * Draws it.
     *
     * @return PNG
     */
    public byte[] png() {
        return Png.of(BitmapEncoder.getBufferedImage(chart()));
    }

    XYChart chart() {
        List<FrontierPoint> all = report.frontier().points();
        FrontierPoint first = all.get(0);
        FrontierPoint last = all.get(all.size() - 1);
        double reserveH = first.plan().book().weights().reserveH();
        XYChart chart = ChartLook.size(new XYChartBuilder()
                        .title("What promptness costs in purge")
                        .xAxisTitle("Late spool-days, times the order's weight, from " + Figures.shown(reserveH, 0)
                                + " h before it is due")
                        .yAxisTitle("Purge, kg"))
                .build();
        ChartLook.dress(chart.getStyler());
        double wide = range(chart.getStyler(), first, last);
        staircase(chart, all);
        dots(chart, "plans that no other beats", all, Palette.STONE);
        dots(chart, "plans of the table", report.shown(), Palette.PETROL);
        dots(chart, "knee", List.of(all.get(report.frontier().knee())), Palette.RED);
        letters(chart, wide);
        return chart;
    }

    /** From below the least to above the most of both, 0 as a floor; returns the height of the plot in kg. */
    private static double range(AxesChartStyler axes, FrontierPoint first, FrontierPoint last) {
        double wide = Math.max(1e-3, first.lateSpoolDays() - last.lateSpoolDays());
        double high = Math.max(1e-3, last.purgeKg() - first.purgeKg());
        axes.setXAxisMin(Math.max(0, last.lateSpoolDays() - ROOM * wide));
        axes.setXAxisMax(first.lateSpoolDays() + ROOM * wide);
        axes.setYAxisMin(Math.max(0, first.purgeKg() - ROOM * high));
        axes.setYAxisMax(last.purgeKg() + 2 * ROOM * high);
        return high;
    }

    /** Between two plans there is none: what is to be had at most this late is the plan to the left. */
    private static void staircase(XYChart chart, List<FrontierPoint> all) {
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        for (int i = all.size() - 1; i >= 0; i--) {
            if (!x.isEmpty()) {
                x.add(all.get(i).lateSpoolDays());
                y.add(y.get(y.size() - 1));
            }
            x.add(all.get(i).lateSpoolDays());
            y.add(all.get(i).purgeKg());
        }
        XYSeries series = chart.addSeries("least purge at that lateness", x, y);
        series.setLineColor(Palette.SKY);
        series.setLineStyle(new BasicStroke(2));
        series.setMarker(SeriesMarkers.NONE);
    }

    private static void dots(XYChart chart, String name, List<FrontierPoint> points, Color colour) {
        XYSeries series = chart.addSeries(
                name,
                points.stream().map(FrontierPoint::lateSpoolDays).toList(),
                points.stream().map(FrontierPoint::purgeKg).toList());
        series.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
        series.setMarker(SeriesMarkers.CIRCLE);
        series.setMarkerColor(colour);
    }

    private void letters(XYChart chart, double high) {
        chart.getStyler().setAnnotationTextFont(new Font(Font.SANS_SERIF, Font.BOLD, 16));
        chart.getStyler().setAnnotationTextFontColor(Palette.TEXT);
        List<FrontierPoint> shown = report.shown();
        for (int i = 0; i < shown.size(); i++) {
            FrontierPoint point = shown.get(i);
            chart.addAnnotation(new AnnotationText(
                    FrontierReport.letter(i), point.lateSpoolDays(), point.purgeKg() + ABOVE * high, false));
        }
    }
}
