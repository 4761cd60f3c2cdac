package spoolyard.analysis.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import spoolyard.analysis.sequence.Job;
import spoolyard.analysis.sequence.Plan;
import spoolyard.analysis.sequence.TimedPlan;
import spoolyard.analysis.sequence.TimedPlan.TimedJob;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.quantity.Ticks;

/** A plan that is changed by hand. One order moves at a time; all others keep their lines and their order. For one thread. */
public final class PlanEdit {
    private final PlantBook book;
    private final List<List<Integer>> lines = new ArrayList<>();

    /**
     * Begins with a plan.
     *
     * @param book the order book
     * @param plan a plan of all its orders
     * @throws RefusedChangeException if a line does not begin with the orders that are frozen on it
     */
    public PlanEdit(PlantBook book, Plan plan) throws RefusedChangeException {
        this.book = book;
        plan.lines().forEach(line -> lines.add(new ArrayList<>(line)));
        for (int line = 0; line < lines.size(); line++) {
            List<Integer> frozen = frozen(line);
            boolean isKept = lines.get(line).size() >= frozen.size()
                    && lines.get(line).subList(0, frozen.size()).equals(frozen);
            if (!isKept) {
                throw new RefusedChangeException(
                        "Line " + name(line) + " of the plan does not begin with the orders that are frozen on it.",
                        "freeze the first orders of the line as they stand, or plan anew without --from");
            }
        }
    }

    private List<Integer> frozen(int line) {
        return book.problem().lines().get(line).frozen();
    }

    private String name(int line) {
        return book.plant().lines().get(line).name();
    }

    private Order order(int job) {
        return book.plant().book().orders().get(job);
    }

    /**
     * The plan as it is now.
     *
     * @return all orders
     */
    public Plan plan() {
        return new Plan(lines);
    }

    /**
     * Puts an order elsewhere.
     *
     * @param id the order
     * @param lineName its new line
     * @param spot its place there
     * @throws RefusedChangeException if there is no such order, line or place, the line cannot make it, or either is frozen
     */
    public void move(String id, String lineName, Spot spot) throws RefusedChangeException {
        int job = movable(id);
        int line = lineOf(lineName);
        requireCanMake(job, line);
        int place = place(job, line, spot);
        takeOut(job);
        lines.get(line).add(place, job);
    }

    /**
     * Puts an order where it is on time at the least cost: in time by the plan's reserve if any place gives that, else just in
     * time, else as soon as can be.
     *
     * @param id the order
     * @throws RefusedChangeException if there is no such order, or it is frozen
     */
    public void rush(String id) throws RefusedChangeException {
        int job = movable(id);
        takeOut(job);
        Trial best = trials(job).min(Trial.BEST_FIRST).orElseThrow();
        lines.get(best.line).add(best.place, job);
    }

    /** An order tried in a place. */
    private record Trial(int line, int place, int lateness, double cost, double endS) {
        /** A late order must be early before it is cheap. */
        static final Comparator<Trial> BEST_FIRST = Comparator.comparingInt(Trial::lateness)
                .thenComparingDouble(trial -> trial.lateness == 2 ? trial.endS : trial.cost)
                .thenComparingDouble(trial -> trial.lateness == 2 ? trial.cost : trial.endS);
    }

    private Stream<Trial> trials(int job) {
        List<Trial> trials = new ArrayList<>();
        for (int line = 0; line < lines.size(); line++) {
            boolean canRun = book.problem().jobs().get(job).canRunOn(line);
            int last = canRun ? lines.get(line).size() : -1;
            for (int place = frozen(line).size(); place <= last; place++) {
                lines.get(line).add(place, job);
                trials.add(trial(job, line, place));
                lines.get(line).remove(place);
            }
        }
        return trials.stream();
    }

    private Trial trial(int job, int line, int place) {
        TimedPlan timed = TimedPlan.of(book.problem(), plan());
        TimedJob placed = timed.lines().get(line).get(place);
        boolean isLate = placed.endS() > Ticks.toSeconds(order(job).dueTick());
        int lateness = isLate ? 2 : placed.lateS() > 0 ? 1 : 0;
        return new Trial(line, place, lateness, timed.cost(), placed.endS());
    }

    private void takeOut(int job) {
        lines.forEach(line -> line.remove((Integer) job));
    }

    private int movable(String id) throws RefusedChangeException {
        int job = book.problem().numberOf(id).orElse(-1);
        if (job < 0) {
            throw new RefusedChangeException("There is no order " + id + " in the order book.", "correct the order");
        }
        for (int line = 0; line < lines.size(); line++) {
            if (frozen(line).contains(job)) {
                throw new RefusedChangeException(
                        "Order " + id + " is frozen on line " + name(line) + ".", "freeze fewer orders");
            }
        }
        return job;
    }

    private int lineOf(String lineName) throws RefusedChangeException {
        List<String> names = book.plant().lines().stream().map(Line::name).toList();
        if (!names.contains(lineName)) {
            throw new RefusedChangeException(
                    "There is no line " + lineName + "; there are " + String.join(", ", names) + ".",
                    "write one of these");
        }
        return names.indexOf(lineName);
    }

    private void requireCanMake(int job, int line) throws RefusedChangeException {
        Job what = book.problem().jobs().get(job);
        if (!what.canRunOn(line)) {
            List<String> able = book.plant().lines().stream()
                    .map(Line::name)
                    .filter(each -> order(job).lines().contains(each))
                    .toList();
            throw new RefusedChangeException(
                    "Line " + name(line) + " cannot make order " + what.id() + ": " + why(line, order(job)),
                    "choose a line that can: " + String.join(", ", able));
        }
    }

    private String why(int number, Order order) {
        Line line = book.plant().lines().get(number);
        String polymer = order.product().polymer().code();
        if (!line.polymers().contains(polymer)) {
            return "it runs " + String.join(", ", line.polymers()) + ", not " + polymer + ".";
        }
        if (!line.diametersMm().contains(order.product().diameterMm())) {
            return "it makes " + line.diametersMm() + " mm, not "
                    + order.product().diameterMm() + " mm.";
        }
        return "the order may go to other lines only.";
    }

    /** Where it goes once it is taken out. */
    private int place(int job, int line, Spot spot) throws RefusedChangeException {
        List<Integer> others =
                lines.get(line).stream().filter(each -> each != job).toList();
        int place =
                switch (spot.kind()) {
                    case FIRST -> frozen(line).size();
                    case LAST -> others.size();
                    case BEFORE -> placeOf(spot.other(), others, line);
                    case AFTER -> placeOf(spot.other(), others, line) + 1;
                };
        if (place < frozen(line).size()) {
            throw new RefusedChangeException(
                    "That place is in the frozen part of line " + name(line) + ", which ends with order "
                            + order(frozen(line).get(frozen(line).size() - 1)).id() + ".",
                    "choose a later place, or freeze fewer orders");
        }
        return place;
    }

    private int placeOf(String id, List<Integer> others, int line) throws RefusedChangeException {
        int job = book.problem().numberOf(id).orElse(-1);
        if (!others.contains(job)) {
            throw new RefusedChangeException(
                    "Order " + id + " is not another order on line " + name(line) + ".",
                    "name an order that stands on that line, or write first or last");
        }
        return others.indexOf(job);
    }
}
