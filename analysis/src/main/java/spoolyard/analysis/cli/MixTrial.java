package spoolyard.analysis.cli;

import java.util.List;
import spoolyard.analysis.experiment.CommonNumbers;
import spoolyard.analysis.experiment.Replicator;
import spoolyard.analysis.experiment.Trial;
import spoolyard.analysis.invest.MixLoss;
import spoolyard.core.plant.Plant;
import spoolyard.core.record.EventLog;
import spoolyard.scenarios.Scenario;

/** Runs replications of mixes. */
final class MixTrial {
    private MixTrial() {}

    /**
     * Observes what each mix loses.
     *
     * @param scenarios the scenario of each mix
     * @param simulator makes the replications
     * @param experiment seed and threads
     * @param lines places of the lines that are held against the target
     * @return runs them with the same luck
     */
    static CommonNumbers<MixLoss> numbers(
            List<Scenario> scenarios, Simulator simulator, ExperimentOptions experiment, List<Integer> lines) {
        List<Plant> plants = scenarios.stream().map(Scenario::plant).toList();
        List<Replicator> replicators = plants.stream()
                .map(plant -> simulator.of(plant, experiment.seed(), EventLog.SILENT))
                .toList();
        Trial<MixLoss> trial = (mix, replication) ->
                MixLoss.of(plants.get(mix), lines, replicators.get(mix).replicate(replication));
        return new CommonNumbers<>(trial, experiment.threads());
    }
}
