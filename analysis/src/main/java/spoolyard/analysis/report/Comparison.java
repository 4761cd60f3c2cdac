package spoolyard.analysis.report;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import spoolyard.analysis.experiment.Difference;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.experiment.Simultaneous;
import spoolyard.analysis.experiment.Width;

/**
 * What an experiment says about alternatives to a base: the difference in every measure, with intervals that all hold at
 * once. Immutable.
 */
public final class Comparison {
    /** Most alternatives beside the base: as many as there are letters. */
    public static final int MOST_ALTERNATIVES = 25;

    private final List<Alternative> plants;
    private final int replications;
    private final Map<Measure, double[][]> values;
    private final Simultaneous confidence;

    private Comparison(List<Alternative> plants, int replications, Map<Measure, double[][]> values) {
        this.plants = List.copyOf(plants);
        this.replications = replications;
        this.values = values;
        this.confidence = new Simultaneous(Interval.USUAL_LEVEL, Math.max(1, values.size() * (plants.size() - 1)));
    }

    /**
     * Compares.
     *
     * @param plants the base, then its alternatives, 1 to {@value #MOST_ALTERNATIVES}
     * @param observations shape {@code [replication][plant]}, each as {@link Measure#all} gives it; at least two
     *     replications
     * @return the comparison, over the measures that every plant has
     */
    public static Comparison of(List<Alternative> plants, List<List<double[]>> observations) {
        Map<Measure, double[][]> values = new EnumMap<>(Measure.class);
        for (Measure measure : Measure.values()) {
            double[][] each = samples(measure, plants.size(), observations);
            if (measure.isCompared() && Arrays.stream(each).allMatch(Comparison::hasValue)) {
                values.put(measure, each);
            }
        }
        return new Comparison(plants, observations.size(), values);
    }

    /**
     * The plants.
     *
     * @return the base, then its alternatives
     */
    public List<Alternative> plants() {
        return plants;
    }

    /**
     * Number of replications of each.
     *
     * @return at least 2
     */
    public int replications() {
        return replications;
    }

    /**
     * The letter of a plant.
     *
     * @param plant its number, 0 the base
     * @return A for the base, then B, C ...
     */
    static String letter(int plant) {
        return String.valueOf((char) ('A' + plant));
    }

    /**
     * What is compared.
     *
     * @return the measures that every plant has, in order
     */
    public List<Measure> measures() {
        return List.copyOf(values.keySet());
    }

    /**
     * How sure the intervals are.
     *
     * @return confidence over all alternatives and measures
     */
    Simultaneous confidence() {
        return confidence;
    }

    /**
     * A difference from the base.
     *
     * @param plant number of the alternative, from 1
     * @param measure one of {@link #measures}
     * @return with the interval at the level that makes all hold at once
     */
    public Difference difference(int plant, Measure measure) {
        double[][] each = values.get(measure);
        return Difference.of(each[0], each[plant], confidence.eachLevel());
    }

    /**
     * How well the differences in a measure are known.
     *
     * @param measure which
     * @return the widest half-width of any alternative over the base's mean; 0 where nothing varies, not a number where
     *     the measure has no value or the base's mean is 0
     */
    public double width(Measure measure) {
        if (!values.containsKey(measure)) {
            return Double.NaN;
        }
        return IntStream.range(1, plants.size())
                .mapToObj(plant -> difference(plant, measure))
                .mapToDouble(difference -> Width.of(difference.interval(), difference.baseMean()))
                .reduce(0, (a, b) -> Double.isNaN(a) ? a : Math.max(a, b));
    }

    /**
     * A number of one plant by itself.
     *
     * @param plant its number, 0 the base
     * @param measure one of {@link #measures}
     * @return with its own interval, at {@link Interval#USUAL_LEVEL}
     */
    Interval mean(int plant, Measure measure) {
        return Interval.of(values.get(measure)[plant], Interval.USUAL_LEVEL);
    }

    /**
     * A single observation.
     *
     * @param plant its number, 0 the base
     * @param measure one of {@link #measures}
     * @param replication from 0
     * @return the value; not a number where there is none
     */
    double value(int plant, Measure measure, int replication) {
        return values.get(measure)[plant][replication];
    }

    private static boolean hasValue(double[] sample) {
        return Arrays.stream(sample).anyMatch(value -> !Double.isNaN(value));
    }

    private static double[][] samples(Measure measure, int plants, List<List<double[]>> observations) {
        return IntStream.range(0, plants)
                .mapToObj(plant -> observations.stream()
                        .mapToDouble(replication -> replication.get(plant)[measure.ordinal()])
                        .toArray())
                .toArray(double[][]::new);
    }
}
