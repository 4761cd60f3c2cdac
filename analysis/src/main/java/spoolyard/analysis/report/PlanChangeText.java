package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import spoolyard.analysis.schedule.PlacedOrder;
import spoolyard.analysis.schedule.PlanFigures;
import spoolyard.core.quantity.Ticks;

/**
 * What a change of a plan costs, in plain words. Immutable.
 *
 * @param before the plan before it
 * @param after the plan after it
 * @param moved ids of the orders that somebody moved
 * @param clock the plant's clock
 */
public record PlanChangeText(PlanFigures before, PlanFigures after, List<String> moved, PlantClock clock) {
    private static final int WIDTH = 100;
    private static final double S_PER_H = 3600;
    private static final int MOST_NAMED = 12;

    /** Copies the list. */
    public PlanChangeText {
        moved = List.copyOf(moved);
    }

    /** An order where it was and where it is. */
    private record Pair(Seat before, Seat after) {}

    /** An order in its place on its line, from 1. */
    private record Seat(PlacedOrder placed, int place) {
        String where() {
            return placed.line().name() + ", place " + place;
        }
    }

    /**
     * Numbers of the lines on which anything stands elsewhere.
     *
     * @return in plant order
     */
    public List<Integer> changedLines() {
        return IntStream.range(0, after.timed().plan().lines().size())
                .filter(line -> !after.timed()
                        .plan()
                        .lines()
                        .get(line)
                        .equals(before.timed().plan().lines().get(line)))
                .boxed()
                .toList();
    }

    /**
     * The change and its cost.
     *
     * @param ink what the screen can show
     * @return lines without line breaks, at most 100 letters each
     */
    public List<String> lines(Ink ink) {
        Map<String, Pair> orders = pairs();
        List<String> lines = new ArrayList<>();
        lines.add(ink.title(after.book().plant().name() + ": change of a plan"));
        moved.stream().distinct().forEach(id -> lines.addAll(wrapped(move(orders.get(id)))));
        lines.add("");
        lines.add(ink.strong(
                Cell.left("", 26) + Cell.right("before", 12) + Cell.right("after", 12) + Cell.right("change", 12)));
        lines.addAll(table());
        lines.add("");
        lines.addAll(wrapped(late("Become late", orders, (was, is) -> was == 0 && is > 0)));
        lines.addAll(wrapped(late("Get in time", orders, (was, is) -> was > 0 && is == 0)));
        lines.addAll(wrapped(late("Later still", orders, (was, is) -> was > 0 && is > was)));
        lines.addAll(wrapped(cost()));
        lines.add("");
        return lines;
    }

    private static List<String> wrapped(String text) {
        return Wrapped.lines(text, "  ", WIDTH);
    }

    private Map<String, Pair> pairs() {
        Map<String, Seat> was = seats(before);
        Map<String, Pair> pairs = new LinkedHashMap<>();
        seats(after).forEach((id, is) -> pairs.put(id, new Pair(was.get(id), is)));
        return pairs;
    }

    private static Map<String, Seat> seats(PlanFigures plan) {
        Map<String, Seat> seats = new LinkedHashMap<>();
        for (List<PlacedOrder> line : PlacedOrder.all(plan)) {
            for (int place = 0; place < line.size(); place++) {
                seats.put(line.get(place).order().id(), new Seat(line.get(place), place + 1));
            }
        }
        return seats;
    }

    private String move(Pair order) {
        String id = order.after.placed.order().id();
        String where = order.before.where().equals(order.after.where())
                ? id + " stays on " + order.after.where()
                : id + " goes from " + order.before.where() + ", to " + order.after.where();
        return where + ": ready " + clock.minute(order.after.placed.endTick()) + ", " + spare(order.after.placed)
                + " (before: " + clock.minute(order.before.placed.endTick()) + ", " + spare(order.before.placed) + ").";
    }

    private static String spare(PlacedOrder order) {
        double days = Ticks.toHours(order.order().dueTick() - order.endTick()) / 24;
        return Figures.shown(Math.abs(days), 1) + (days < 0 ? " days late" : " days before it is due");
    }

    private List<String> table() {
        return List.of(
                row("cost", 0, before.timed().cost(), after.timed().cost()),
                row("purge kg", 1, purgeKg(before), purgeKg(after)),
                row("line hours of changeover", 1, lineH(before), lineH(after)),
                row("hours of work", 1, crewH(before), crewH(after)),
                row("changeovers", 0, before.changes(), after.changes()),
                row("late orders", 0, before.lateOrders(), after.lateOrders()),
                row("late spool-days", 0, before.lateSpoolDays(), after.lateSpoolDays()));
    }

    private static String row(String name, int decimals, double was, double is) {
        double change = is - was;
        String shown = Figures.shown(Math.abs(change), decimals);
        boolean isNothing = Double.parseDouble(shown.replace(" ", "")) == 0;
        return Cell.left(name, 26)
                + Cell.right(Figures.shown(was, decimals), 12)
                + Cell.right(Figures.shown(is, decimals), 12)
                + Cell.right((isNothing ? "" : change > 0 ? "+" : "-") + shown, 12);
    }

    private static double purgeKg(PlanFigures plan) {
        return plan.changeovers().purgeKg() + plan.changeovers().compoundKg();
    }

    private static double lineH(PlanFigures plan) {
        return plan.changeovers().lineS() / S_PER_H;
    }

    private static double crewH(PlanFigures plan) {
        return plan.changeovers().crewS() / S_PER_H;
    }

    private static String late(String what, Map<String, Pair> orders, BiPredicate<Double, Double> which) {
        List<String> named = orders.values().stream()
                .filter(order -> which.test(order.before.placed.lateDays(), order.after.placed.lateDays()))
                .map(order -> named(order.before.placed, order.after.placed))
                .toList();
        String more = named.size() > MOST_NAMED ? " and " + (named.size() - MOST_NAMED) + " more" : "";
        return what + ": "
                + (named.isEmpty() ? "none" : String.join(", ", named.subList(0, Math.min(MOST_NAMED, named.size()))))
                + more + ".";
    }

    private static String named(PlacedOrder was, PlacedOrder is) {
        double days = is.lateDays() > 0 ? is.lateDays() - was.lateDays() : was.lateDays();
        return is.order().id() + " (" + (days < 0.05 ? "under 0.1" : Figures.shown(days, 1)) + " days)";
    }

    private String cost() {
        double more = after.timed().cost() - before.timed().cost();
        double late = after.timed().lateCost() - before.timed().lateCost();
        double changeovers = more - late;
        if (Math.abs(more) < 0.5) {
            return "The change costs nothing by these weights.";
        }
        return "By these weights the change " + (more > 0 ? "costs " : "saves ") + Figures.shown(Math.abs(more), 0)
                + ": " + part(changeovers) + " in changeovers, " + part(late) + " in lateness" + reserve() + ".";
    }

    private String reserve() {
        double hours = after.book().weights().reserveH();
        return hours > 0 ? ", which counts from " + Figures.shown(hours, 0) + " h before an order is due" : "";
    }

    private static String part(double money) {
        return Figures.shown(Math.abs(money), 0) + (money < 0 ? " less" : " more");
    }
}
