package spoolyard.analysis.report;

import java.util.Arrays;
import java.util.List;
import spoolyard.analysis.experiment.BestSubset;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.study.Design;
import spoolyard.scenarios.factor.Level;
import spoolyard.scenarios.factor.Variation;

/**
 * What a study found. Immutable.
 *
 * @param provenance of the scenario without what is varied
 * @param plant name of the plant
 * @param design how its points lie
 * @param factors what was varied
 * @param points shape {@code [point][factor]}
 * @param values a point each, shape {@code [replication][measure]} as {@link Measure#all} gives it
 * @param measure by which the best point is sought
 * @param best the best point and those that cannot be told from it
 */
public record StudyReport(
        Provenance provenance,
        String plant,
        Design design,
        List<Variation> factors,
        List<List<Level>> points,
        List<double[][]> values,
        Measure measure,
        BestSubset best) {
    /** Copies the lists. */
    public StudyReport {
        factors = List.copyOf(factors);
        points = List.copyOf(points);
        values = List.copyOf(values);
    }

    /**
     * Judges the points.
     *
     * @param provenance as above
     * @param plant as above
     * @param design as above
     * @param factors as above
     * @param points as above
     * @param values as above
     * @param measure as above
     */
    public StudyReport(
            Provenance provenance,
            String plant,
            Design design,
            List<Variation> factors,
            List<List<Level>> points,
            List<double[][]> values,
            Measure measure) {
        this(provenance, plant, design, factors, points, values, measure, best(values, measure));
    }

    /**
     * Replications of each point.
     *
     * @return at least 2
     */
    int replications() {
        return values.get(0).length;
    }

    /**
     * Measures that some point has.
     *
     * @return in their usual order
     */
    List<Measure> measures() {
        return Arrays.stream(Measure.values())
                .filter(each -> values.stream()
                        .anyMatch(point -> Arrays.stream(point).anyMatch(row -> !Double.isNaN(row[each.ordinal()]))))
                .toList();
    }

    /**
     * A measure at a point.
     *
     * @param point number from 0
     * @param of which measure
     * @return mean with its 95 % interval
     */
    Interval interval(int point, Measure of) {
        return Interval.of(sample(values.get(point), of), Interval.USUAL_LEVEL);
    }

    /**
     * Mean of a measure at a point.
     *
     * @param point number from 0
     * @param of which measure
     * @return over the replications that have a value; not a number if none has
     */
    double mean(int point, Measure of) {
        return Arrays.stream(sample(values.get(point), of))
                .filter(value -> !Double.isNaN(value))
                .average()
                .orElse(Double.NaN);
    }

    private static BestSubset best(List<double[][]> values, Measure measure) {
        double[][] samples =
                values.stream().map(point -> sample(point, measure)).toArray(double[][]::new);
        return BestSubset.of(samples, measure.isMoreBetter(), Interval.USUAL_LEVEL);
    }

    private static double[] sample(double[][] point, Measure of) {
        return Arrays.stream(point).mapToDouble(row -> row[of.ordinal()]).toArray();
    }
}
