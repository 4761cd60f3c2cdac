package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.RunResult.CrewResult;
import spoolyard.core.record.StationResult;

/**
 * Where the bottleneck is, by the mean length of the active periods.
 *
 * <p>Source: C. Roser, M. Nakano and M. Tanaka, "A practical bottleneck detection method", Winter Simulation Conference
 * 2001: a station is active while it works, is set up or is put right, and inactive while it waits for something else;
 * the one with the longest mean active period is the bottleneck. A work place of a finishing station counts by itself.
 * So does each person of a role. Rework of spools (sorting, winding anew, drying again) is left out: it stands beside the
 * flow, and a long cycle there holds nobody up.
 */
final class BottleneckSheet {
    static final Column<Station> MEAN_ACTIVE = Column.average("mean_active_min", Station::meanActiveMin);
    static final Column<Station> ACTIVE_PCT =
            Column.average("active_pct_of_time", station -> 100 * station.activeS() / station.totalS());

    static final Column<Station> FIRST_PCT =
            Column.amount("bottleneck_pct_of_replications", station -> station.isLongest() ? 100 : 0);

    static final Sheet<Station> SHEET = new Sheet<>(
            "bottleneck",
            List.of("kind", "station"),
            BottleneckSheet::stations,
            station -> List.of(station.kind(), station.name()),
            List.of(MEAN_ACTIVE, FIRST_PCT, ACTIVE_PCT));

    private BottleneckSheet() {}

    private static List<Station> stations(Setting setting, RunResult result) {
        List<Station> all = new ArrayList<>();
        result.lines().forEach(line -> all.add(ofLine(line)));
        all.addAll(ofCrew(result));
        result.finishing().forEach(station -> all.add(ofStation("finishing", station)));
        result.quality().lab().forEach(station -> all.add(ofStation("lab", station)));
        double longest = all.stream()
                .mapToDouble(Station::meanActiveMin)
                .filter(mean -> !Double.isNaN(mean))
                .max()
                .orElse(Double.NaN);
        return all.stream()
                .map(station -> station.longest(station.meanActiveMin() == longest))
                .toList();
    }

    private static Station ofLine(LineResult line) {
        return new Station("line", line.line(), line.activeS(), line.activePeriods(), total(line.stateS()));
    }

    private static Station ofStation(String kind, StationResult station) {
        double activeS = station.stateS().entrySet().stream()
                .filter(entry -> entry.getKey().isActive())
                .mapToDouble(Map.Entry::getValue)
                .sum();
        return new Station(kind, station.station(), activeS, station.activePeriods(), total(station.stateS()));
    }

    private static List<Station> ofCrew(RunResult result) {
        Map<String, Station> roles = new LinkedHashMap<>();
        for (CrewResult crew : result.crew()) {
            Station shift = new Station("crew", crew.role(), crew.busyS(), crew.activePeriods(), crew.presentS());
            roles.merge(crew.role(), shift, Station::plus);
        }
        return List.copyOf(roles.values());
    }

    private static double total(Map<?, Double> seconds) {
        return seconds.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Something that can be active. */
    record Station(String kind, String name, double activeS, long periods, double totalS, boolean isLongest) {
        Station(String kind, String name, double activeS, long periods, double totalS) {
            this(kind, name, activeS, periods, totalS, false);
        }

        double meanActiveMin() {
            return activeS / 60 / periods;
        }

        Station plus(Station other) {
            return new Station(kind, name, activeS + other.activeS, periods + other.periods, totalS + other.totalS);
        }

        Station longest(boolean is) {
            return new Station(kind, name, activeS, periods, totalS, is);
        }
    }
}
