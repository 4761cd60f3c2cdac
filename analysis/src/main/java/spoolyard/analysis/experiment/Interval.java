package spoolyard.analysis.experiment;

import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.StatUtils;

/**
 * A mean over independent replications and how sure it is. Immutable.
 *
 * <p>Student's t interval: {@code mean ± t(1 - (1 - level) / 2; n - 1) s / sqrt(n)}. Source: A. M. Law, Simulation
 * Modeling and Analysis, 5th ed. 2015, section 9.4.1 (fixed sample size procedure).
 *
 * @param mean mean over the replications that have a value; not a number if none has
 * @param halfWidth half the width of the interval, {@code >= 0}; empty with fewer than two values
 * @param level level of confidence, in (0, 1)
 * @param count number of replications that have a value
 */
public record Interval(double mean, OptionalDouble halfWidth, double level, int count) {
    /** The level used throughout the reports. */
    public static final double USUAL_LEVEL = 0.95;

    /**
     * Estimates a mean from one value a replication.
     *
     * @param values one value a replication; those that are not a number (an average of nothing) are left out
     * @param level level of confidence, in (0, 1)
     * @return mean and half-width
     * @throws IllegalArgumentException if the level is not between 0 and 1
     */
    public static Interval of(double[] values, double level) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("level = " + level + ". Must be between 0 and 1.");
        }
        double[] present =
                Arrays.stream(values).filter(value -> !Double.isNaN(value)).toArray();
        double mean = present.length == 0 ? Double.NaN : StatUtils.mean(present);
        return new Interval(mean, halfWidth(present, level), level, present.length);
    }

    /**
     * Whether any replication has a value.
     *
     * @return false if the mean is not a number
     */
    public boolean isPresent() {
        return count > 0;
    }

    /**
     * In another unit.
     *
     * @param factor what mean and half-width are multiplied by, {@code > 0}
     * @return the interval in the other unit
     */
    public Interval times(double factor) {
        OptionalDouble scaled =
                halfWidth.isPresent() ? OptionalDouble.of(halfWidth.getAsDouble() * factor) : OptionalDouble.empty();
        return new Interval(mean * factor, scaled, level, count);
    }

    /**
     * In words, for example {@code 12.5 +/- 0.4} or {@code 12.5, no interval (one replication)}.
     *
     * @return the text
     */
    @Override
    public String toString() {
        if (!isPresent()) {
            return "no value";
        }
        String text = String.format(Locale.ROOT, "%.6g", mean);
        return halfWidth.isPresent()
                ? text + String.format(Locale.ROOT, " +/- %.6g", halfWidth.getAsDouble())
                : text + ", no interval (one replication)";
    }

    private static OptionalDouble halfWidth(double[] values, double level) {
        int n = values.length;
        if (n < 2) {
            return OptionalDouble.empty();
        }
        double quantile = new TDistribution(n - 1).inverseCumulativeProbability(0.5 + level / 2);
        return OptionalDouble.of(quantile * Math.sqrt(StatUtils.variance(values) / n));
    }
}
