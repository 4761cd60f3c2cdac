package spoolyard.analysis.schedule;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spoolyard.analysis.sequence.TimedPlan;
import spoolyard.analysis.sequence.TimedPlan.TimedJob;
import spoolyard.analysis.sequence.TimedPlan.WeekEnd;
import spoolyard.core.plant.DispatchRule;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.OrderBook;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Product;
import spoolyard.core.quantity.Ticks;

/**
 * A plan in the words of the plant. Immutable.
 *
 * @param name what it is called
 * @param book the order book
 * @param timed the plan
 * @param changeovers all changeovers together, with the purges at the end of weeks
 * @param changes number of changeovers
 * @param lateOrders number of orders late
 * @param lateSpoolDays spools times days late, over all late orders
 */
public record PlanFigures(
        String name,
        PlantBook book,
        TimedPlan timed,
        ChangeoverEstimate changeovers,
        int changes,
        int lateOrders,
        double lateSpoolDays) {
    private static final double S_PER_DAY = 86_400;

    /**
     * Reckons the figures of a plan.
     *
     * @param name what it is called
     * @param book the order book
     * @param timed the plan
     * @return its figures
     */
    public static PlanFigures of(String name, PlantBook book, TimedPlan timed) {
        ChangeoverArithmetic arithmetic = new ChangeoverArithmetic(book.plant(), book.weights());
        ChangeoverEstimate sum = ChangeoverEstimate.NONE;
        int changes = 0;
        int late = 0;
        double spoolDays = 0;
        for (int line = 0; line < timed.lines().size(); line++) {
            for (TimedJob job : timed.lines().get(line)) {
                ChangeoverEstimate each = changeover(arithmetic, book, line, job);
                sum = sum.plus(each);
                changes += each.lineS() > 0 ? 1 : 0;
                late += lateS(book, job) > 0 ? 1 : 0;
                spoolDays += lateS(book, job)
                        / S_PER_DAY
                        * book.plant().book().orders().get(job.job()).spools();
            }
            for (WeekEnd end : timed.weekEnds().get(line)) {
                sum = sum.plus(purge(arithmetic, book, line, end)).plus(back(arithmetic, book, timed, line, end));
                changes += end.goesOn() ? 1 : 0;
            }
        }
        return new PlanFigures(name, book, timed, sum, changes, late, spoolDays);
    }

    private static double lateS(PlantBook book, TimedJob job) {
        Order order = book.plant().book().orders().get(job.job());
        return Math.max(0, job.endS() - Ticks.toSeconds(order.dueTick()));
    }

    /**
     * How late an order is made, whatever reserve was planned.
     *
     * @param job the order in its place
     * @return seconds after its due date, 0 if on time
     */
    public double lateS(TimedJob job) {
        return lateS(book, job);
    }

    private static ChangeoverEstimate changeover(
            ChangeoverArithmetic arithmetic, PlantBook book, int line, TimedJob job) {
        Order order = book.plant().book().orders().get(job.job());
        return book.held(line, job.from())
                .map(from -> arithmetic.estimate(book.plant().lines().get(line), from, order.product()))
                .orElse(ChangeoverEstimate.NONE);
    }

    private static ChangeoverEstimate purge(ChangeoverArithmetic arithmetic, PlantBook book, int line, WeekEnd end) {
        Product held = book.held(line, end.from()).orElseThrow();
        return arithmetic.endOfWeek(book.plant().lines().get(line), held);
    }

    /** From clean to the order that goes on. */
    private static ChangeoverEstimate back(
            ChangeoverArithmetic arithmetic, PlantBook book, TimedPlan timed, int line, WeekEnd end) {
        if (!end.goesOn()) {
            return ChangeoverEstimate.NONE;
        }
        int job = timed.lines().get(line).get(end.place()).job();
        return arithmetic.estimate(
                book.plant().lines().get(line),
                book.products().get(end.clean()),
                book.plant().book().orders().get(job).product());
    }

    /**
     * A purge at the end of a week.
     *
     * @param line number of the line
     * @param end the end of the week
     * @return what it is expected to take
     */
    public ChangeoverEstimate purge(int line, WeekEnd end) {
        return purge(new ChangeoverArithmetic(book.plant(), book.weights()), book, line, end);
    }

    /**
     * The changeover after a purge at the end of a week that an order under way goes on with.
     *
     * @param line number of the line
     * @param end the end of the week
     * @return what it is expected to take; nothing if no order is under way
     */
    public ChangeoverEstimate back(int line, WeekEnd end) {
        return back(new ChangeoverArithmetic(book.plant(), book.weights()), book, timed, line, end);
    }

    /**
     * What comes before an order on its line.
     *
     * @param line number of the line
     * @param job the order in its place
     * @return expected changeover
     */
    public ChangeoverEstimate before(int line, TimedJob job) {
        return changeover(new ChangeoverArithmetic(book.plant(), book.weights()), book, line, job);
    }

    /**
     * The order of a place.
     *
     * @param job the place
     * @return the order
     */
    public Order order(TimedJob job) {
        return book.plant().book().orders().get(job.job());
    }

    /**
     * The plan as a given sequence.
     *
     * @return order ids by line name, every line that makes any
     */
    public Map<String, List<String>> sequence() {
        Map<String, List<String>> sequence = new LinkedHashMap<>();
        for (int line = 0; line < timed.lines().size(); line++) {
            List<String> ids =
                    timed.lines().get(line).stream().map(job -> order(job).id()).toList();
            if (!ids.isEmpty()) {
                sequence.put(book.plant().lines().get(line).name(), ids);
            }
        }
        return sequence;
    }

    /**
     * The plant with this plan as its given sequence.
     *
     * @return another plant
     */
    public Plant asGiven() {
        Plant plant = book.plant();
        return plant.with(new OrderBook(plant.book().orders(), DispatchRule.GIVEN_SEQUENCE, sequence()));
    }
}
