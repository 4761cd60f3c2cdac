package spoolyard.analysis.experiment;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.hipparchus.stat.StatUtils;
import spoolyard.core.random.Streams;
import spoolyard.core.random.Uniforms;

/**
 * What the elementary effects of a factor come to. Immutable.
 *
 * <p>Sources: mean and standard deviation, M. D. Morris, Technometrics 33 (1991) 161-174; mean of the absolute values, F.
 * Campolongo, J. Cariboni and A. Saltelli, An effective screening design for sensitivity analysis of large models,
 * Environmental Modelling and Software 22 (2007) 1509-1518.
 *
 * @param mean of the effects, with their sign
 * @param size mean of their absolute values
 * @param spread their standard deviation: large where the effect depends on its own level or on other factors
 */
public record ElementaryEffects(double mean, Range size, Range spread) {
    private static final int RESAMPLES = 2000;

    /**
     * A figure with a bootstrap interval.
     *
     * @param value the figure
     * @param low lower end
     * @param high upper end
     */
    public record Range(double value, double low, double high) {}

    /**
     * Sums up effects.
     *
     * @param effects one a walk, two or more
     * @param level of each interval by itself, in (0, 1): percentiles over {@value #RESAMPLES} samples of as many walks,
     *     drawn with putting back
     * @param seed any value; the same gives the same intervals
     * @return the figures; not numbers if an effect is none
     */
    public static ElementaryEffects of(double[] effects, double level, long seed) {
        double[][] samples = samples(effects, new Streams(seed, 0).uniforms("bootstrap"));
        return new ElementaryEffects(
                StatUtils.mean(effects),
                range(effects, samples, level, ElementaryEffects::meanSize),
                range(effects, samples, level, values -> Math.sqrt(StatUtils.variance(values))));
    }

    private static double meanSize(double[] effects) {
        return Arrays.stream(effects).map(Math::abs).average().orElse(Double.NaN);
    }

    private static double[][] samples(double[] effects, Uniforms uniforms) {
        return IntStream.range(0, RESAMPLES)
                .mapToObj(sample -> IntStream.range(0, effects.length)
                        .mapToDouble(i -> effects[(int) (effects.length * uniforms.next())])
                        .toArray())
                .toArray(double[][]::new);
    }

    private static Range range(double[] effects, double[][] samples, double level, ToDoubleFunction<double[]> figure) {
        double[] sorted = Arrays.stream(samples).mapToDouble(figure).sorted().toArray();
        int beyond = (int) Math.floor(RESAMPLES * (1 - level) / 2);
        return new Range(figure.applyAsDouble(effects), sorted[beyond], sorted[RESAMPLES - 1 - beyond]);
    }
}
