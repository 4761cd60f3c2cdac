package spoolyard.analysis.cli;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import picocli.CommandLine.Option;
import spoolyard.analysis.buffer.Loss;
import spoolyard.analysis.buffer.PayBack;
import spoolyard.analysis.buffer.SeenLosses;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.theory.CapitalRecovery;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;

/** What a metre of accumulator costs. */
final class PayBackOptions {
    private static final double MOST_YEARS = 100;
    private static final int MOST_INTEREST_PCT = 50;

    @Option(
            names = "--metre-price",
            paramLabel = "MONEY",
            description = "Price of a metre of accumulator of one strand, in the currency of the costs: shows what each"
                    + " capacity is worth a year against the present one.")
    private Double metrePrice;

    @Option(
            names = "--years",
            paramLabel = "N",
            defaultValue = "5",
            description = "Years that metres last. Default: ${DEFAULT-VALUE}.")
    private double years;

    @Option(
            names = "--interest",
            paramLabel = "PERCENT",
            defaultValue = "0",
            description = "Interest a year on what metres cost, %%. Default: ${DEFAULT-VALUE}, an even write-off.")
    private double interestPct;

    /**
     * Checks them.
     *
     * @param plant the plant
     * @throws InputException if they make no sense for it
     */
    void check(Plant plant) throws InputException {
        if (metrePrice == null) {
            return;
        }
        String given = "--metre-price = " + metrePrice;
        Requirements.require(metrePrice >= 0 && metrePrice < Double.POSITIVE_INFINITY, given, "Must be >= 0.");
        Requirements.require(years > 0 && years <= MOST_YEARS, "--years = " + years, "Must be above 0, 100 at most.");
        Requirements.require(
                interestPct >= 0 && interestPct <= MOST_INTEREST_PCT,
                "--interest = " + interestPct,
                "Must be from 0 to " + MOST_INTEREST_PCT + ".");
        boolean isPriced = plant.economy().prices().isPresent();
        Requirements.require(isPriced, given, "Must not ask for money: the scenario has no costs.");
    }

    /**
     * Values capacities.
     *
     * @param plant the plant
     * @param line the line
     * @param capacitiesM capacities, the present one among them
     * @param losses observes
     * @param replications how many
     * @return net value a year by capacity; empty if nobody asked
     */
    Map<Double, Interval> worth(Plant plant, Line line, Set<Double> capacitiesM, SeenLosses losses, int replications) {
        Map<Double, Interval> worth = new TreeMap<>();
        if (metrePrice == null) {
            return worth;
        }
        PayBack payBack =
                new PayBack(metrePrice, CapitalRecovery.factor(interestPct / 100, years), line, plant.horizonTicks());
        List<Loss> now = losses.at(line.accumulator().capacityM(), replications);
        for (double capacityM : capacitiesM) {
            worth.put(capacityM, payBack.netPerYear(now, losses.at(capacityM, replications), capacityM));
        }
        return worth;
    }
}
