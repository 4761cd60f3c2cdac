package spoolyard.analysis.schedule;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import spoolyard.analysis.sequence.TimedPlan.WeekEnd;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Product;
import spoolyard.core.quantity.Ticks;

/**
 * A purge at the end of a week in its place on a line. Immutable.
 *
 * @param held what the line holds before it
 * @param clean what it counts as holding afterwards
 * @param purge what it takes
 * @param crewS who is needed for it, attended seconds
 * @param back the changeover after it that the order under way goes on with; nothing if none is under way
 * @param endTick when it is done, ticks since the start of the plan
 * @param place how many orders of the line are begun by then
 */
public record PlacedWeekEnd(
        Product held,
        Product clean,
        ChangeoverEstimate purge,
        Map<CrewNeed, Double> crewS,
        ChangeoverEstimate back,
        long endTick,
        int place) {
    /**
     * The purges of a line.
     *
     * @param plan the plan
     * @param line number of the line
     * @return by time
     */
    public static List<PlacedWeekEnd> of(PlanFigures plan, int line) {
        return plan.timed().weekEnds().get(line).stream()
                .map(end -> of(plan, line, end))
                .toList();
    }

    /**
     * The purges of a line by how many of its orders are begun before.
     *
     * @param plan the plan
     * @param line number of the line
     * @return lists by number of orders
     */
    public static Map<Integer, List<PlacedWeekEnd>> byPlace(PlanFigures plan, int line) {
        return of(plan, line).stream().collect(Collectors.groupingBy(PlacedWeekEnd::place));
    }

    private static PlacedWeekEnd of(PlanFigures plan, int line, WeekEnd end) {
        PlantBook book = plan.book();
        Line where = book.plant().lines().get(line);
        Product held = book.held(line, end.from()).orElseThrow();
        ChangeoverEstimate purge = plan.purge(line, end);
        return new PlacedWeekEnd(
                held,
                book.products().get(end.clean()),
                purge,
                new ChangeoverArithmetic(book.plant(), book.weights()).endOfWeekCrewS(where, held),
                plan.back(line, end),
                Math.round((end.startS() + purge.lineS()) * Ticks.PER_SECOND),
                end.place() + (end.goesOn() ? 1 : 0));
    }
}
