package spoolyard.analysis.theory;

import spoolyard.core.plant.Law;

/**
 * What an accumulator loses in a spool swap: one strand that never stops, a person always at hand, the accumulator home
 * before each swap. Immutable.
 *
 * <p>Source: the accumulator rises at the line's speed v for the time S the winder stands, so it overflows if S &gt; C/v,
 * and then loses v (S - C/v) metres. The means are partial expectations of the law of S, see {@link Tail}.
 *
 * @param swapTimeS law of the time the winder stands, seconds
 * @param roomM room of the accumulator above its home, C, metres, {@code >= 0}
 * @param lineSpeedMPerS speed of the line, v, m/s, {@code > 0}
 */
public record SwapOverflow(Law swapTimeS, double roomM, double lineSpeedMPerS) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if an argument is out of range
     */
    public SwapOverflow {
        Ranges.notNegative("roomM", roomM);
        Ranges.positive("lineSpeedMPerS", lineSpeedMPerS);
    }

    /**
     * Longest swap that loses nothing.
     *
     * @return C / v, seconds
     */
    public double graceS() {
        return roomM / lineSpeedMPerS;
    }

    /**
     * Share of swaps in which the accumulator overflows.
     *
     * @return P(S &gt; C/v), in [0, 1]
     */
    public double probability() {
        return Tail.of(swapTimeS).probabilityAbove(graceS());
    }

    /**
     * Mean metres lost a swap, those that lose nothing included.
     *
     * @return v E[(S - C/v)<sup>+</sup>], metres
     */
    public double meanLossM() {
        return lineSpeedMPerS * Tail.of(swapTimeS).meanExcess(graceS());
    }
}
