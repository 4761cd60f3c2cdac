package spoolyard.analysis.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.analysis.sequence.TimedPlan.TimedJob;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Product;
import spoolyard.core.quantity.Ticks;

/**
 * An order in its place on a line, with the changeover before it. Immutable.
 *
 * @param line the line
 * @param order the order
 * @param before what the line holds when it gets there; empty: nothing
 * @param change the changeover
 * @param crewS who is needed for it, attended seconds
 * @param startTick begin of the changeover, ticks since the start of the plan
 * @param makingTick begin of making
 * @param endTick end of making
 * @param isFrozen whether it was to stand here whatever that costs
 */
public record PlacedOrder(
        Line line,
        Order order,
        Optional<Product> before,
        ChangeoverEstimate change,
        Map<CrewNeed, Double> crewS,
        long startTick,
        long makingTick,
        long endTick,
        boolean isFrozen) {
    private static final double S_PER_DAY = 86_400;

    /**
     * The orders of each line.
     *
     * @param plan the plan
     * @return a list for every line of the plant, in plant order; in each the orders as they are made
     */
    public static List<List<PlacedOrder>> all(PlanFigures plan) {
        List<List<PlacedOrder>> all = new ArrayList<>();
        for (int line = 0; line < plan.timed().lines().size(); line++) {
            List<PlacedOrder> placed = new ArrayList<>();
            for (TimedJob job : plan.timed().lines().get(line)) {
                placed.add(of(plan, line, job));
            }
            all.add(placed);
        }
        return all;
    }

    private static PlacedOrder of(PlanFigures plan, int line, TimedJob job) {
        PlantBook book = plan.book();
        Line where = book.plant().lines().get(line);
        Optional<Product> before = book.held(line, job.from());
        return new PlacedOrder(
                where,
                plan.order(job),
                before,
                plan.before(line, job),
                crewS(book, where, before, plan.order(job)),
                tick(job.startS()),
                tick(job.makingS()),
                tick(job.endS()),
                book.problem().lines().get(line).frozen().contains(job.job()));
    }

    private static Map<CrewNeed, Double> crewS(PlantBook book, Line line, Optional<Product> before, Order order) {
        ChangeoverArithmetic arithmetic = new ChangeoverArithmetic(book.plant(), book.weights());
        return before.map(from -> arithmetic.crewS(line, from, order.product())).orElse(Map.of());
    }

    private static long tick(double seconds) {
        return Math.round(seconds * Ticks.PER_SECOND);
    }

    /**
     * What changes before it.
     *
     * @return the hardest first; empty if nothing does
     */
    public List<ChangeKind> kinds() {
        return before.map(from -> ChangeKind.between(from, order.product())).orElse(List.of());
    }

    /**
     * How late it is made.
     *
     * @return days after it is due, 0 if on time
     */
    public double lateDays() {
        return Math.max(0, Ticks.toSeconds(endTick - order.dueTick())) / S_PER_DAY;
    }
}
