package spoolyard.analysis.buffer;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.StatUtils;
import spoolyard.analysis.experiment.Interval;

/**
 * Estimates a measure from replications: the ratio of its two means, with the interval of the ratio estimator.
 *
 * <p>Source: A. M. Law, Simulation Modeling and Analysis, 5th ed. 2015, section 9.5.3 (regenerative point estimator,
 * classical ratio interval): {@code r = sum(Y) / sum(B)}, and the half-width is Student's of the mean of {@code Y - r B},
 * over the mean of {@code B}.
 */
public final class LossMean {
    private LossMean() {}

    /**
     * Estimates it.
     *
     * @param measure which loss
     * @param losses one a replication
     * @param level confidence of the interval, in (0, 1)
     * @return the ratio with its interval; not a number where there is nothing to divide by
     */
    public static Interval of(LossMeasure measure, List<Loss> losses, double level) {
        double[] amount = losses.stream().mapToDouble(measure::amount).toArray();
        double[] base = losses.stream().mapToDouble(measure::base).toArray();
        double meanBase = StatUtils.mean(base);
        double ratio = StatUtils.mean(amount) / meanBase;
        int n = losses.size();
        if (n < 2 || Double.isNaN(ratio)) {
            return new Interval(ratio, OptionalDouble.empty(), level, Double.isNaN(ratio) ? 0 : n);
        }
        double[] rest = IntStream.range(0, n)
                .mapToDouble(i -> amount[i] - ratio * base[i])
                .toArray();
        double quantile = new TDistribution(n - 1).inverseCumulativeProbability(0.5 + level / 2);
        double halfWidth = quantile * Math.sqrt(StatUtils.variance(rest) / n) / meanBase;
        return new Interval(ratio, OptionalDouble.of(halfWidth), level, n);
    }
}
