package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import spoolyard.analysis.experiment.Interval;

/**
 * A plan in the simulator beside others, on the same random numbers. Immutable.
 *
 * @param contenders the plan, then what it is compared with, today's order first; as many replications of each
 */
public record PlanTrial(List<Contender> contenders) {
    private static final int GAP = 1;
    private static final int NAME = 17;
    private static final int FIRST = 15;
    private static final int VALUE = 16;
    private static final int DIFFERENCE = 17;

    /** Copies the list. */
    public PlanTrial {
        contenders = List.copyOf(contenders);
    }

    /**
     * One of them.
     *
     * @param name what it is called
     * @param outcomes one a replication
     */
    public record Contender(String name, List<PlanOutcome> outcomes) {
        /** Copies the list. */
        public Contender {
            outcomes = List.copyOf(outcomes);
        }

        double[] values(ToDoubleFunction<PlanOutcome> figure) {
            return outcomes.stream().mapToDouble(figure).toArray();
        }
    }

    /**
     * The comparison.
     *
     * @param ink what the screen can show
     * @return lines without line breaks
     */
    public List<String> lines(Ink ink) {
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong(
                "Simulated, " + contenders.get(0).outcomes().size() + " replications on the same random numbers"));
        List<List<String>> rows = new ArrayList<>();
        rows.add(head());
        rows.add(row(ink, "cost", 0, PlanOutcome::cost));
        rows.add(row(ink, "purge kg", 0, PlanOutcome::purgeKg));
        rows.add(row(ink, "changeover h", 1, PlanOutcome::changeoverH));
        rows.add(row(ink, "good spools", 0, PlanOutcome::goodSpools));
        rows.add(row(ink, "late orders", 1, PlanOutcome::lateOrders));
        rows.add(row(ink, "late spool-days", 0, PlanOutcome::lateSpoolDays));
        rows.add(row(ink, "not packed at end", 1, PlanOutcome::unpackedOrders));
        List<String> shown = aligned(rows);
        lines.add(ink.strong(shown.get(0)));
        lines.addAll(shown.subList(1, shown.size()));
        lines.add("");
        return lines;
    }

    private List<String> head() {
        List<String> head = new ArrayList<>(List.of("", contenders.get(0).name()));
        contenders.stream().skip(1).forEach(other -> head.addAll(List.of(other.name(), "difference")));
        return head;
    }

    private List<String> row(Ink ink, String name, int decimals, ToDoubleFunction<PlanOutcome> figure) {
        Cell cell = new Cell(ink);
        double[] plan = contenders.get(0).values(figure);
        List<String> row = new ArrayList<>(List.of(name, cell.text(interval(plan), decimals)));
        for (Contender other : contenders.subList(1, contenders.size())) {
            double[] values = other.values(figure);
            double[] less = IntStream.range(0, plan.length)
                    .mapToDouble(i -> plan[i] - values[i])
                    .toArray();
            row.add(cell.text(interval(values), decimals));
            row.add(cell.text(interval(less), decimals));
        }
        return row;
    }

    /** Columns are wider than usual where their numbers need it. */
    private static List<String> aligned(List<List<String>> rows) {
        int[] width = new int[rows.get(0).size()];
        for (int column = 0; column < width.length; column++) {
            int each = column;
            int longest =
                    rows.stream().mapToInt(row -> row.get(each).length()).max().orElse(0);
            width[column] = Math.max(longest + (column == 0 ? 0 : GAP), usual(column));
        }
        return rows.stream().map(row -> aligned(row, width)).toList();
    }

    private static int usual(int column) {
        int others = column % 2 == 0 ? VALUE : DIFFERENCE;
        return column == 0 ? NAME : column == 1 ? FIRST : others;
    }

    private static String aligned(List<String> row, int[] width) {
        StringBuilder line = new StringBuilder(Cell.left(row.get(0), width[0]));
        for (int column = 1; column < width.length; column++) {
            line.append(Cell.right(row.get(column), width[column]));
        }
        return line.toString();
    }

    private static Interval interval(double[] values) {
        return Interval.of(values, Interval.USUAL_LEVEL);
    }
}
