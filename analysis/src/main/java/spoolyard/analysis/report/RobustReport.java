package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.schedule.Candidate;

/**
 * The cheapest plans on paper, ranked by what they cost when they are simulated. Immutable.
 *
 * @param candidates at least two, the cheapest on paper first
 * @param outcomes shape {@code [candidate][replication]}, with common random numbers, at least two replications
 */
public record RobustReport(List<Candidate> candidates, List<List<PlanOutcome>> outcomes) {
    /** Most plans: as many as there are letters. */
    public static final int MOST = 26;

    private static final int WIDTH = 98;

    /** Copies the lists. */
    public RobustReport {
        candidates = List.copyOf(candidates);
        outcomes = List.copyOf(outcomes);
    }

    /**
     * The plan that is cheapest when simulated.
     *
     * @return number of the candidate
     */
    public int best() {
        return ranking().best();
    }

    private RobustRanking ranking() {
        return new RobustRanking(outcomes.stream()
                .map(each -> each.stream().mapToDouble(PlanOutcome::cost).toArray())
                .toList());
    }

    /**
     * The ranking and what can be said of it.
     *
     * @param ink what the screen can show
     * @return lines without line breaks
     */
    public List<String> lines(Ink ink) {
        RobustRanking ranking = ranking();
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong("Robust: " + candidates.size() + " clearly different plans found, "
                + outcomes.get(0).size() + " replications each on the same random numbers"));
        lines.add(ink.strong(row(
                "",
                "searched with",
                "differs",
                "planned",
                "simulated cost",
                "above best",
                "purge kg",
                "sp.-days late")));
        ranking.order().forEach(plan -> lines.add(row(ink, ranking, plan)));
        lines.addAll(Wrapped.lines(said(ranking), "", WIDTH));
        lines.add("");
        return lines;
    }

    private String row(Ink ink, RobustRanking ranking, int plan) {
        Cell cell = new Cell(ink);
        Candidate candidate = candidates.get(plan);
        String above = plan == ranking.best()
                ? ""
                : cell.text(ranking.difference(ranking.best(), plan).interval(), 0);
        String differs = plan == 0 ? "" : Figures.shown(100 * candidate.distance(candidates.get(0)), 0) + " %";
        return row(
                letter(plan),
                candidate.how(),
                differs,
                Figures.shown(candidate.plan().timed().cost(), 0),
                cell.text(ranking.mean(plan), 0),
                above,
                Figures.shown(mean(plan, PlanOutcome::purgeKg), 0),
                Figures.shown(mean(plan, PlanOutcome::lateSpoolDays), 0));
    }

    private static String row(String letter, String how, String... cells) {
        StringBuilder row = new StringBuilder(Cell.left(letter, 3) + Cell.left(how, 15));
        int[] widths = {9, 10, 18, 18, 10, 15};
        for (int i = 0; i < cells.length; i++) {
            row.append(Cell.right(cells[i], widths[i]));
        }
        return row.toString();
    }

    private double mean(int plan, ToDoubleFunction<PlanOutcome> figure) {
        double[] values = outcomes.get(plan).stream().mapToDouble(figure).toArray();
        return Interval.of(values, Interval.USUAL_LEVEL).mean();
    }

    private static String letter(int plan) {
        return String.valueOf((char) ('A' + plan));
    }

    private String said(RobustRanking ranking) {
        List<Integer> perhaps = ranking.perhapsBest();
        String sure = perhaps.size() == 1
                ? "is the cheapest with 95 % confidence"
                : "is the cheapest of these replications; with 95 % confidence the cheapest is one of "
                        + perhaps.stream().map(RobustReport::letter).collect(Collectors.joining(", "))
                        + ", which more --replications would part";
        return "Plan " + letter(ranking.best()) + " " + sure + " (all paired differences hold at once, by Bonferroni). "
                + turned(ranking)
                + " It is the plan shown; the cost simulated is that of stops, waits and packing as they come,"
                + " and of lateness from the due date itself.";
    }

    private static String turned(RobustRanking ranking) {
        int turned = ranking.turnedPairs();
        return turned == 0
                ? "The plans stand in the order in which they were planned."
                : turned + " of " + ranking.pairs() + " pairs of plans stand the other way round than planned.";
    }
}
