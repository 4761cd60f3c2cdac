package spoolyard.core.record;

import spoolyard.core.quantity.Ticks;

/**
 * One active period in which a station was the bottleneck: alone from {@code soleStartTick} to {@code soleEndTick}, and
 * while the bottleneck shifted to it before and from it after. Immutable.
 *
 * @param startTick begin of the period, ticks since the start of the run
 * @param soleStartTick when the station before it ended; {@code startTick} if none overlapped
 * @param soleEndTick when the station after it began; {@code endTick} if none overlaps; never before {@code soleStartTick}
 * @param endTick end of the period
 */
public record Turn(long startTick, long soleStartTick, long soleEndTick, long endTick) {
    /** Checks the order of the instants. */
    public Turn {
        if (startTick > soleStartTick || soleStartTick > soleEndTick || soleEndTick > endTick) {
            throw new IllegalArgumentException("a turn from " + startTick + " to " + endTick + " is alone from "
                    + soleStartTick + " to " + soleEndTick + "; must be in this order");
        }
    }

    /**
     * Time alone.
     *
     * @return seconds
     */
    public double soleS() {
        return Ticks.toSeconds(soleEndTick - soleStartTick);
    }

    /**
     * Time in which the bottleneck shifted.
     *
     * @return seconds
     */
    public double shiftingS() {
        return Ticks.toSeconds(soleStartTick - startTick + endTick - soleEndTick);
    }
}
