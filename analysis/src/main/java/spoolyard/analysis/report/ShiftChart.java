package spoolyard.analysis.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Date;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import java.util.stream.IntStream;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;
import spoolyard.analysis.experiment.Interval;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Shift;

/** Good spools in each full shift over the run, with intervals, a series for each shift name. */
final class ShiftChart {
    private static final List<Marker> MARKERS = List.of(
            SeriesMarkers.CIRCLE,
            SeriesMarkers.DIAMOND,
            SeriesMarkers.SQUARE,
            SeriesMarkers.TRIANGLE_UP,
            SeriesMarkers.TRIANGLE_DOWN);

    private final RunReport report;

    ShiftChart(RunReport report) {
        this.report = report;
    }

    /**
     * Draws it.
     *
     * @return the picture
     */
    XYChart chart() {
        XYChart chart = ChartLook.size(new XYChartBuilder())
                .title("Good spools per shift")
                .xAxisTitle("Middle of the shift, plant time")
                .yAxisTitle(axisTitle(report))
                .build();
        ChartLook.dress(chart.getStyler());
        chart.getStyler()
                .setTimezone(
                        TimeZone.getTimeZone(report.setting().clock().start().getZone()));
        chart.getStyler().setxAxisTickLabelsFormattingFunction(null);
        chart.getStyler().setDatePattern("d MMM");
        chart.getStyler().setXAxisTickMarkSpacingHint(90);
        chart.getStyler().setErrorBarsColorSeriesColor(true);
        Map<String, Points> series = series();
        chart.getStyler().setYAxisMin(lowEnd(series.values()));
        series.forEach((name, points) -> add(chart, name, points));
        return chart;
    }

    /**
     * What the upright axis shows.
     *
     * @param report the report
     * @return its title
     */
    static String axisTitle(RunReport report) {
        return report.replications() > 1 ? "Spools, mean and 95 % interval" : "Spools, one replication";
    }

    private Map<String, Points> series() {
        Map<String, Points> series = new LinkedHashMap<>();
        Plant plant = report.setting().plant();
        Estimates shifts = report.table(ShiftSheets.SHIFTS);
        for (int i : FullShifts.of(plant)) {
            Shift shift = plant.shifts().get(i);
            ZonedDateTime middle = report.setting().clock().at((shift.startTick() + shift.endTick()) / 2);
            Interval spools = shifts.at(shifts.keys().get(i), ShiftSheets.SPOOLS);
            series.computeIfAbsent(shift.name(), name -> new Points()).add(middle, spools);
        }
        return series;
    }

    /** Zero, or a round number below all intervals where zero would press them into the top of the picture. */
    private static double lowEnd(Collection<Points> all) {
        double lowest = all.stream().mapToDouble(Points::lowest).min().orElse(0);
        double highest = all.stream().mapToDouble(Points::highest).max().orElse(0);
        double span = Math.max(highest - lowest, highest / 10);
        double step = Math.pow(10, Math.floor(Math.log10(Math.max(span, 1))));
        double below = Math.floor((lowest - span / 2) / step) * step;
        return below < highest / 3 ? 0 : below;
    }

    private static void add(XYChart chart, String name, Points points) {
        int number = chart.getSeriesMap().size();
        Color colour = Palette.SERIES.get(number % Palette.SERIES.size());
        XYSeries series = chart.addSeries(name, points.times, points.means, points.halfWidths);
        series.setLineColor(colour);
        series.setLineStyle(new BasicStroke(1.2f));
        series.setMarkerColor(colour);
        series.setMarker(MARKERS.get(number % MARKERS.size()));
    }

    private static final class Points {
        private final List<Date> times = new ArrayList<>();
        private final List<Double> means = new ArrayList<>();
        private final List<Double> halfWidths = new ArrayList<>();

        double lowest() {
            return IntStream.range(0, means.size())
                    .mapToDouble(i -> means.get(i) - halfWidths.get(i))
                    .min()
                    .orElse(0);
        }

        double highest() {
            return IntStream.range(0, means.size())
                    .mapToDouble(i -> means.get(i) + halfWidths.get(i))
                    .max()
                    .orElse(0);
        }

        void add(ZonedDateTime time, Interval spools) {
            times.add(Date.from(time.toInstant()));
            means.add(spools.mean());
            halfWidths.add(spools.halfWidth().orElse(0));
        }
    }
}
