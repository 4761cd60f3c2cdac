package spoolyard.core.plant;

import java.util.List;

/**
 * One shift on one day, resolved to instants. Immutable.
 *
 * @param name name of the shift in the pattern, for example {@code D}
 * @param startTick begin, ticks since the start of the run
 * @param endTick end, {@code > startTick}; a wall-clock shift over a clock change is longer or shorter than usual
 * @param heads people present, in the order of {@link Crew#roles()}
 * @param breaks the breaks
 * @param handOverTicks at the beginning, time in which the incoming crew is briefed
 * @param handOverOverlaps true: the briefing is before the start, paid on top, and costs no cover; false: the first
 *     {@code handOverTicks} of the shift are lost to the lines
 * @param pace factor on every attended time, 1 is normal, {@code > 0}
 * @param payFactor pay for an hour as a multiple of the usual, {@code >= 0}: 1.25 with a premium of a quarter
 */
public record Shift(
        String name,
        long startTick,
        long endTick,
        List<Integer> heads,
        List<Break> breaks,
        long handOverTicks,
        boolean handOverOverlaps,
        double pace,
        double payFactor) {
    /** Copies the lists. */
    public Shift {
        heads = List.copyOf(heads);
        breaks = List.copyOf(breaks);
    }

    /**
     * A shift at the usual pay.
     *
     * @param name as above
     * @param startTick as above
     * @param endTick as above
     * @param heads as above
     * @param breaks as above
     * @param handOverTicks as above
     * @param handOverOverlaps as above
     * @param pace as above
     */
    public Shift(
            String name,
            long startTick,
            long endTick,
            List<Integer> heads,
            List<Break> breaks,
            long handOverTicks,
            boolean handOverOverlaps,
            double pace) {
        this(name, startTick, endTick, heads, breaks, handOverTicks, handOverOverlaps, pace, 1);
    }
}
