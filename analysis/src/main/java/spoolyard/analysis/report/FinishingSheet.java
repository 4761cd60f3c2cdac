package spoolyard.analysis.report;

import java.util.List;
import spoolyard.core.record.ServerState;
import spoolyard.core.record.StationResult;

/** The finishing stations. */
final class FinishingSheet {
    static final Sheet<StationResult> SHEET = new Sheet<>(
            "finishing",
            List.of("station", "places"),
            (setting, result) -> result.finishing(),
            station -> List.of(station.station(), String.valueOf(station.servers())),
            List.of(
                    Column.amount("spools", StationResult::spools),
                    Column.amount("repeated_cycles", StationResult::repeats),
                    Column.average("working_pct_of_open", FinishingSheet::workingPercent),
                    Column.amount("mean_wait_min", station -> station.meanWaitS() / 60),
                    Column.amount("longest_wait_min", station -> station.longestWaitS() / 60),
                    Column.amount("waited_pct_of_spools", station -> 100 * station.waitedShare()),
                    Column.amount("mean_waiting_spools", StationResult::meanWaiting),
                    Column.amount("peak_waiting_spools", StationResult::peakWaiting)));

    private FinishingSheet() {}

    static double workingPercent(StationResult station) {
        double totalS = station.stateS().values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
        double openS = totalS - station.stateS().get(ServerState.CLOSED);
        return 100 * station.stateS().get(ServerState.WORKING) / openS;
    }
}
