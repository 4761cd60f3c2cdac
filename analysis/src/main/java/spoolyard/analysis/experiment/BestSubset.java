package spoolyard.analysis.experiment;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.StatUtils;

/**
 * The systems that the data cannot tell from the best. Immutable.
 *
 * <p>A system stays unless another is better by more than the one-sided paired t bound of their difference at level {@code
 * 1 - (1 - level) / (k - 1)}. The best of the {@code k} systems is then among those that stay with probability {@code >=
 * level}: it could go only by losing to one of {@code k - 1} others, each with a chance of {@code (1 - level) / (k - 1)}
 * at most. Holds with common random numbers and unequal variances, for normal differences. Source: the screening of B. L.
 * Nelson, J. Swann, D. Goldsman and W. Song, Simple procedures for selecting the best simulated system when the number of
 * alternatives is large, Operations Research 49 (2001) 950-963, with Bonferroni's inequality for paired samples.
 *
 * @param best number of the system with the best mean; -1 if no system has values
 * @param members numbers of the systems that stay, ascending, the best among them
 * @param level confidence that the truly best is a member
 */
public record BestSubset(int best, List<Integer> members, double level) {
    /** Copies the list. */
    public BestSubset {
        members = List.copyOf(members);
    }

    /**
     * Screens systems.
     *
     * @param values shape {@code [system][replication]}, the replications with common random numbers; a system that lacks a
     *     value is left out
     * @param isMoreBetter whether the largest mean is the best; false if the least
     * @param level confidence, in (0, 1)
     * @return those that stay; all of them with fewer than two replications
     */
    public static BestSubset of(double[][] values, boolean isMoreBetter, double level) {
        int[] whole = IntStream.range(0, values.length)
                .filter(i -> values[i].length > 0 && Arrays.stream(values[i]).noneMatch(Double::isNaN))
                .toArray();
        double sign = isMoreBetter ? 1 : -1;
        int best = -1;
        for (int i : whole) {
            best = best < 0 || sign * StatUtils.mean(values[i]) > sign * StatUtils.mean(values[best]) ? i : best;
        }
        Map<Integer, Double> quantiles = new HashMap<>();
        double tail = (1 - level) / Math.max(1, whole.length - 1);
        List<Integer> members = Arrays.stream(whole)
                .filter(i -> Arrays.stream(whole).noneMatch(j -> isBeaten(values[i], values[j], sign, tail, quantiles)))
                .boxed()
                .toList();
        return new BestSubset(best, members, level);
    }

    private static boolean isBeaten(
            double[] one, double[] other, double sign, double tail, Map<Integer, Double> quantiles) {
        int n = one.length;
        if (n < 2) {
            return false;
        }
        double[] ahead = IntStream.range(0, n)
                .mapToDouble(r -> sign * (other[r] - one[r]))
                .toArray();
        double t = quantiles.computeIfAbsent(
                n, count -> new TDistribution(count - 1).inverseCumulativeProbability(1 - tail));
        return StatUtils.mean(ahead) > t * Math.sqrt(StatUtils.variance(ahead) / n);
    }
}
