package spoolyard.analysis.buffer;

import java.util.Arrays;
import java.util.List;
import spoolyard.analysis.buffer.SwapStudy.SeenSwap;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.Swap;

/**
 * How long full spools waited until the work on them began, all replications together. Immutable.
 *
 * @param sortedS waits, ascending, seconds
 */
public record SwapWaits(double... sortedS) {
    /** Copies and sorts. */
    public SwapWaits {
        sortedS = sortedS.clone();
        Arrays.sort(sortedS);
    }

    /**
     * Of swaps that were begun.
     *
     * @param swaps any swaps
     * @return their waits
     */
    public static SwapWaits of(List<SeenSwap> swaps) {
        return new SwapWaits(swaps.stream()
                .map(SeenSwap::swap)
                .filter(swap -> swap.begunTick() != Ticks.NEVER)
                .mapToDouble(SwapWaits::waitS)
                .toArray());
    }

    /**
     * Wait of a swap.
     *
     * @param swap one that was begun
     * @return seconds
     */
    public static double waitS(Swap swap) {
        return Ticks.toSeconds(swap.begunTick() - swap.fullTick());
    }

    /** A copy. */
    @Override
    public double[] sortedS() {
        return sortedS.clone();
    }

    /**
     * How many.
     *
     * @return count
     */
    public int count() {
        return sortedS.length;
    }

    /**
     * The time within which a share of the spools was served: the smallest wait that at least that share did not exceed.
     *
     * @param share in (0, 1]
     * @return seconds; not a number without waits
     */
    public double quantileS(double share) {
        return sortedS.length == 0
                ? Double.NaN
                : sortedS[Math.max(0, (int) Math.ceil(share * sortedS.length - 1e-9) - 1)];
    }

    /**
     * Share that waited longer.
     *
     * @param seconds a wait
     * @return in [0, 1]; not a number without waits
     */
    public double shareAbove(double seconds) {
        return Arrays.stream(sortedS).filter(wait -> wait > seconds).count() / (double) sortedS.length;
    }

    /**
     * Mean wait.
     *
     * @return seconds; not a number without waits
     */
    public double meanS() {
        return Arrays.stream(sortedS).average().orElse(Double.NaN);
    }
}
