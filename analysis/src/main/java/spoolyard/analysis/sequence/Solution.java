package spoolyard.analysis.sequence;

/**
 * What a search came to. Immutable.
 *
 * @param plan the best plan found, with its times
 * @param bound no plan costs less than this
 * @param isProvedBest whether it is certain that no plan costs less than this one
 */
public record Solution(TimedPlan plan, double bound, boolean isProvedBest) {
    /**
     * How far the plan may be above the best at most.
     *
     * @return share of the bound, 0 if proved best; infinite if the bound is 0 and the plan costs something
     */
    public double mostAboveBound() {
        if (isProvedBest) {
            return 0;
        }
        return bound > 0 ? plan.cost() / bound - 1 : Double.POSITIVE_INFINITY;
    }
}
