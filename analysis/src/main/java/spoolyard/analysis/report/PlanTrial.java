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
        StringBuilder head = new StringBuilder(
                Cell.left("", NAME) + Cell.right(contenders.get(0).name(), FIRST));
        contenders.stream()
                .skip(1)
                .forEach(other -> head.append(Cell.right(other.name(), VALUE) + Cell.right("difference", DIFFERENCE)));
        lines.add(ink.strong(head.toString()));
        lines.add(row(ink, "cost", 0, PlanOutcome::cost));
        lines.add(row(ink, "purge kg", 0, PlanOutcome::purgeKg));
        lines.add(row(ink, "changeover h", 1, PlanOutcome::changeoverH));
        lines.add(row(ink, "good spools", 0, PlanOutcome::goodSpools));
        lines.add(row(ink, "late orders", 1, PlanOutcome::lateOrders));
        lines.add(row(ink, "late spool-days", 0, PlanOutcome::lateSpoolDays));
        lines.add(row(ink, "not packed at end", 1, PlanOutcome::unpackedOrders));
        lines.add("");
        return lines;
    }

    private String row(Ink ink, String name, int decimals, ToDoubleFunction<PlanOutcome> figure) {
        Cell cell = new Cell(ink);
        double[] plan = contenders.get(0).values(figure);
        StringBuilder row = new StringBuilder(Cell.left(name, NAME));
        row.append(Cell.right(cell.text(interval(plan), decimals), FIRST));
        for (Contender other : contenders.subList(1, contenders.size())) {
            double[] values = other.values(figure);
            double[] less = IntStream.range(0, plan.length)
                    .mapToDouble(i -> plan[i] - values[i])
                    .toArray();
            row.append(Cell.right(cell.text(interval(values), decimals), VALUE));
            row.append(Cell.right(cell.text(interval(less), decimals), DIFFERENCE));
        }
        return row.toString();
    }

    private static Interval interval(double[] values) {
        return Interval.of(values, Interval.USUAL_LEVEL);
    }
}
