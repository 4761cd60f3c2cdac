package spoolyard.analysis.report;

import java.util.Collection;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineState;

/**
 * Overall equipment effectiveness on a mass basis. Immutable.
 *
 * <p>Source: ISO 22400-2:2014, {@code OEE = availability * effectiveness * quality ratio} with {@code availability =
 * APT / PBT}, {@code effectiveness = PRI * PQ / APT} and {@code quality ratio = GQ / PQ}. The standard counts pieces; a
 * line makes kilograms, so the planned run time per item PRI is the time per kilogram at the rate of the product.
 *
 * @param plannedBusyS PBT: scheduled working time less planned stops, and what a line heats ahead of it or runs on after it,
 *     seconds
 * @param productionS APT: time in which product is made, at normal or reduced speed, seconds
 * @param plannedRunS PRI * PQ: time that the produced quantity takes at the rate of each product, seconds
 * @param producedKg PQ: mass made in the production time that became a good spool or scrap, kg
 * @param goodKg GQ: mass on good spools, kg
 */
public record Oee(double plannedBusyS, double productionS, double plannedRunS, double producedKg, double goodKg) {
    /**
     * Of one line. What is still on the line at the end is no produced quantity yet. What runs to waste outside the
     * production time (purge, start-up) is not either: its time is lost in the availability.
     *
     * @param line what the line did
     * @return its elements
     */
    public static Oee of(LineResult line) {
        double horizonS =
                line.stateS().values().stream().mapToDouble(Double::doubleValue).sum();
        double plannedBusyS = horizonS
                - line.stateS().get(LineState.NOT_SCHEDULED)
                - line.stateS().get(LineState.PLANNED_STOP);
        double productionS =
                line.stateS().get(LineState.RUNNING) + line.stateS().get(LineState.SLOWED);
        double producedKg = line.ratedKg() - line.slowedLossKg() - line.inProcessKg();
        double secondsPerKg = line.ratedKg() > 0 ? productionS / line.ratedKg() : 0;
        return new Oee(plannedBusyS, productionS, secondsPerKg * producedKg, producedKg, line.goodKg());
    }

    /**
     * Of several lines together: the sums of their elements. The standard defines the index for a single work unit; the
     * sum over work units is ours.
     *
     * @param parts the lines
     * @return the sums
     */
    public static Oee sumOf(Collection<Oee> parts) {
        return parts.stream()
                .reduce((a, b) -> new Oee(
                        a.plannedBusyS + b.plannedBusyS,
                        a.productionS + b.productionS,
                        a.plannedRunS + b.plannedRunS,
                        a.producedKg + b.producedKg,
                        a.goodKg + b.goodKg))
                .orElse(new Oee(0, 0, 0, 0, 0));
    }

    /**
     * APT / PBT.
     *
     * @return a share; not a number if nothing was planned
     */
    public double availability() {
        return productionS / plannedBusyS;
    }

    /**
     * PRI * PQ / APT.
     *
     * @return a share; not a number if nothing was made
     */
    public double effectiveness() {
        return plannedRunS / productionS;
    }

    /**
     * GQ / PQ.
     *
     * @return a share; not a number if nothing was made
     */
    public double qualityRatio() {
        return goodKg / producedKg;
    }

    /**
     * The product of the three factors.
     *
     * @return a share; 0 if nothing was made in planned time; not a number if nothing was planned
     */
    public double index() {
        if (productionS == 0) {
            return plannedBusyS > 0 ? 0 : Double.NaN;
        }
        return availability() * effectiveness() * qualityRatio();
    }
}
