package spoolyard.analysis.report;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import spoolyard.analysis.buffer.CapacityCurve;
import spoolyard.analysis.buffer.DedicatedOperator;
import spoolyard.analysis.buffer.Finding;
import spoolyard.analysis.buffer.LossMeasure;
import spoolyard.analysis.buffer.RareView;
import spoolyard.analysis.experiment.Interval;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Prices;

/**
 * What was found about the accumulator of a line. Immutable.
 *
 * @param provenance where it comes from
 * @param plant the plant as it is
 * @param line the line in question, as it is
 * @param curve losses over the capacity
 * @param finding the search for a target; empty if nobody asked for one
 * @param replications replications behind each point of the curve, at least
 * @param netPerYear by capacity, what it is worth a year against the present one; empty if nobody asked
 * @param rare what it gained to expect overflows; empty if they were counted
 */
public record BufferReport(
        Provenance provenance,
        Plant plant,
        Line line,
        CapacityCurve curve,
        Optional<Finding> finding,
        int replications,
        Map<Double, Interval> netPerYear,
        Optional<RareView> rare) {
    /** Copies the map. */
    public BufferReport {
        netPerYear = Collections.unmodifiableMap(new TreeMap<>(netPerYear));
    }
    /** The closed form for the line. */
    DedicatedOperator operator() {
        return DedicatedOperator.of(plant, line);
    }

    /** The capacity that is worth most, if anybody asked. */
    Optional<Map.Entry<Double, Interval>> worthMost() {
        return netPerYear.entrySet().stream()
                .max(Comparator.comparingDouble(each -> each.getValue().mean()));
    }

    /** Money, if the scenario has prices. */
    Optional<String> currency() {
        return plant.economy().prices().map(Prices::currency);
    }

    /** What can be told: money only with prices. */
    List<LossMeasure> measures() {
        List<LossMeasure> all = List.of(LossMeasure.values());
        return currency().isPresent() ? all : all.subList(0, all.indexOf(LossMeasure.COST));
    }

    /** A measure with its unit, money in the scenario's currency. */
    String unit(LossMeasure measure) {
        return measure == LossMeasure.COST
                ? currency().map(name -> name + " ").orElse("") + measure.unit()
                : measure.unit();
    }
}
