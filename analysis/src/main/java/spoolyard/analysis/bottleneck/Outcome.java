package spoolyard.analysis.bottleneck;

import java.util.Optional;
import spoolyard.core.account.CostAccount;
import spoolyard.core.account.CostPart;
import spoolyard.core.account.EnergyAccount;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Prices;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.RunResult;

/**
 * What is kept of a replication to compare it with another. Immutable.
 *
 * @param goodPerWeek good spools a week
 * @param packedPerWeek packed spools a week
 * @param costPerSpool cost of a good spool; not a number where nothing is priced
 * @param contributionPerWeek contribution of the good kilograms less labour a week; not a number where nobody says what
 *     a kilogram brings
 */
record Outcome(double goodPerWeek, double packedPerWeek, double costPerSpool, double contributionPerWeek) {
    static Outcome of(Plant plant, RunResult run) {
        double weeks = Ticks.toHours(run.horizonTicks()) / 168;
        long good = run.lines().stream().mapToLong(LineResult::goodSpools).sum();
        Optional<Prices> prices = plant.economy().prices();
        Optional<CostAccount> costs = prices.map(known -> CostAccount.of(known, energy(plant, run), run));
        return new Outcome(
                good / weeks,
                run.flow().packed() / weeks,
                costs.map(account -> account.perGoodSpool(account.total())).orElse(Double.NaN),
                costs.map(account ->
                                (Contribution.of(plant, run) - account.byPart().get(CostPart.LABOUR)) / weeks)
                        .orElse(Double.NaN));
    }

    private static Optional<EnergyAccount> energy(Plant plant, RunResult run) {
        return plant.economy().energy().map(use -> EnergyAccount.of(use, run));
    }
}
