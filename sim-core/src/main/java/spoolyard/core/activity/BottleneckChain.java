package spoolyard.core.activity;

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
    private final long[] soleTicks;
    private final long[] shiftingTicks;

    BottleneckChain(Skyline periods, int stations) {
        this.periods = periods;
        this.soleTicks = new long[stations];
        this.shiftingTicks = new long[stations];
        follow();
    }

    long soleTicks(int station) {
        return soleTicks[station];
    }

    long shiftingTicks(int station) {
        return shiftingTicks[station];
    }

    private void follow() {
        int current = longestAfter(-1);
        long overlapBefore = 0;
        while (current < periods.size()) {
            int next = longestAfter(current);
            long overlapAfter = next < periods.size() ? Math.max(0, periods.end(current) - periods.start(next)) : 0;
            long shifting = Math.min(periods.length(current), overlapBefore + overlapAfter);
            shiftingTicks[periods.owner(current)] += shifting;
            soleTicks[periods.owner(current)] += periods.length(current) - shifting;
            overlapBefore = overlapAfter;
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
