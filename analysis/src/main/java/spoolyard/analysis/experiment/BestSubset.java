package spoolyard.analysis.experiment;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
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
     * @param values shape {@code [system][replication]}, as many of each, the replications with common random numbers; a system that lacks a
     *     value is left out
     * @param isMoreBetter whether the largest mean is the best; false if the least
     * @param level confidence, in (0, 1)
     * @return those that stay; all of them with fewer than two replications
     */
    public static BestSubset of(double[][] values, boolean isMoreBetter, double level) {
        int[] whole = IntStream.range(0, values.length)
                .filter(i -> values[i].length > 0 && Arrays.stream(values[i]).noneMatch(Double::isNaN))
                .toArray();
        double[] means = Arrays.stream(values).mapToDouble(StatUtils::mean).toArray();
        double sign = isMoreBetter ? 1 : -1;
        List<Integer> bestFirst = Arrays.stream(whole)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -sign * means[i]))
                .toList();
        if (bestFirst.isEmpty()) {
            return new BestSubset(-1, List.of(), level);
        }
        int n = values[bestFirst.get(0)].length;
        double t = quantile(n, (1 - level) / Math.max(1, whole.length - 1));
        List<Integer> members = IntStream.range(0, bestFirst.size())
                .filter(place -> bestFirst.subList(0, place).stream()
                        .noneMatch(better -> isBeaten(values[bestFirst.get(place)], values[better], t)))
                .mapToObj(bestFirst::get)
                .sorted()
                .toList();
        return new BestSubset(bestFirst.get(0), members, level);
    }

    /** Infinite where nothing is known of the variance. */
    private static double quantile(int n, double tail) {
        return n < 2 ? Double.POSITIVE_INFINITY : new TDistribution(n - 1).inverseCumulativeProbability(1 - tail);
    }

    /** Whether the other, whose mean is better, is so by more than the bound. */
    private static boolean isBeaten(double[] one, double[] other, double t) {
        int n = one.length;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += other[i] - one[i];
        }
        double mean = sum / n;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double deviation = other[i] - one[i] - mean;
            squares += deviation * deviation;
        }
        return n > 1 && Math.abs(mean) > t * Math.sqrt(squares / (n - 1) / n);
    }
}
