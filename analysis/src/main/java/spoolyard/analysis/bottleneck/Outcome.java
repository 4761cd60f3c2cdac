package spoolyard.analysis.bottleneck;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import spoolyard.analysis.experiment.CommonNumbers;
import spoolyard.analysis.experiment.Progress;
import spoolyard.analysis.experiment.Replicator;
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

    /**
     * Of several plants with the same luck.
     *
     * @return shape {@code [replication][plant]}
     */
    static List<List<Outcome>> ofEach(
            List<Plant> plants,
            Function<Plant, Replicator> simulator,
            int threads,
            int replications,
            Progress progress) {
        List<Replicator> replicators = plants.stream().map(simulator).toList();
        return new CommonNumbers<>(
                        (plant, replication) -> Outcome.of(
                                plants.get(plant), replicators.get(plant).replicate(replication)),
                        threads)
                .run(plants.size(), 0, replications, progress);
    }

    private static Optional<EnergyAccount> energy(Plant plant, RunResult run) {
        return plant.economy().energy().map(use -> EnergyAccount.of(use, run));
    }
}
