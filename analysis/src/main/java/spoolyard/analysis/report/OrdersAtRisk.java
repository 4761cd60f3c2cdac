package spoolyard.analysis.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.experiment.Proportion;
import spoolyard.core.plant.Order;

/**
 * How probable it is that each order is late by a plan, and by another. Immutable.
 *
 * @param orders the orders, in book order
 * @param planned the plan
 * @param other what it is compared with: today's order, or the plan before a change
 * @param clock the plant's clock
 */
public record OrdersAtRisk(
        List<Order> orders, PlanTrial.Contender planned, PlanTrial.Contender other, PlantClock clock) {
    /** Name of the table in a folder. */
    public static final String FILE = "orders_at_risk.csv";

    private static final double AT_RISK = 0.05;
    private static final int MOST = 12;

    /** Copies the list. */
    public OrdersAtRisk {
        orders = List.copyOf(orders);
    }

    /**
     * The most probable ones.
     *
     * @param ink what the screen can show
     * @return lines without line breaks
     */
    public List<String> lines(Ink ink) {
        List<Integer> risky = IntStream.range(0, orders.size())
                .boxed()
                .filter(order -> late(planned, order).share() >= AT_RISK)
                .sorted(Comparator.comparingDouble(
                        order -> -late(planned, order).share()))
                .toList();
        int replications = planned.outcomes().size();
        int least = leastAtRisk(replications);
        if (risky.isEmpty()) {
            String any = least == 1 ? "any" : least + " or more";
            return List.of("No order is late in " + any + " of " + replications + " replications.", "");
        }
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong("Orders at risk: " + risky.size() + " of " + orders.size() + " late in " + least
                + " or more of " + replications + " replications"));
        lines.add(ink.faint("Share of the replications, with the 95 % interval of Clopper and Pearson 1934"));
        risky.stream().limit(MOST).forEach(order -> lines.add(row(order)));
        if (risky.size() > MOST) {
            lines.add("  and " + (risky.size() - MOST) + " more");
        }
        lines.add("");
        return lines;
    }

    /** The fewest replications that are a share at risk. */
    private static int leastAtRisk(int replications) {
        int least = 1;
        while (least / (double) replications < AT_RISK) {
            least++;
        }
        return least;
    }

    private String row(int order) {
        Proportion late = late(planned, order);
        return "  " + Cell.left(orders.get(order).id(), 10)
                + Cell.left(orders.get(order).product().label(), 18) + "due "
                + clock.minute(orders.get(order).dueTick())
                + Cell.right(percent(late.share()) + " %", 8)
                + Cell.right("(" + percent(late.low()) + " to " + percent(late.high()) + " %)", 17)
                + Cell.right(other.name() + " " + percent(late(other, order).share()) + " %", 21);
    }

    private static String percent(double share) {
        return Figures.shown(100 * share, 0);
    }

    private static Proportion late(PlanTrial.Contender plan, int order) {
        List<PlanOutcome> outcomes = plan.outcomes();
        long count = outcomes.stream().filter(each -> each.isLate().get(order)).count();
        return new Proportion((int) count, outcomes.size(), Interval.USUAL_LEVEL);
    }

    /**
     * All orders, as CSV.
     *
     * @return one row an order, in book order, with a header
     */
    public String csv() {
        StringBuilder text = new StringBuilder();
        try {
            CsvTable.FORMAT.printRecord(
                    text,
                    "order_id",
                    "due_local",
                    "replications",
                    "late_share",
                    "late_share_low",
                    "late_share_high",
                    "other_late_share",
                    "other_late_share_low",
                    "other_late_share_high");
            for (int order = 0; order < orders.size(); order++) {
                CsvTable.FORMAT.printRecord(text, cells(order).toArray());
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    private List<String> cells(int order) {
        Proportion plan = late(planned, order);
        Proportion now = late(other, order);
        return List.of(
                orders.get(order).id(),
                clock.minute(orders.get(order).dueTick()),
                Integer.toString(plan.trials()),
                Figures.cell(plan.share()),
                Figures.cell(plan.low()),
                Figures.cell(plan.high()),
                Figures.cell(now.share()),
                Figures.cell(now.low()),
                Figures.cell(now.high()));
    }
}
