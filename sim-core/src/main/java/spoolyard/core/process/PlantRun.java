package spoolyard.core.process;

import spoolyard.core.plant.Plant;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.RunResult;

/**
 * One replication of a plant: one object, one thread, used once. The same plant, seed and replication give bit-identical
 * results.
 */
public final class PlantRun {
    private final Plant plant;
    private final long masterSeed;
    private final int replication;
    private final EventLog log;

    /**
     * Prepares a run.
     *
     * @param plant the plant
     * @param masterSeed seed of the experiment, any value
     * @param replication number of the replication, {@code >= 0}
     * @param log where to tell events, {@link EventLog#SILENT} for nowhere
     */
    public PlantRun(Plant plant, long masterSeed, int replication, EventLog log) {
        this.plant = plant;
        this.masterSeed = masterSeed;
        this.replication = replication;
        this.log = log;
    }

    /**
     * Runs to the horizon.
     *
     * @return the results
     */
    public RunResult run() {
        throw new IllegalStateException(plant.name() + masterSeed + replication + log.isOn());
    }
}
