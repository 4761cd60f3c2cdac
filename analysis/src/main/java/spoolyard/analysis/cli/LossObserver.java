package spoolyard.analysis.cli;

import java.util.function.IntFunction;
import spoolyard.analysis.buffer.Loss;
import spoolyard.analysis.buffer.SwapScores;
import spoolyard.analysis.experiment.Replicator;
import spoolyard.core.plant.Plant;
import spoolyard.core.process.PlantLaws;
import spoolyard.core.process.PlantRun;
import spoolyard.core.random.InverseTables;
import spoolyard.core.record.EventLog;

/**
 * Observes what a line loses at full accumulators. Immutable.
 *
 * @param simulator makes the replications
 * @param seed master seed
 * @param line place of the line among those of the plant
 * @param isRare whether overflows are expected rather than counted
 */
record LossObserver(Simulator simulator, long seed, int line, boolean isRare) {
    private static final long ENOUGH_NS = 1_000_000_000;
    private static final int MOST_PAIRS = 500;

    /**
     * Of a plant.
     *
     * @param plant the plant
     * @return what the line loses in a replication
     */
    IntFunction<Loss> of(Plant plant) {
        if (isRare) {
            InverseTables tables = PlantLaws.tables(plant);
            return replication -> expected(plant, tables, replication);
        }
        Replicator replicator = simulator.of(plant, seed, EventLog.SILENT);
        return replication -> Loss.of(plant, line, replicator.replicate(replication));
    }

    private Loss expected(Plant plant, InverseTables tables, int replication) {
        SwapScores scores = new SwapScores(plant, plant.lines().get(line));
        PlantRun run = new PlantRun(plant, tables, seed, replication, EventLog.SILENT, scores);
        return scores.of(Loss.of(plant, line, run.run()));
    }

    /**
     * Measures what expecting costs in time, alternating replications with and without.
     *
     * @param plant the plant
     * @param pairs how many of each at least, {@code >= 1}, more where that takes less than two seconds; one more of each goes
     *     before to warm up
     * @return time with over time without
     */
    double timeRatio(Plant plant, int pairs) {
        IntFunction<Loss> with = new LossObserver(simulator, seed, line, true).of(plant);
        InverseTables tables = PlantLaws.tables(plant);
        IntFunction<Loss> without = replication ->
                Loss.of(plant, line, new PlantRun(plant, tables, seed, replication, EventLog.SILENT).run());
        timeNs(with, 0);
        timeNs(without, 0);
        long withNs = 0;
        long withoutNs = 0;
        for (int pair = 0; pair < pairs || withNs < ENOUGH_NS && pair < MOST_PAIRS; pair++) {
            withNs += timeNs(with, pair);
            withoutNs += timeNs(without, pair);
        }
        return withNs / (double) withoutNs;
    }

    private static long timeNs(IntFunction<Loss> observed, int replication) {
        long startNs = System.nanoTime();
        observed.apply(replication);
        return System.nanoTime() - startNs;
    }
}
