package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.style.Styler;
import spoolyard.analysis.buffer.CapacityCurve;
import spoolyard.analysis.buffer.Finding;
import spoolyard.analysis.buffer.LossMeasure;
import spoolyard.analysis.experiment.Interval;

/**
 * Rare overflows over the capacity, on a logarithmic axis that tells chances. A capacity at which none is expected has no
 * place on it: it breaks curve and band, and has a mark at the lower edge.
 */
final class RarePanel {
    private static final double RARE_PCT = 0.01;
    private static final double LEAST_PCT = 1e-10;
    private static final double ALL_PCT = 100;

    private final BufferReport report;
    private final List<Double> x;
    private final List<Interval> losses;
    private final double floor;

    RarePanel(BufferReport report) {
        this.report = report;
        this.x = report.curve().points().stream()
                .map(CapacityCurve.Point::capacityM)
                .toList();
        this.losses = losses(report);
        this.floor = floor(report);
    }

    /**
     * Whether a report is about chances so small that a straight axis would hide them.
     *
     * @param report the report
     * @return true if overflows are expected rather than counted, and one or the target is below 1 in 10 000
     */
    static boolean isFor(BufferReport report) {
        return report.rare().isPresent() && seen(report).anyMatch(pct -> pct < RARE_PCT);
    }

    XYChart chart() {
        XYChart chart = BufferChart.empty(report, LossMeasure.OVERFLOW);
        chart.setTitle("overflow, chance of a swap (logarithmic)");
        chart.getStyler().setLegendPosition(Styler.LegendPosition.OutsideE);
        LogCurve.axis(chart.getStyler(), floor, ALL_PCT, LogCurve::oneIn);
        bands(chart);
        List<Double> means = losses.stream().map(Interval::mean).toList();
        LogCurve curve = LogCurve.of(x, means, floor);
        if (curve.isSeen()) {
            ChartLook.line(
                    chart, "simulated", curve.x(), curve.y(), new ChartLook.Pen(Palette.PETROL, BufferChart.THICK));
        }
        if (!curve.below().isEmpty()) {
            boolean isNone = means.stream().allMatch(mean -> mean == 0 || mean >= floor);
            String name = isNone ? "none expected: 0" : "less than shown";
            LogCurve.marks(chart, name, curve.below(), floor, Palette.PETROL);
        }
        dedicated(chart);
        target().ifPresent(found -> BufferChart.target(chart, x, found, Math::log10));
        BufferChart.knee(chart, report, LossMeasure.OVERFLOW, pct -> Math.log10(Math.max(floor, pct)));
        return chart;
    }

    /** One for each row of capacities at which some are expected; to the lower edge where its lower end is 0. */
    private void bands(XYChart chart) {
        List<Integer> run = new ArrayList<>();
        boolean isFirst = true;
        for (int i = 0; i <= losses.size(); i++) {
            if (i < losses.size() && losses.get(i).mean() >= floor) {
                run.add(i);
            } else if (!run.isEmpty()) {
                BufferChart.band(
                                chart,
                                run.stream().map(x::get).toList(),
                                run.stream().map(losses::get).toList(),
                                pct -> Math.log10(Math.max(floor, pct)))
                        .setShowInLegend(isFirst);
                isFirst = false;
                run.clear();
            }
        }
    }

    private void dedicated(XYChart chart) {
        List<Double> fine = BufferChart.fine(x.get(0), x.get(x.size() - 1));
        List<Double> pct = fine.stream().map(report.operator()::overflowPct).toList();
        LogCurve curve = LogCurve.of(fine, pct, floor);
        if (pct.stream().noneMatch(value -> value.isNaN()) && curve.isSeen()) {
            ChartLook.line(
                    chart,
                    "dedicated operator",
                    curve.x(),
                    curve.y(),
                    new ChartLook.Pen(Palette.MUSTARD, BufferChart.THIN));
        }
    }

    private Optional<Finding> target() {
        return report.finding()
                .filter(found -> found.target().measure() == LossMeasure.OVERFLOW
                        && found.target().atMost() >= floor);
    }

    private static List<Interval> losses(BufferReport report) {
        return report.curve().points().stream()
                .map(point -> point.losses().get(LossMeasure.OVERFLOW))
                .toList();
    }

    /** Above 0: means and the target. */
    private static DoubleStream seen(BufferReport report) {
        DoubleStream targets = report.finding().stream()
                .filter(found -> found.target().measure() == LossMeasure.OVERFLOW)
                .mapToDouble(found -> found.target().atMost());
        return DoubleStream.concat(losses(report).stream().mapToDouble(Interval::mean), targets)
                .filter(pct -> pct > 0);
    }

    /** The decade at or below the least. */
    private static double floor(BufferReport report) {
        double least = seen(report).min().orElse(RARE_PCT);
        return Math.max(LEAST_PCT, LogCurve.decade(least));
    }
}
