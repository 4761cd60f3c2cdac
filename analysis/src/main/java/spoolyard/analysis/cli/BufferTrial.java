package spoolyard.analysis.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import spoolyard.analysis.buffer.Loss;
import spoolyard.analysis.buffer.LossTrial;
import spoolyard.analysis.experiment.Experiment;
import spoolyard.analysis.experiment.Progress;
import spoolyard.analysis.experiment.Replicator;
import spoolyard.core.plant.Plant;
import spoolyard.core.record.EventLog;
import spoolyard.scenarios.fault.ScenarioException;

/** Runs the scenario with an accumulator of another capacity. For one thread. */
final class BufferTrial implements LossTrial {
    private final Simulator simulator;
    private final long seed;
    private final int threads;
    private final Progress progress;
    private final int line;
    private final Map<Double, Plant> plants = new TreeMap<>();

    /**
     * Prepares to run.
     *
     * @param simulator makes the replications
     * @param seed master seed
     * @param threads replications at once
     * @param progress hears of each replication
     * @param line place of the line among those of the plant
     */
    BufferTrial(Simulator simulator, long seed, int threads, Progress progress, int line) {
        this.simulator = simulator;
        this.seed = seed;
        this.threads = threads;
        this.progress = progress;
        this.line = line;
    }

    /**
     * Reads the scenario with each capacity, before anything is run.
     *
     * @param scenario the scenario
     * @param lineName name of the line
     * @param capacitiesM the capacities, metres
     * @throws ScenarioException if one is out of its range
     */
    void read(ScenarioArgument scenario, String lineName, List<Double> capacitiesM) throws ScenarioException {
        for (double capacityM : capacitiesM) {
            String metres = BigDecimal.valueOf(capacityM).toPlainString();
            String name = lineName.replace("~", "~0").replace("/", "~1");
            plants.put(
                    capacityM,
                    scenario.readWith(List.of("/lines/" + name + "/accumulator=" + metres + " m"))
                            .plant());
        }
    }

    @Override
    public List<Loss> observe(double capacityM, int first, int count) {
        Plant plant = plants.get(capacityM);
        Replicator replicator = simulator.of(plant, seed, EventLog.SILENT);
        return new ArrayList<>(new Experiment(number -> replicator.replicate(first + number), count, threads)
                .run(run -> Loss.of(plant, line, run), progress));
    }
}
