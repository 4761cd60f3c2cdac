package spoolyard.analysis.report;

import java.awt.BasicStroke;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.BitmapEncoder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.SeriesMarkers;
import spoolyard.analysis.crew.CrewRow;
import spoolyard.analysis.crew.CrewView;
import spoolyard.analysis.crew.PublishedCurve;

/** Efficiency of the winders over the number of people, with the published curves beside. */
public final class CrewViewChart {
    private static final float THICK = 2.6f;
    private static final float THIN = 1.6f;
    private static final double MARGIN_PCT = 0.5;

    private final CrewView view;

    /**
     * Prepares to draw.
     *
     * @param view what
     */
    public CrewViewChart(CrewView view) {
        this.view = view;
    }

    /**
     * Draws it.
     *
     * @return PNG
     */
    public byte[] png() {
        XYChart chart = ChartLook.size(new XYChartBuilder())
                .title(view.load().winders() + " winders under more and fewer people: time without a wait for one, %")
                .xAxisTitle("People of the role " + view.staffing().roleName() + " in a shift")
                .build();
        ChartLook.dress(chart.getStyler());
        chart.getStyler().setYAxisTitleVisible(false);
        chart.getStyler().setYAxisMax(100 + MARGIN_PCT);
        chart.getStyler().setXAxisMaxLabelCount(view.rows().size());
        List<Double> people =
                view.rows().stream().map(row -> (double) row.people()).toList();
        published(chart, people);
        simulated(chart, people);
        return Png.of(BitmapEncoder.getBufferedImage(chart));
    }

    private void published(XYChart chart, List<Double> people) {
        if (!view.load().isSound()) {
            return;
        }
        for (PublishedCurve curve : PublishedCurve.values()) {
            List<Double> pct = people.stream()
                    .map(number -> 100 * curve.efficiency(view.load(), number.intValue()))
                    .toList();
            XYSeries series = chart.addSeries(curve.label(), people, pct);
            series.setLineColor(
                    List.of(Palette.MUSTARD, Palette.INDIGO, Palette.CORAL).get(curve.ordinal()));
            series.setLineStyle(new BasicStroke(THIN));
            series.setMarker(SeriesMarkers.NONE);
        }
    }

    private void simulated(XYChart chart, List<Double> people) {
        List<Double> pct = new ArrayList<>();
        List<Double> bars = new ArrayList<>();
        for (CrewRow row : view.rows()) {
            pct.add(100 * row.efficiency().mean());
            bars.add(100 * row.efficiency().halfWidth().orElse(0));
        }
        XYSeries series = chart.addSeries("this plant, simulated, with 95 % interval", people, pct, bars);
        series.setLineColor(Palette.PETROL);
        series.setLineStyle(new BasicStroke(THICK));
        series.setMarkerColor(Palette.PETROL);
        series.setMarker(SeriesMarkers.CIRCLE);
    }
}
