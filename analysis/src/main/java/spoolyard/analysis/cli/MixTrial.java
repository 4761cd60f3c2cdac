package spoolyard.analysis.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import spoolyard.analysis.buffer.Loss;
import spoolyard.analysis.buffer.SwapScores;
import spoolyard.analysis.experiment.CommonNumbers;
import spoolyard.analysis.experiment.Replicator;
import spoolyard.analysis.experiment.Trial;
import spoolyard.analysis.invest.MixLoss;
import spoolyard.core.plant.Plant;
import spoolyard.core.process.PlantLaws;
import spoolyard.core.process.PlantRun;
import spoolyard.core.random.InverseTables;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.RunResult;

/**
 * Runs replications of mixes. Immutable.
 *
 * @param simulator makes the replications
 * @param experiment seed and threads
 * @param lines places of the lines that are held against the target
 * @param isRare whether their overflows are expected rather than counted
 */
record MixTrial(Simulator simulator, ExperimentOptions experiment, List<Integer> lines, boolean isRare) {
    /**
     * Observes what each mix loses.
     *
     * @param plants the plant of each mix
     * @return runs them with the same luck
     */
    CommonNumbers<MixLoss> numbers(List<Plant> plants) {
        List<IntFunction<MixLoss>> losses =
                plants.stream().map(isRare ? this::expected : this::counted).toList();
        Trial<MixLoss> trial = (mix, replication) -> losses.get(mix).apply(replication);
        return new CommonNumbers<>(trial, experiment.threads());
    }

    private IntFunction<MixLoss> counted(Plant plant) {
        Replicator replicator = simulator.of(plant, experiment.seed(), EventLog.SILENT);
        return replication -> {
            RunResult run = replicator.replicate(replication);
            List<Loss> held =
                    lines.stream().map(line -> Loss.of(plant, line, run)).toList();
            return MixLoss.of(plant, Loss.together(held), run);
        };
    }

    private IntFunction<MixLoss> expected(Plant plant) {
        InverseTables tables = PlantLaws.tables(plant);
        return replication -> {
            List<SwapScores> scores = lines.stream()
                    .map(line -> new SwapScores(plant, plant.lines().get(line)))
                    .toList();
            RunResult run = new PlantRun(
                            plant,
                            tables,
                            experiment.seed(),
                            replication,
                            EventLog.SILENT,
                            swap -> scores.forEach(each -> each.tell(swap)))
                    .run();
            List<Loss> held = new ArrayList<>();
            for (int place = 0; place < lines.size(); place++) {
                held.add(scores.get(place).of(Loss.of(plant, lines.get(place), run)));
            }
            return MixLoss.of(plant, Loss.together(held), run);
        };
    }
}
