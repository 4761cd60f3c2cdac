package spoolyard.analysis.report;

import java.awt.Color;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.Styler;
import spoolyard.core.gauge.ToleranceFinding;

/** Mass lost over the tolerance, on a logarithmic scale, a curve for all lines and products that share it. */
public final class ToleranceChart {
    private static final double LEAST_PCT = 1e-3;
    private static final double MOST_PCT = 100;

    private ToleranceChart() {}

    /**
     * Draws it.
     *
     * @param reports one a line with a product, each with tolerances close enough for a curve; at least one
     * @return PNG
     */
    public static byte[] png(List<ToleranceReport> reports) {
        return Pictures.png(chart(reports));
    }

    static XYChart chart(List<ToleranceReport> reports) {
        XYChart chart = new XYChartBuilder()
                .width(ChartLook.WIDTH)
                .height(ChartLook.HEIGHT)
                .title("What a tolerance costs")
                .xAxisTitle("Tolerance, mm either side")
                .yAxisTitle("Lost to excursions, % of the mass made (logarithmic; \u25bc less from here on)")
                .build();
        ChartLook.dress(chart.getStyler());
        chart.getStyler().setLegendPosition(Styler.LegendPosition.InsideNE);
        chart.getStyler().setLegendLayout(Styler.LegendLayout.Vertical);
        LogCurve.axis(chart.getStyler(), LEAST_PCT, MOST_PCT, ChartLook::number);
        chart.getStyler().setxAxisTickLabelsFormattingFunction(mm -> Figures.shown(mm, 3));
        Map<List<Double>, List<ToleranceReport>> curves = new LinkedHashMap<>();
        reports.forEach(report -> curves.computeIfAbsent(lostPct(report), lost -> new ArrayList<>())
                .add(report));
        curves.forEach((lost, same) -> add(chart, lost, same));
        return chart;
    }

    private static List<Double> lostPct(ToleranceReport report) {
        return report.findings().stream()
                .map(finding -> 100 * report.study().lostShare(finding))
                .toList();
    }

    /** A mark where a curve leaves through the lower edge; one that is nowhere above it is a mark alone. */
    private static void add(XYChart chart, List<Double> lostPct, List<ToleranceReport> same) {
        int number = (int) chart.getSeriesMap().values().stream()
                .filter(XYSeries::isShowInLegend)
                .count();
        Color colour = Palette.SERIES.get(number % Palette.SERIES.size());
        List<Double> tolerances = same.get(0).findings().stream()
                .map(ToleranceFinding::toleranceMm)
                .toList();
        LogCurve curve = LogCurve.of(tolerances, lostPct, LEAST_PCT);
        String name = name(same);
        if (curve.isSeen()) {
            float width = number < Palette.SERIES.size() ? 2.4f : 1.2f;
            ChartLook.line(chart, name, curve.x(), curve.y(), new ChartLook.Pen(colour, width));
        }
        if (!curve.below().isEmpty()) {
            String below = name + ", all below " + LEAST_PCT + " %";
            LogCurve.marks(chart, below, leaves(curve), LEAST_PCT, colour).setShowInLegend(!curve.isSeen());
        }
    }

    private static List<Double> leaves(LogCurve curve) {
        int edge = curve.y().lastIndexOf(Math.log10(LEAST_PCT));
        return List.of(edge < 0 ? curve.below().get(0) : curve.x().get(edge));
    }

    private static String name(List<ToleranceReport> same) {
        Map<String, List<String>> linesByProduct = same.stream()
                .map(ToleranceReport::study)
                .collect(Collectors.groupingBy(
                        ToleranceCase::name,
                        LinkedHashMap::new,
                        Collectors.mapping(study -> study.line().name(), Collectors.toList())));
        return linesByProduct.entrySet().stream()
                        .map(each -> String.join(", ", each.getValue()) + " " + each.getKey())
                        .collect(Collectors.joining("; "))
                + ": " + same.get(0).study().lostAs();
    }
}
