package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import spoolyard.analysis.schedule.ChangeoverEstimate;
import spoolyard.analysis.schedule.PlacedWeekEnd;
import spoolyard.analysis.schedule.PlanFigures;
import spoolyard.analysis.schedule.Weights;
import spoolyard.analysis.sequence.Solution;
import spoolyard.analysis.sequence.TimedPlan.TimedJob;
import spoolyard.core.plant.Order;
import spoolyard.core.quantity.Ticks;

/**
 * A sequence on one screen after another: what it is judged by, what it saves, how good it is at least, and what each line
 * makes. Immutable.
 *
 * @param plan the plan
 * @param others the plans it is compared with
 * @param solution what the search came to
 * @param clock the plant's clock
 */
public record SequenceReport(PlanFigures plan, List<PlanFigures> others, Solution solution, PlantClock clock) {
    private static final int WIDTH = 98;
    /** A gap that tells little. */
    private static final double FAR = 0.2;

    private static final double S_PER_H = 3600;
    private static final double S_PER_DAY = 86_400;

    /** Copies the list. */
    public SequenceReport {
        others = List.copyOf(others);
    }

    /**
     * The comparison and the bound.
     *
     * @param ink what the screen can show
     * @return lines without line breaks
     */
    public List<String> summary(Ink ink) {
        List<String> lines = new ArrayList<>(comparison(ink));
        lines.addAll(Wrapped.lines(bound(), "", WIDTH));
        lines.add("");
        return lines;
    }

    /**
     * The comparison alone.
     *
     * @param ink what the screen can show
     * @return lines without line breaks
     */
    public List<String> comparison(Ink ink) {
        List<String> lines = new ArrayList<>();
        lines.add(ink.title(plan.book().plant().name() + ": sequence of "
                + plan.book().plant().book().orders().size() + " orders on "
                + plan.book().plant().lines().size() + " lines"));
        Wrapped.lines(judged(), "", WIDTH).forEach(line -> lines.add(ink.faint(line)));
        lines.add("");
        lines.add(ink.strong(row("", "cost", "purge kg", "line h", "crew h", "changes", "late", "spool-days late")));
        lines.add(ink.strong(row(plan)));
        others.forEach(other -> lines.add(row(other)));
        lines.add("");
        lines.addAll(Wrapped.lines(saved(), "", WIDTH));
        return lines;
    }

    private String judged() {
        Weights weights = plan.book().weights();
        String first =
                switch (weights.first()) {
                    case NEITHER -> "";
                    case LATE -> " Lateness first: its weight is a thousandfold.";
                    case PURGE -> " Purge first: its weight is a thousandfold.";
                };
        return "Judged by: purge "
                + weights.purgePerKg().stream()
                        .mapToObj(money -> Figures.shown(money, 2) + " a kg")
                        .findFirst()
                        .orElse("at its material")
                + ", time of a line "
                + weights.linePerH().stream()
                        .mapToObj(money -> Figures.shown(money, 2) + " an hour")
                        .findFirst()
                        .orElse("at what it could have made")
                + ", work at its wages, lateness " + Figures.shown(weights.latePerSpoolDay(), 2)
                + " a spool and day times the order's weight, from "
                + Figures.shown(weights.reserveH(), 0) + " h before it is due." + first;
    }

    private static String row(PlanFigures figures) {
        ChangeoverEstimate sum = figures.changeovers();
        return row(
                figures.name(),
                Figures.shown(figures.timed().cost(), 0),
                Figures.shown(sum.purgeKg() + sum.compoundKg(), 0),
                Figures.shown(sum.lineS() / S_PER_H, 1),
                Figures.shown(sum.crewS() / S_PER_H, 1),
                Integer.toString(figures.changes()),
                Integer.toString(figures.lateOrders()),
                Figures.shown(figures.lateSpoolDays(), 0));
    }

    private static String row(String name, String... cells) {
        StringBuilder row = new StringBuilder(Cell.left(name, 26));
        int[] widths = {11, 10, 9, 9, 9, 6, 17};
        for (int i = 0; i < cells.length; i++) {
            row.append(Cell.right(cells[i], widths[i]));
        }
        return row.toString();
    }

