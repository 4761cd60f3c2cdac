package spoolyard.analysis.buffer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeSet;
import spoolyard.analysis.experiment.Interval;
import spoolyard.core.record.OverflowCause;

/**
 * Losses over the capacity of the accumulator. Immutable.
 *
 * @param points ascending by capacity, at least one
 */
public record CapacityCurve(List<Point> points) {
    /** Copies the list. */
    public CapacityCurve {
        points = List.copyOf(points);
    }

    /**
     * Observes a curve.
     *
     * @param capacitiesM where, at least one
     * @param losses observes
     * @param replications how many at each capacity, {@code >= 1}
     * @return the curve, with the usual level at each point
     */
    public static CapacityCurve of(Collection<Double> capacitiesM, SeenLosses losses, int replications) {
        List<Point> points = new ArrayList<>();
        for (double capacityM : new TreeSet<>(capacitiesM)) {
            points.add(Point.of(capacityM, losses.at(capacityM, replications)));
        }
        return new CapacityCurve(points);
    }

    /**
     * Where more room stops to pay much: the point furthest below the straight line from the first to the last point, with
     * capacity and loss each scaled to their span.
     *
     * @param measure which loss
     * @return capacity, metres; empty if the loss does not fall
     */
    public OptionalDouble kneeM(LossMeasure measure) {
        Point first = points.get(0);
        Point last = points.get(points.size() - 1);
        double fall = first.mean(measure) - last.mean(measure);
        if (!(fall > 0)) {
            return OptionalDouble.empty();
        }
        Point knee = first;
        double deepest = 0;
        for (Point point : points) {
            double along = (point.capacityM() - first.capacityM()) / (last.capacityM() - first.capacityM());
            double depth = 1 - along - (point.mean(measure) - last.mean(measure)) / fall;
            if (depth > deepest) {
                deepest = depth;
                knee = point;
            }
        }
        return OptionalDouble.of(knee.capacityM());
    }

    /**
     * The curve at a capacity.
     *
     * @param capacityM metres
     * @param losses each measure with its interval; {@link LossMeasure#COST} is not a number without prices
     * @param pctOfSwaps overflows by cause, % of the swaps
     */
    public record Point(double capacityM, Map<LossMeasure, Interval> losses, Map<OverflowCause, Double> pctOfSwaps) {
        static Point of(double capacityM, List<Loss> seen) {
            Map<LossMeasure, Interval> losses = new EnumMap<>(LossMeasure.class);
            for (LossMeasure measure : LossMeasure.values()) {
                losses.put(measure, LossMean.of(measure, seen, Interval.USUAL_LEVEL));
            }
            return new Point(capacityM, losses, Limits.pctOfSwaps(seen));
        }

        double mean(LossMeasure measure) {
            return losses.get(measure).mean();
        }
    }
}
