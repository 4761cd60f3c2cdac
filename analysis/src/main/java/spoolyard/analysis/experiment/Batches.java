package spoolyard.analysis.experiment;

import java.util.stream.IntStream;
import org.hipparchus.stat.StatUtils;

/**
 * Non-overlapping batch means: the interval of a steady-state mean from one long run, cut into batches so long that their
 * means hardly depend on each other. Immutable.
 *
 * <p>Source: A. M. Law, Simulation Modeling and Analysis, 5th ed. 2015, section 9.5.3. Batches that are too short give
 * intervals that are too narrow; {@link #lagOne} near 0 is a sign that they are long enough.
 *
 * @param interval Student's t interval over the batch means
 * @param lagOne correlation of neighbouring batch means, in [-1, 1]; not a number where they never vary
 */
public record Batches(Interval interval, double lagOne) {
    /**
     * Estimates the mean.
     *
     * @param series values in order of time
     * @param cut values left out at the beginning
     * @param batches number of batches, {@code >= 2}; 10 to 30 are usual
     * @param level level of confidence, in (0, 1)
     * @return interval and correlation; values beyond the last whole batch are left out
     * @throws IllegalArgumentException if there are fewer values than batches after the cut
     */
    public static Batches of(double[] series, int cut, int batches, double level) {
        int size = (series.length - cut) / Math.max(1, batches);
        if (batches < 2 || size < 1) {
            throw new IllegalArgumentException("values = " + series.length + ", cut = " + cut + ", batches = " + batches
                    + ". Must be at least two batches of one value.");
        }
        double[] means = means(series, cut, size);
        double[] kept = IntStream.range(0, batches).mapToDouble(i -> means[i]).toArray();
        return new Batches(Interval.of(kept, level), lagOne(kept));
    }

    /**
     * Means of whole batches.
     *
     * @param series values in order of time
     * @param cut values left out at the beginning
     * @param size values to a batch
     * @return one a batch, in order
     */
    static double[] means(double[] series, int cut, int size) {
        return IntStream.range(0, (series.length - cut) / size)
                .mapToDouble(batch -> StatUtils.mean(series, cut + batch * size, size))
                .toArray();
    }

    private static double lagOne(double[] means) {
        double centre = StatUtils.mean(means);
        double products = IntStream.range(1, means.length)
                .mapToDouble(i -> (means[i] - centre) * (means[i - 1] - centre))
                .sum();
        double squares = IntStream.range(0, means.length)
                .mapToDouble(i -> (means[i] - centre) * (means[i] - centre))
                .sum();
        return products / squares;
    }
}