    private PlanFigures today() {
        return others.stream()
                .filter(other -> other.name().endsWith("(today)"))
                .findFirst()
                .or(() -> others.stream()
                        .min(Comparator.comparingDouble(other -> other.timed().cost())))
                .orElse(plan);
    }

    private String saved() {
        PlanFigures today = today();
        double purgeKg = kg(today) - kg(plan);
        double lineH = (today.changeovers().lineS() - plan.changeovers().lineS()) / S_PER_H;
        return "Against " + today.name() + ": " + less(purgeKg, 0, "kg of purge") + ", "
                + less(lineH, 1, "hours of line time") + ", "
                + less(today.lateOrders() - plan.lateOrders(), 0, "late orders") + ", "
                + less(today.lateSpoolDays() - plan.lateSpoolDays(), 0, "late spool-days") + ".";
    }

    private static double kg(PlanFigures figures) {
        return figures.changeovers().purgeKg() + figures.changeovers().compoundKg();
    }

    private static String less(double saved, int decimals, String what) {
        return Figures.shown(Math.abs(saved), decimals) + " " + what + (saved < 0 ? " more" : " less");
    }

    private String bound() {
        if (solution.isProvedBest()) {
            return "Proved best: no plan costs less by these weights and times.";
        }
        String least = "No plan can cost less than " + Figures.shown(solution.bound(), 0);
        String longer = solution.mostAboveBound() > FAR ? " A longer search may raise the bound." : "";
        return solution.bound() > 0
                ? least + ": this one is at most " + Figures.shown(100 * solution.mostAboveBound(), 0)
                        + " % above that bound. The best plan lies between." + longer
                : least + ": the bound says nothing about this plan.";
    }

    /**
     * What each line makes.
     *
     * @param ink what the screen can show
     * @return lines without line breaks
     */
    public List<String> perLine(Ink ink) {
        List<String> lines = new ArrayList<>();
        for (int line = 0; line < plan.timed().lines().size(); line++) {
            lines.addAll(line(line, ink));
        }
        return lines;
    }

    /**
     * What one line makes.
     *
     * @param line its number
     * @param ink what the screen can show
     * @return lines without line breaks
     */
    public List<String> line(int line, Ink ink) {
        List<String> lines = new ArrayList<>();
        List<TimedJob> jobs = plan.timed().lines().get(line);
        String name = plan.book().plant().lines().get(line).name();
        lines.add(ink.strong(name + ", " + jobs.size() + (jobs.size() == 1 ? " order" : " orders")));
        Map<Integer, List<PlacedWeekEnd>> ends = PlacedWeekEnd.byPlace(plan, line);
        ends.getOrDefault(0, List.of()).forEach(end -> lines.add(weekEnd(end)));
        for (int place = 0; place < jobs.size(); place++) {
            lines.addAll(place(line, jobs.get(place)));
            ends.getOrDefault(place + 1, List.of()).forEach(end -> lines.add(weekEnd(end)));
        }
        lines.add("");
        return lines;
    }

    private String weekEnd(PlacedWeekEnd end) {
        ChangeoverEstimate all = end.purge().plus(end.back());
        return "  " + Cell.left("end of week, purged clean", 41) + Cell.right(taken(all), 18) + "   until "
                + clock.minute(end.endTick());
    }

    private static String taken(ChangeoverEstimate change) {
        return String.format(
                Locale.ROOT, "%6.1f kg %4.0f min", change.purgeKg() + change.compoundKg(), change.lineS() / 60);
    }

    private List<String> place(int line, TimedJob job) {
        Order order = plan.order(job);
        ChangeoverEstimate change = plan.before(line, job);
        String purge = change.lineS() > 0 ? taken(change) : "";
        String late = plan.lateS(job) > 0 ? Figures.shown(plan.lateS(job) / S_PER_DAY, 1) + " days late" : "";
        String made =
                "  " + Cell.left(order.id(), 10) + Cell.left(order.product().label(), 18)
                        + Cell.right(order.spools() + " spools", 13) + Cell.right(purge, 18) + "   "
                        + minute(job.makingS()) + " to " + minute(job.endS());
        return late.isEmpty() ? List.of(made) : List.of(made, Cell.right(late, made.length()));
    }

    private String minute(double seconds) {
        return clock.minute(Math.round(seconds * Ticks.PER_SECOND));
    }
}
