package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import spoolyard.analysis.experiment.Interval;
import spoolyard.core.plant.Plant;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ScrapCause;

/**
 * A plan in the simulator beside today's order, on the same random numbers. Immutable.
 *
 * @param planned replications of the plan
 * @param today as many replications of the plant as it is
 * @param orderIds ids of the orders, in book order
 */
public record PlanTrial(List<Outcome> planned, List<Outcome> today, List<String> orderIds) {
    private static final double AT_RISK = 0.05;
    private static final int MOST_AT_RISK = 12;

    /** Copies the lists. */
    public PlanTrial {
        planned = List.copyOf(planned);
        today = List.copyOf(today);
        orderIds = List.copyOf(orderIds);
    }

    /**
     * One replication.
     *
     * @param purgeKg purged for colour, polymer and approval, kg
     * @param goodSpools good spools of all lines
     * @param lateOrders orders late
     * @param lateSpoolDays spools times days late
     * @param isLate for each order, in book order, whether it is late
     */
    public record Outcome(
            double purgeKg, double goodSpools, double lateOrders, double lateSpoolDays, List<Boolean> isLate) {
        /** Copies the list. */
        public Outcome {
            isLate = List.copyOf(isLate);
        }

        /**
         * Reduces a replication.
         *
         * @param plant what was run
         * @param result what it told
         * @return the outcome
         */
        public static Outcome of(Plant plant, RunResult result) {
            List<Promise> promises = Promise.all(plant, result);
            double purgeKg = result.lines().stream()
                    .mapToDouble(line -> line.scrapKg().get(ScrapCause.COLOUR_PURGE)
                            + line.scrapKg().get(ScrapCause.POLYMER_PURGE)
                            + line.scrapKg().get(ScrapCause.APPROVAL))
                    .sum();
            return new Outcome(
                    purgeKg,
                    result.flow().made(),
                    Promise.lateOrders(promises),
                    Promise.lateSpoolDays(promises),
                    promises.stream().map(Promise::isLate).toList());
        }
    }

    /**
     * The comparison.
     *
     * @param ink what the screen can show
     * @param plan what the plan is called, up to 15 letters
     * @param other what it is compared with, up to 17 letters
     * @return lines without line breaks
     */
    public List<String> lines(Ink ink, String plan, String other) {
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong("Simulated, " + planned.size() + " replications on the same random numbers"));
        lines.add(ink.strong(
                Cell.left("", 20) + Cell.right(plan, 16) + Cell.right(other, 18) + Cell.right("difference", 20)));
        lines.add(row(ink, "purge kg", 0, Outcome::purgeKg));
        lines.add(row(ink, "good spools", 0, Outcome::goodSpools));
        lines.add(row(ink, "late orders", 1, Outcome::lateOrders));
        lines.add(row(ink, "late spool-days", 0, Outcome::lateSpoolDays));
        lines.add(atRisk());
        lines.add("");
        return lines;
    }

    private String row(Ink ink, String name, int decimals, ToDoubleFunction<Outcome> figure) {
        double[] ofPlan = planned.stream().mapToDouble(figure).toArray();
        double[] ofToday = today.stream().mapToDouble(figure).toArray();
        double[] difference = IntStream.range(0, ofPlan.length)
                .mapToDouble(i -> ofPlan[i] - ofToday[i])
                .toArray();
        Cell cell = new Cell(ink);
        return Cell.left(name, 20)
                + Cell.right(cell.text(interval(ofPlan), decimals), 16)
                + Cell.right(cell.text(interval(ofToday), decimals), 18)
                + Cell.right(cell.text(interval(difference), decimals), 20);
    }

    private static Interval interval(double[] values) {
        return Interval.of(values, Interval.USUAL_LEVEL);
    }

    private String atRisk() {
        List<Integer> risky = IntStream.range(0, orderIds.size())
                .filter(order -> probability(order) >= AT_RISK)
                .boxed()
                .sorted(Comparator.comparingDouble(order -> -probability(order)))
                .toList();
        if (risky.isEmpty()) {
            return "No order is late in one replication of twenty or more.";
        }
        List<String> shown = risky.stream()
                .limit(MOST_AT_RISK)
                .map(order -> orderIds.get(order) + " " + Figures.shown(100 * probability(order), 0) + " %")
                .toList();
        String more = risky.size() > MOST_AT_RISK ? " and " + (risky.size() - MOST_AT_RISK) + " more" : "";
        return "Orders at risk, with the share of replications in which they are late: " + String.join(", ", shown)
                + more + ".";
    }

    private double probability(int order) {
        return planned.stream().filter(outcome -> outcome.isLate().get(order)).count() / (double) planned.size();
    }
}
