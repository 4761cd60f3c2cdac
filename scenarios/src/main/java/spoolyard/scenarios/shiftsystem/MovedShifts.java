package spoolyard.scenarios.shiftsystem;

import java.time.Duration;
import java.time.LocalTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spoolyard.scenarios.read.Node;

/**
 * Shifts whose times of day all move alike.
 *
 * @param shifts what stands under {@code shifts}; every start and end is an ISO time of day
 */
record MovedShifts(Node.Mapping shifts) {
    /**
     * Moves them.
     *
     * @param firstStart new start of the first shift of the pattern
     * @return the shifts with other starts and ends
     */
    Node.Mapping to(LocalTime firstStart) {
        Duration later = Duration.between(starts().get(0), firstStart);
        Map<String, Node> moved = new LinkedHashMap<>(pattern().entries());
        moved.replaceAll((name, shift) -> moved((Node.Mapping) shift, later));
        return with(shifts, "pattern", new Node.Mapping(pattern().origin(), moved));
    }

    /**
     * The latest start of the first shift at which all start on their day.
     *
     * @return a minute before the last would start at midnight
     */
    LocalTime latest() {
        Duration spread = Duration.between(starts().get(0), Collections.max(starts()));
        return LocalTime.of(23, 59).minus(spread);
    }

    private Node.Mapping pattern() {
        return (Node.Mapping) shifts.entries().get("pattern");
    }

    private List<LocalTime> starts() {
        return pattern().entries().values().stream()
                .map(shift -> time(((Node.Mapping) shift).entries().get("start")))
                .toList();
    }

    private static Node.Mapping moved(Node.Mapping shift, Duration later) {
        Node start = shift.entries().get("start");
        Node end = shift.entries().get("end");
        return with(with(shift, "start", moved(start, later)), "end", moved(end, later));
    }

    private static Node moved(Node time, Duration later) {
        return new Node.Text(time.origin(), time(time).plus(later).toString());
    }

    private static LocalTime time(Node node) {
        return LocalTime.parse(((Node.Text) node).text());
    }

    private static Node.Mapping with(Node.Mapping mapping, String key, Node value) {
        Map<String, Node> entries = new LinkedHashMap<>(mapping.entries());
        entries.put(key, value);
        return new Node.Mapping(mapping.origin(), entries);
    }
}
