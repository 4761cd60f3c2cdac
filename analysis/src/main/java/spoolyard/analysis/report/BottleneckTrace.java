package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.Activity;
import spoolyard.core.record.Turn;

/**
 * The bottleneck of one replication over time. Immutable.
 *
 * @param stations those that were the bottleneck at any time, the longest first
 */
record BottleneckTrace(List<Activity> stations) {
    /** Name of its file. */
    static final String FILE = "bottleneck_over_time.csv";

    private static final List<String> HEADER =
            List.of("kind", "station", "bottleneck", "start_local", "end_local", "start_h", "length_h");

    /**
     * The trace of a replication.
     *
     * @param activity what it told, in any order
     * @return the trace
     */
    static BottleneckTrace of(List<Activity> activity) {
        return new BottleneckTrace(activity.stream()
                .filter(station -> !station.turns().isEmpty())
                .sorted(Comparator.comparingDouble(Activity::bottleneckS).reversed())
                .toList());
    }

    /**
     * A time in which a station was the bottleneck, alone or with the one before or after it.
     *
     * @param station which
     * @param isSole whether alone
     * @param startTick begin, ticks since the start of the run
     * @param endTick end
     */
    record Stretch(Activity station, boolean isSole, long startTick, long endTick) {
        private List<String> row(PlantClock clock) {
            return List.of(
                    station.kind().label(),
                    station.name(),
                    isSole ? "sole" : "shifting",
                    clock.millisecond(startTick),
                    clock.millisecond(endTick),
                    Figures.cell(Ticks.toHours(startTick)),
                    Figures.cell(Ticks.toHours(endTick - startTick)));
        }
    }

    /**
     * The stretches of a station.
     *
     * @param station which
     * @return in the order of time, none of them empty
     */
    static List<Stretch> stretches(Activity station) {
        return station.turns().stream()
                .flatMap(turn -> parts(station, turn))
                .filter(part -> part.endTick() > part.startTick())
                .toList();
    }

    private static Stream<Stretch> parts(Activity station, Turn turn) {
        return Stream.of(
                new Stretch(station, false, turn.startTick(), turn.soleStartTick()),
                new Stretch(station, true, turn.soleStartTick(), turn.soleEndTick()),
                new Stretch(station, false, turn.soleEndTick(), turn.endTick()));
    }

    /**
     * The trace as a table.
     *
     * @param clock shows instants
     * @return header and rows of text, in the order of time
     */
    List<List<String>> table(PlantClock clock) {
        List<List<String>> rows = stations.stream()
                .flatMap(station -> stretches(station).stream())
                .sorted(Comparator.comparingLong(Stretch::startTick).thenComparingLong(Stretch::endTick))
                .map(stretch -> stretch.row(clock))
                .collect(Collectors.toCollection(ArrayList::new));
        rows.add(0, HEADER);
        return rows;
    }
}
