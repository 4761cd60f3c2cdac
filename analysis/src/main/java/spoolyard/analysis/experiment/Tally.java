package spoolyard.analysis.experiment;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.stat.StatUtils;

/** The observations of a selection so far, and which systems are still in it. */
final class Tally {
    private final Observations observations;
    private final List<List<Double>> values;
    private final double[] sums;
    private final List<Standing> course = new ArrayList<>();
    private List<Integer> remaining;
    private int count;

    Tally(Observations observations) {
        this.observations = observations;
        this.values = IntStream.range(0, observations.systems())
                .mapToObj(system -> (List<Double>) new ArrayList<Double>())
                .toList();
        this.sums = new double[observations.systems()];
        this.remaining = IntStream.range(0, observations.systems()).boxed().toList();
    }

    /** Takes observations of the remaining systems until there are so many. */
    void take(int wanted) {
        for (; count < wanted; count++) {
            double[] next = observations.at(count, remaining);
            for (int i = 0; i < next.length; i++) {
                values.get(remaining.get(i)).add(next[i]);
                sums[remaining.get(i)] += next[i];
            }
        }
    }

    int count() {
        return count;
    }

    List<Integer> remaining() {
        return remaining;
    }

    /** Notes how a system stands, and whether it stays in. */
    boolean look(int system, double dropsBelow) {
        Standing standing = new Standing(count, system, mean(system), dropsBelow);
        course.add(standing);
        return !standing.isDropped();
    }

    void keep(List<Integer> survivors) {
        remaining = survivors;
    }

    double mean(int system) {
        return sums[system] / values.get(system).size();
    }

    /** Sample variance of the difference of two systems, over the observations that both have. */
    double varianceOfDifference(int one, int other) {
        int both = Math.min(values.get(one).size(), values.get(other).size());
        return StatUtils.variance(IntStream.range(0, both)
                .mapToDouble(i -> values.get(one).get(i) - values.get(other).get(i))
                .toArray());
    }

    /** Sample variance of a system. */
    double variance(int system) {
        return StatUtils.variance(
                values.get(system).stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** The remaining system with the best mean. */
    Selection selection(boolean isDecided) {
        int best = Collections.max(remaining, Comparator.comparingDouble(this::mean));
        return new Selection(
                best,
                IntStream.range(0, values.size()).mapToObj(this::mean).toList(),
                values.stream().map(List::size).toList(),
                isDecided,
                course);
    }
}
