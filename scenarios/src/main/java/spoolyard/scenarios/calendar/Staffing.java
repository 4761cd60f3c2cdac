package spoolyard.scenarios.calendar;

import java.util.List;
import spoolyard.core.plant.Break;

/**
 * Who is there in a shift, and how they work. Immutable.
 *
 * @param heads people by role, in the order of the crew's roles
 * @param breaks the breaks
 * @param handOverTicks time in which the incoming crew is briefed, ticks
 * @param handOverOverlaps true: before the start; false: the first part of the shift
 * @param pace factor on every attended time
 * @param lines names of the lines that run
 * @param payFactor pay for an hour as a multiple of the usual
 */
public record Staffing(
        List<Integer> heads,
        List<Break> breaks,
        long handOverTicks,
        boolean handOverOverlaps,
        double pace,
        List<String> lines,
        double payFactor) {
    /** Copies the lists. */
    public Staffing {
        heads = List.copyOf(heads);
        breaks = List.copyOf(breaks);
        lines = List.copyOf(lines);
    }

    /**
     * A shift at the usual pay.
     *
     * @param heads as above
     * @param breaks as above
     * @param handOverTicks as above
     * @param handOverOverlaps as above
     * @param pace as above
     * @param lines as above
     */
    public Staffing(
            List<Integer> heads,
            List<Break> breaks,
            long handOverTicks,
            boolean handOverOverlaps,
            double pace,
            List<String> lines) {
        this(heads, breaks, handOverTicks, handOverOverlaps, pace, lines, 1);
    }
}
