package spoolyard.analysis.report;

import java.awt.Color;
import java.util.List;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.SeriesMarkers;
import spoolyard.analysis.experiment.Standing;

/** The course of a selection: the mean of each plant over the replications, and where it would be dropped. */
public final class RaceChart {
    /** Name of its file. */
    public static final String FILE = "race.png";

    private static final float MEAN = 2.6f;
    private static final float LIMIT = 1.2f;
    private static final int LONGEST_NAME = 34;

    private RaceChart() {}

    /**
     * Draws it.
     *
     * @param report what
     * @return PNG
     */
    public static byte[] png(SelectionReport report) {
        return Pictures.png(chart(report));
    }

    static XYChart chart(SelectionReport report) {
        XYChart chart = ChartLook.size(new XYChartBuilder())
                .title("The race for the best in " + report.measure().inWords())
                .xAxisTitle("Replications of each plant that is still in"
                        + (report.isTwoStage() ? "" : "; dashed: where it is dropped; diamond: dropped"))
                .yAxisTitle(report.measure().label() + ", mean so far")
                .build();
        ChartLook.dress(chart.getStyler());
        for (int plant = 0; plant < report.plants().size(); plant++) {
            add(chart, report, plant);
        }
        return chart;
    }

    private static void add(XYChart chart, SelectionReport report, int plant) {
        Color colour = Palette.SERIES.get(plant % Palette.SERIES.size());
        String letter = Comparison.letter(plant);
        List<Standing> course = report.course(plant);
        List<Double> counts = course.stream().map(each -> (double) each.count()).toList();
        String name = Cell.clipped(letter + " " + report.plants().get(plant).name(), LONGEST_NAME);
        List<Double> means =
                course.stream().map(each -> report.shown(each.mean())).toList();
        XYSeries mean = ChartLook.line(chart, name, counts, means, new ChartLook.Pen(colour, MEAN));
        mean.setMarkerColor(colour);
        if (course.size() == 1) {
            mean.setMarker(SeriesMarkers.CIRCLE);
        }
        if (!report.isTwoStage()) {
            List<Double> limits =
                    course.stream().map(each -> report.shown(each.dropsBelow())).toList();
            XYSeries limit = ChartLook.line(chart, letter + " limit", counts, limits, new ChartLook.Pen(colour, LIMIT));
            limit.setLineStyle(SeriesLines.DASH_DASH);
            limit.setShowInLegend(false);
        }
        course.stream().filter(Standing::isDropped).forEach(last -> ChartLook.dot(
                        chart, letter + " dropped", last.count(), report.shown(last.mean()), colour)
                .setMarker(SeriesMarkers.DIAMOND)
                .setShowInLegend(false));
    }
}
