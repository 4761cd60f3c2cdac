package spoolyard.analysis.experiment;

import java.util.stream.IntStream;
import org.hipparchus.stat.StatUtils;

/**
 * How an alternative differs from a base in one number, by replications with common random numbers. Immutable.
 *
 * <p>The paired t interval: Student's t interval of the differences, replication by replication. It needs no equal
 * variances and no independence of the two. Source: A. M. Law, Simulation Modeling and Analysis, 5th ed. 2015, section
 * 10.2.1.
 *
 * @param baseMean mean of the base over the replications in which both have a value; not a number if there is none
 * @param mean mean of the alternative over the same replications
 * @param interval the alternative less the base
 * @param varianceRatio variance that the difference of independent runs would have, over the variance it has; above 1
 *     the common numbers helped; not a number where the difference never varies or there are fewer than two replications
 */
public record Difference(double baseMean, double mean, Interval interval, double varianceRatio) {
    /** Deviations below this share of the values are the rounding of sums. */
    private static final double ROUNDING = 1e-12;

    /** What can be said. */
    public enum Verdict {
        /** The whole interval is above 0. */
        MORE,
        /** The whole interval is below 0. */
        LESS,
        /** No replication shows any difference. */
        SAME,
        /** The interval holds 0: the data cannot tell. */
        OPEN
    }

    /**
     * Compares two samples.
     *
     * @param base one value a replication; not a number where there is none
     * @param alternative the same replications of the alternative
     * @param level level of confidence, in (0, 1)
     * @return the difference, over the replications in which both have a value
     * @throws IllegalArgumentException if the samples differ in length
     */
    public static Difference of(double[] base, double[] alternative, double level) {
        if (base.length != alternative.length) {
            throw new IllegalArgumentException(
                    "replications = " + base.length + " and " + alternative.length + ". Must be as many of both.");
        }
        int[] both = IntStream.range(0, base.length)
                .filter(i -> !Double.isNaN(base[i]) && !Double.isNaN(alternative[i]))
                .toArray();
        double[] first = IntStream.of(both).mapToDouble(i -> base[i]).toArray();
        double[] second = IntStream.of(both).mapToDouble(i -> alternative[i]).toArray();
        double[] differences =
                IntStream.of(both).mapToDouble(i -> alternative[i] - base[i]).toArray();
        return new Difference(
                StatUtils.mean(first),
                StatUtils.mean(second),
                interval(differences, largest(first, second), level),
                ratio(first, second, differences));
    }

    /**
     * Lower end.
     *
     * @return not a number without an interval
     */
    public double low() {
        return interval.mean() - interval.halfWidth().orElse(Double.NaN);
    }

    /**
     * Upper end.
     *
     * @return not a number without an interval
     */
    public double high() {
        return interval.mean() + interval.halfWidth().orElse(Double.NaN);
    }

    /**
     * What can be said.
     *
     * @return {@link Verdict#OPEN} also where there is no interval
     */
    public Verdict verdict() {
        if (low() > 0) {
            return Verdict.MORE;
        }
        if (high() < 0) {
            return Verdict.LESS;
        }
        return low() == 0 && high() == 0 ? Verdict.SAME : Verdict.OPEN;
    }

    /** Rounding counts as no variation, so that what is the same in every replication is seen to be. */
    private static Interval interval(double[] differences, double size, double level) {
        boolean isRounding = differences.length > 1 && Math.sqrt(StatUtils.variance(differences)) <= ROUNDING * size;
        if (!isRounding) {
            return Interval.of(differences, level);
        }
        double mean = Math.abs(StatUtils.mean(differences)) <= ROUNDING * size ? 0 : differences[0];
        return Interval.of(
                IntStream.range(0, differences.length).mapToDouble(i -> mean).toArray(), level);
    }

    private static double ratio(double[] first, double[] second, double[] differences) {
        double varies = StatUtils.variance(differences);
        boolean isRounding = Math.sqrt(varies) <= ROUNDING * largest(first, second);
        return differences.length < 2 || isRounding
                ? Double.NaN
                : (StatUtils.variance(first) + StatUtils.variance(second)) / varies;
    }

    private static double largest(double[] first, double[] second) {
        return IntStream.range(0, first.length)
                .mapToDouble(i -> Math.max(Math.abs(first[i]), Math.abs(second[i])))
                .max()
                .orElse(0);
    }
}
