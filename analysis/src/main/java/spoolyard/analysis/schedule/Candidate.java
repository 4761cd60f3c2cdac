package spoolyard.analysis.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A plan that might be taken. Immutable.
 *
 * @param how what it was searched with, in words
 * @param plan its figures, by the weights that all candidates are judged by
 */
public record Candidate(String how, PlanFigures plan) {
    /** Plans of which at least this share of the orders is placed otherwise are clearly different. */
    public static final double CLEARLY = 0.1;

    /**
     * Picks the cheapest that are clearly different from each other.
     *
     * @param pool plans of the same order book
     * @param most how many at most, {@code >= 1}
     * @return the cheapest first
     */
    public static List<Candidate> different(List<Candidate> pool, int most) {
        List<Candidate> picked = new ArrayList<>();
        pool.stream()
                .sorted(Comparator.comparingDouble(each -> each.plan.timed().cost()))
                .filter(each ->
                        picked.size() < most && picked.stream().allMatch(other -> each.distance(other) >= CLEARLY))
                .forEach(picked::add);
        return picked;
    }

    /**
     * How far it is from another.
     *
     * @param other a plan of the same order book
     * @return share of the orders placed otherwise, 0 to 1
     */
    public double distance(Candidate other) {
        return PlanDistance.between(plan, other.plan);
    }
}
