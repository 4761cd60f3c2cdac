package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.Activity;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineState;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ServerState;
import spoolyard.core.record.StationResult;

/**
 * Where the bottleneck is, by the active periods of lines, roles, finishing stations, lab tests and dryers, with how long
 * each was starved or blocked. Rework of spools (sorting, winding anew, drying again) is left out: it stands beside the
 * flow, and a long cycle there holds nobody up.
 *
 * <p>Source: C. Roser, M. Nakano and M. Tanaka, "A practical bottleneck detection method", Winter Simulation Conference
 * 2001, and "Shifting bottleneck detection", Winter Simulation Conference 2002 (both from memory).
 */
final class BottleneckSheet {
    static final Column<Station> SHARE = percent("bottleneck_pct_of_time", Activity::bottleneckS);
    static final Column<Station> SOLE = percent("sole_bottleneck_pct_of_time", Activity::soleS);
    static final Column<Station> SHIFTING = percent("shifting_bottleneck_pct_of_time", Activity::shiftingS);
    static final Column<Station> FIRST_PCT =
            Column.amount("first_pct_of_replications", station -> station.isFirst() ? 100 : 0);
    static final Column<Station> MEAN_ACTIVE =
            Column.average("mean_active_min", station -> station.activity().meanActiveS() / 60);
    static final Column<Station> LONGEST =
            Column.amount("longest_active_min", station -> station.activity().longestS() / 60);
    static final Column<Station> ACTIVE_PCT = percent("active_pct_of_time", Activity::activeS);
    static final Column<Station> STARVED = Column.average("starved_pct_of_time", Station::starvedPct);
    static final Column<Station> BLOCKED = Column.average("blocked_pct_of_time", Station::blockedPct);

    static final Sheet<Station> SHEET = new Sheet<>(
            "bottleneck",
            List.of("kind", "station"),
            BottleneckSheet::stations,
            station -> List.of(
                    station.activity().kind().label(), station.activity().name()),
            List.of(SHARE, SOLE, SHIFTING, FIRST_PCT, MEAN_ACTIVE, LONGEST, ACTIVE_PCT, STARVED, BLOCKED));

    private static final Set<LineState> STARVED_LINE = Set.of(LineState.NO_ORDER, LineState.WAITING_FOR_MATERIAL);

    private BottleneckSheet() {}

    /** Seconds of a station's activity. */
    private interface Part {
        double seconds(Activity activity);
    }

    private static Column<Station> percent(String name, Part part) {
        return Column.average(name, station -> 100 * part.seconds(station.activity()) / station.horizonS());
    }

    private static List<Station> stations(Setting setting, RunResult result) {
        double horizonS = Ticks.toSeconds(result.horizonTicks());
        double longest = result.activity().stream()
                .mapToDouble(Activity::bottleneckS)
                .max()
                .orElse(0);
        List<Station> all = new ArrayList<>();
        for (Activity activity : result.activity()) {
            boolean isFirst = longest > 0 && activity.bottleneckS() == longest;
            all.add(new Station(activity, horizonS, isFirst, standing(setting, result, activity)));
        }
        return all;
    }

    private static Standing standing(Setting setting, RunResult result, Activity activity) {
        return switch (activity.kind()) {
            case LINE ->
                result.lines().stream()
                        .filter(line -> line.line().equals(activity.name()))
                        .map(line -> ofLine(setting, line))
                        .findFirst()
                        .orElse(Standing.UNKNOWN);
            case FINISHING -> ofStation(result.finishing(), activity.name());
            case LAB -> ofStation(result.quality().lab(), activity.name());
            case CREW, DRYER -> Standing.UNKNOWN;
        };
    }

    /** A line is blocked by the share of its strands that wait with a full spool for room in the rack. */
    private static Standing ofLine(Setting setting, LineResult line) {
        int strands = setting.plant().lines().stream()
                .filter(each -> each.name().equals(line.line()))
                .mapToInt(each -> each.strands())
                .findFirst()
                .orElse(1);
        double starvedS = STARVED_LINE.stream()
                .mapToDouble(state -> line.stateS().get(state))
                .sum();
        return new Standing(starvedS, line.blockedS() / strands, total(line.stateS()));
    }

    private static Standing ofStation(List<StationResult> stations, String name) {
        Optional<StationResult> found = stations.stream()
                .filter(station -> station.station().equals(name))
                .findFirst();
        return found.map(station -> new Standing(
                        station.stateS().get(ServerState.STARVED),
                        station.stateS().get(ServerState.BLOCKED),
                        total(station.stateS())))
                .orElse(Standing.UNKNOWN);
    }

    private static double total(Map<?, Double> seconds) {
        return seconds.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Time in which a station had nothing to work on, or nowhere to put it. */
    private record Standing(double starvedS, double blockedS, double totalS) {
        static final Standing UNKNOWN = new Standing(Double.NaN, Double.NaN, 1);
    }

    /** Something that can be active. */
    record Station(Activity activity, double horizonS, boolean isFirst, Standing standing) {
        double starvedPct() {
            return 100 * standing.starvedS() / standing.totalS();
        }

        double blockedPct() {
            return 100 * standing.blockedS() / standing.totalS();
        }
    }
}
