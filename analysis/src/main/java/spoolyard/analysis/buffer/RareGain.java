package spoolyard.analysis.buffer;

import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.stat.StatUtils;

/**
 * What it gained to expect overflows rather than to count them, at a capacity. Immutable.
 *
 * @param swaps spool changes of all replications
 * @param seen overflows that happened in them
 * @param countedSwaps of the changes, those that had to be counted
 * @param varianceRatio variance of the number counted over that of the number expected; infinite where the latter never
 *     varies; not a number where neither can overflow
 * @param isMeasured whether the variance of the number counted was measured; else, with too few seen, it is that of
 *     Poisson's law with the mean expected
 */
public record RareGain(double swaps, double seen, double countedSwaps, double varianceRatio, boolean isMeasured) {
    private static final double ENOUGH = 20;

    /**
     * Of replications.
     *
     * @param losses at least two, of which overflows were expected
     * @return the gain
     */
    public static RareGain of(List<Loss> losses) {
        double[] swaps = losses.stream().mapToDouble(Loss::swaps).toArray();
        double[] expected = losses.stream().mapToDouble(Loss::overflows).toArray();
        double[] seen = losses.stream().mapToDouble(Loss::seenOverflows).toArray();
        boolean isMeasured = StatUtils.sum(seen) >= ENOUGH;
        double counting = isMeasured ? variance(seen, swaps) : StatUtils.mean(expected);
        return new RareGain(
                StatUtils.sum(swaps),
                StatUtils.sum(seen),
                losses.stream().mapToDouble(loss -> loss.counted().swaps()).sum(),
                counting / variance(expected, swaps),
                isMeasured);
    }

    /** Of the number less its mean for as many swaps, as the interval of a ratio has it. */
    private static double variance(double[] number, double... swaps) {
        double share = StatUtils.sum(number) / StatUtils.sum(swaps);
        double[] rest = IntStream.range(0, number.length)
                .mapToDouble(i -> number[i] - share * swaps[i])
                .toArray();
        double variance = StatUtils.variance(rest);
        double rounding = 1e-12 * StatUtils.mean(number);
        return Math.sqrt(variance) <= rounding ? 0 : variance;
    }
}
