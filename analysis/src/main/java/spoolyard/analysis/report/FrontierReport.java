package spoolyard.analysis.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.schedule.Frontier;
import spoolyard.analysis.schedule.FrontierPoint;
import spoolyard.core.plant.Plant;

/**
 * What promptness costs in purge, for people. Immutable.
 *
 * @param frontier the points
 * @param others plans that stand beside it, such as today's
 * @param most how many points are shown, at least two
 */
public record FrontierReport(Frontier frontier, List<FrontierPoint> others, int most) {
    /** Most points that may be shown: as many as there are letters. */
    public static final int MOST = 26;

    private static final int WIDTH = 98;
    private static final int[] WIDTHS = {10, 17, 17, 13, 15, 11};

    /** Copies the list. */
    public FrontierReport {
        others = List.copyOf(others);
    }

    /**
     * The points that are shown.
     *
     * @return from the least purge to the least lateness, the first called A
     */
    public List<FrontierPoint> shown() {
        return frontier.bends(most).stream().map(frontier.points()::get).toList();
    }

    /**
     * The letter of a point that is shown.
     *
     * @param number from 0
     * @return A, B ...
     */
    public static String letter(int number) {
        return String.valueOf((char) ('A' + number));
    }

    /**
     * The table and what it says.
     *
     * @param ink what the screen can show
     * @return lines without line breaks
     */
    public List<String> lines(Ink ink) {
        List<String> lines = new ArrayList<>();
        List<FrontierPoint> shown = shown();
        lines.add(ink.title(heading()));
        Wrapped.lines(meaning(), "", WIDTH).forEach(line -> lines.add(ink.faint(line)));
        lines.add("");
        lines.add(ink.strong(
                row("", "purge kg", "late spool-days", "kg a spool-day", "late orders", "days past due", "cost")));
        for (int i = 0; i < shown.size(); i++) {
            String price = i == 0 ? "" : price(shown.get(i).kgPerSpoolDay(shown.get(i - 1)));
            lines.add(row(letter(i), shown.get(i), price));
        }
        others.forEach(other -> lines.add(row(other.plan().name(), other, "")));
        lines.add("");
        said().forEach(sentence -> lines.addAll(Wrapped.lines(sentence, "", WIDTH)));
        lines.add("");
        return lines;
    }

    private String heading() {
        Plant plant = shown().get(0).plan().book().plant();
        return plant.name() + ": purge against lateness, "
                + plant.book().orders().size() + " orders on " + plant.lines().size() + " lines";
    }

    private String meaning() {
        double reserveH = shown().get(0).plan().book().weights().reserveH();
        String sure = frontier.isExact()
                ? "proved: no plan is better in one and no worse in the other"
                : "found by search; plans may be missing";
        return frontier.points().size() + " plans, " + sure + ". Late spool-days: times the order's weight, from "
                + Figures.shown(reserveH, 0)
                + " h before it is due; days past due: spool-days after it is due, without weight."
                + " Plans later than the worst of the dispatch rules below are left out.";
    }

    private static String row(String name, FrontierPoint point, String price) {
        return row(
                name,
                Figures.shown(point.purgeKg(), 1),
                Figures.shown(point.lateSpoolDays(), 1),
                price,
                Integer.toString(point.plan().lateOrders()),
                Figures.shown(point.plan().lateSpoolDays(), 1),
                Figures.shown(point.plan().timed().cost(), 0));
    }

    private static String row(String name, String... cells) {
        StringBuilder row = new StringBuilder(Cell.left(name, 16));
        for (int i = 0; i < cells.length; i++) {
            row.append(Cell.right(cells[i], WIDTHS[i]));
        }
        return row.toString().stripTrailing();
    }

    /** Three digits, as prices range over orders of magnitude. */
    private static String price(double kg) {
        BigDecimal rounded = new BigDecimal(kg).round(new MathContext(3));
        return Figures.shown(rounded.doubleValue(), Math.max(0, rounded.scale()));
    }

    /**
     * What the points say.
     *
     * @return sentences for a planner
     */
    List<String> said() {
        List<FrontierPoint> all = frontier.points();
        if (all.size() == 1) {
            return List.of("One plan has both the least purge and the least lateness: promptness costs nothing.");
        }
        FrontierPoint knee = all.get(frontier.knee());
        FrontierPoint first = all.get(0);
        FrontierPoint last = all.get(all.size() - 1);
        List<String> sentences = new ArrayList<>();
        if (knee != first && knee != last) {
            sentences.add(step(first, knee));
            sentences.add(step(knee, last));
        } else {
            sentences.add(step(first, last));
        }
        return sentences;
    }

    private String step(FrontierPoint from, FrontierPoint to) {
        return name(from) + " to " + name(to) + ": from " + Figures.shown(from.lateSpoolDays(), 1) + " to "
                + Figures.shown(to.lateSpoolDays(), 1) + " late spool-days costs "
                + Figures.shown(to.purgeKg() - from.purgeKg(), 1) + " kg more purge: " + price(to.kgPerSpoolDay(from))
                + " kg per spool-day.";
    }

    private String name(FrontierPoint point) {
        int shown = shown().indexOf(point);
        return shown < 0 ? "the knee" : letter(shown);
    }

    /**
     * The points in the simulator.
     *
     * @param ink what the screen can show
     * @param outcomes shape {@code [point shown][replication]}
     * @return lines without line breaks
     */
    public List<String> simulated(Ink ink, List<List<PlanOutcome>> outcomes) {
        List<String> lines = new ArrayList<>();
        Cell cell = new Cell(ink);
        lines.add(ink.strong("Simulated, " + outcomes.get(0).size() + " replications on the same random numbers"));
        lines.add(ink.strong(Cell.left("", 6)
                + Cell.right("purge kg", 16)
                + Cell.right("spool-days late", 20)
                + Cell.right("orders late", 16)
                + Cell.right("cost", 20)));
        for (int i = 0; i < outcomes.size(); i++) {
            PlanTrial.Contender point = new PlanTrial.Contender(letter(i), outcomes.get(i));
            lines.add(Cell.left(letter(i), 6)
                    + Cell.right(cell.text(interval(point.values(PlanOutcome::purgeKg)), 0), 16)
                    + Cell.right(cell.text(interval(point.values(PlanOutcome::lateSpoolDays)), 0), 20)
                    + Cell.right(cell.text(interval(point.values(PlanOutcome::lateOrders)), 1), 16)
                    + Cell.right(cell.text(interval(point.values(PlanOutcome::cost)), 0), 20));
        }
        lines.add("");
        return lines;
    }

    private static Interval interval(double[] values) {
        return Interval.of(values, Interval.USUAL_LEVEL);
    }
}
