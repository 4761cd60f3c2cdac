package spoolyard.core.activity;

import java.util.ArrayList;
import java.util.List;
import spoolyard.core.record.Turn;

/**
 * The bottleneck over time. At the beginning it is the active station with the longest active period; when that period
 * ends, the station that is active then and has the longest active period takes over. Where two that follow each other
 * overlap, the bottleneck shifts; for the rest of its period a station is the sole bottleneck.
 *
 * <p>Source: C. Roser, M. Nakano and M. Tanaka, "Shifting bottleneck detection", Winter Simulation Conference 2002 (from
 * memory).
 */
final class BottleneckChain {
    private final Skyline periods;
    private final List<List<Turn>> turns = new ArrayList<>();

    BottleneckChain(Skyline periods, int stations) {
        this.periods = periods;
        for (int station = 0; station < stations; station++) {
            turns.add(new ArrayList<>());
        }
        follow();
    }

    List<Turn> turns(int station) {
        return turns.get(station);
    }

    private void follow() {
        int current = longestAfter(-1);
        long endBefore = 0;
        while (current < periods.size()) {
            int next = longestAfter(current);
            long start = periods.start(current);
            long end = periods.end(current);
            long soleStart = Math.max(start, endBefore);
            long soleEnd = next < periods.size() ? Math.min(end, Math.max(soleStart, periods.start(next))) : end;
            turns.get(periods.owner(current)).add(new Turn(start, soleStart, soleEnd, end));
            endBefore = end;
            current = next;
        }
    }

    /** The longest of the periods that go on when the present one ends; or of those that begin next; or none. */
    private int longestAfter(int current) {
        int first = current + 1;
        if (first == periods.size()) {
            return first;
        }
        long from = current < 0 ? periods.start(first) : Math.max(periods.end(current), periods.start(first));
        int longest = first;
        for (int i = first; i < periods.size() && periods.start(i) <= from; i++) {
            longest = periods.length(i) > periods.length(longest) ? i : longest;
        }
        return longest;
    }
}
