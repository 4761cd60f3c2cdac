package spoolyard.analysis.experiment;

import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.stat.StatUtils;

/**
 * Looks at a transient over several replications, and estimates a steady-state mean without it. Stateless.
 *
 * <p>Source: P. D. Welch, The statistical analysis of simulation results, in S. S. Lavenberg (ed.), Computer Performance
 * Modeling Handbook, 1983; A. M. Law, Simulation Modeling and Analysis, 5th ed. 2015, sections 9.5.1 and 9.5.2.
 */
public final class Welch {
    private Welch() {}

    /**
     * The average of the replications.
     *
     * @param replications series of equal length, at least one
     * @return shape {@code double[values]}
     * @throws IllegalArgumentException if they differ in length or there is none
     */
    public static double[] average(List<double[]> replications) {
        if (replications.isEmpty()
                || replications.stream().anyMatch(each -> each.length != replications.get(0).length)) {
            throw new IllegalArgumentException("replications must be at least one, all of the same length.");
        }
        return IntStream.range(0, replications.get(0).length)
                .mapToDouble(i -> replications.stream()
                        .mapToDouble(each -> each[i])
                        .average()
                        .orElseThrow())
                .toArray();
    }

    /**
     * The moving average of a series: over {@code 2 window + 1} values, and near the beginning over as many as there are on
     * both sides.
     *
     * @param series values in order of time
     * @param window values on each side, {@code >= 0} and below half the length
     * @return as long as the series less the window
     * @throws IllegalArgumentException if the window is out of range
     */
    public static double[] smooth(double[] series, int window) {
        if (window < 0 || 2 * window >= series.length) {
            throw new IllegalArgumentException(
                    "window = " + window + ". Must be >= 0 and below half of " + series.length + " values.");
        }
        return IntStream.range(0, series.length - window)
                .mapToDouble(i -> {
                    int each = Math.min(i, window);
                    return StatUtils.mean(series, i - each, 2 * each + 1);
                })
                .toArray();
    }

    /**
     * The steady-state mean by replication and deletion: of each replication the mean of what is left.
     *
     * @param replications series, each longer than the cut
     * @param cut values left out at the beginning of each, {@code >= 0}
     * @param level level of confidence, in (0, 1)
     * @return Student's t interval over the replications
     * @throws IllegalArgumentException if a series is not longer than the cut
     */
    public static Interval deleted(List<double[]> replications, int cut, double level) {
        if (cut < 0 || replications.stream().anyMatch(each -> each.length <= cut)) {
            throw new IllegalArgumentException("cut = " + cut + ". Must be >= 0 and below the length of each series.");
        }
        return Interval.of(
                replications.stream()
                        .mapToDouble(each -> StatUtils.mean(each, cut, each.length - cut))
                        .toArray(),
                level);
    }
}
