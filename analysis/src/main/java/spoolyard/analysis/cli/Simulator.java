package spoolyard.analysis.cli;

import spoolyard.analysis.experiment.Replicator;
import spoolyard.core.plant.Plant;
import spoolyard.core.process.PlantRun;
import spoolyard.core.record.EventLog;

/** Makes the replications of a plant. */
@FunctionalInterface
interface Simulator {
    /** The real one. */
    Simulator REAL = (plant, masterSeed, firstLog) -> replication ->
            new PlantRun(plant, masterSeed, replication, replication == 0 ? firstLog : EventLog.SILENT).run();

    /**
     * The replications of a plant.
     *
     * @param plant the plant
     * @param masterSeed seed of the experiment
     * @param firstLog where the first replication tells its events
     * @return makes a replication
     */
    Replicator of(Plant plant, long masterSeed, EventLog firstLog);
}
