package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.StationResult;

/** Time of lines and finishing stations by state. */
final class StateSheet {
    static final Column<InState> HOURS = Column.amount("hours", each -> each.seconds() / 3600);
    static final Column<InState> PCT = Column.amount("pct_of_time", each -> 100 * each.seconds() / each.totalS());

    static final Sheet<InState> SHEET = new Sheet<>(
            "states",
            List.of("kind", "station", "state"),
            StateSheet::states,
            each -> List.of(each.kind(), each.station(), each.state()),
            List.of(HOURS, PCT));

    private StateSheet() {}

    private static List<InState> states(Setting setting, RunResult result) {
        List<InState> all = new ArrayList<>();
        for (LineResult line : result.lines()) {
            double total = total(line.stateS());
            line.stateS()
                    .forEach((state, seconds) ->
                            all.add(new InState("line", line.line(), state.label(), seconds, total)));
        }
        result.finishing().forEach(station -> addStation("finishing", station, all));
        result.quality().lab().forEach(station -> addStation("lab", station, all));
        result.quality().rework().forEach(station -> addStation("rework", station, all));
        return all;
    }

    private static void addStation(String kind, StationResult station, List<InState> all) {
        double total = total(station.stateS());
        station.stateS()
                .forEach((state, seconds) ->
                        all.add(new InState(kind, station.station(), state.label(), seconds, total)));
    }

    private static double total(Map<?, Double> seconds) {
        return seconds.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** A station in a state. */
    record InState(String kind, String station, String state, double seconds, double totalS) {}
}
