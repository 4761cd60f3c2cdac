package spoolyard.analysis.schedule;

import spoolyard.analysis.sequence.TimedPlan;

/**
 * A plan with what it runs to waste and how late it is: on a frontier if no other is at least as good in both. Immutable.
 *
 * @param plan its figures, in money as well
 * @param purgeKg purge and compound, kg
 * @param lateSpoolDays spools times days late, times the weight of the order, from the reserve before it is due
 */
public record FrontierPoint(PlanFigures plan, double purgeKg, double lateSpoolDays) {
    /**
     * Of a plan.
     *
     * @param name what it is called
     * @param book the order book
     * @param timed the plan as {@link TradeOffBook} reckons it
     * @return the point
     */
    public static FrontierPoint of(String name, PlantBook book, TimedPlan timed) {
        PlanFigures figures = PlanFigures.of(name, book, TimedPlan.of(book.problem(), timed.plan()));
        return new FrontierPoint(figures, timed.changeoverCost(), timed.lateCost());
    }

    /**
     * What promptness costs from a point to this one.
     *
     * @param other a point with less purge and more lateness
     * @return kg for each spool-day less
     */
    public double kgPerSpoolDay(FrontierPoint other) {
        return (purgeKg - other.purgeKg) / (other.lateSpoolDays - lateSpoolDays);
    }
}
