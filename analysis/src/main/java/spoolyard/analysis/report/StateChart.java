package spoolyard.analysis.report;

import java.awt.Color;
import java.util.List;
import java.util.stream.Stream;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategoryChartBuilder;
import org.knowm.xchart.CategorySeries;
import spoolyard.core.plant.Line;
import spoolyard.core.record.LineState;

/** Time by state, a bar for each line. States that mean much the same to a reader share a colour. */
final class StateChart {
    private final RunReport report;

    StateChart(RunReport report) {
        this.report = report;
    }

    /**
     * Draws it.
     *
     * @return the picture
     */
    CategoryChart chart() {
        List<String> lines =
                report.setting().plant().lines().stream().map(Line::name).toList();
        CategoryChart chart = new CategoryChartBuilder()
                .width(ChartLook.WIDTH)
                .height(ChartLook.HEIGHT)
                .title("Time by state")
                .yAxisTitle("% of the run")
                .build();
        ChartLook.dress(chart.getStyler());
        chart.getStyler().setStacked(true);
        chart.getStyler().setXAxisTitleVisible(false);
        ChartLook.fitBars(chart.getStyler(), lines);
        chart.getStyler().setYAxisMin(0.0);
        chart.getStyler().setYAxisMax(100.0);
        for (Group group : Group.values()) {
            List<Double> shares = lines.stream().map(line -> share(line, group)).toList();
            if (shares.stream().anyMatch(share -> share > 0)) {
                CategorySeries series = chart.addSeries(group.label, lines, shares);
                series.setFillColor(group.colour);
                series.setLineColor(Color.WHITE);
            }
        }
        return chart;
    }

    private double share(String line, Group group) {
        Estimates states = report.table(StateSheet.SHEET);
        return group.states.stream()
                .map(state -> List.of("line", line, state.label()))
                .mapToDouble(key -> states.at(key, StateSheet.PCT).mean())
                .sum();
    }

    /** States that share a colour, from the bottom of the bar to its top. */
    enum Group {
        RUNNING("running", Palette.PETROL, LineState.RUNNING),
        SLOWED("slowed", Palette.SKY, LineState.SLOWED),
        CHANGEOVER("changeover", Palette.MUSTARD, LineState.SET_UP, LineState.PURGING, LineState.APPROVAL),
        START("start and stop", Palette.STRAW, LineState.STARTING, LineState.SHUTTING_DOWN),
        DOWN("down", Palette.RED, LineState.DOWN),
        PLANNED("planned stop", Palette.INDIGO, LineState.PLANNED_STOP),
        WAITING("waiting for crew", Palette.CORAL, LineState.WAITING_FOR_CREW, LineState.OVERFLOW_STOP),
        MATERIAL("waiting for material", Palette.VIOLET, LineState.WAITING_FOR_MATERIAL),
        NO_ORDER("no order", Palette.STONE, LineState.NO_ORDER),
        NOT_SCHEDULED("not scheduled", Palette.MIST, LineState.NOT_SCHEDULED);

        private final String label;
        private final Color colour;
        private final List<LineState> states;

        Group(String label, Color colour, LineState... states) {
            this.label = label;
            this.colour = colour;
            this.states = List.of(states);
        }

        /**
         * The states of all groups.
         *
         * @return each state once
         */
        static List<LineState> allStates() {
            return Stream.of(values()).flatMap(group -> group.states.stream()).toList();
        }
    }
}
