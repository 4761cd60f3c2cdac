package spoolyard.analysis.buffer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import spoolyard.analysis.experiment.CommonNumbers;
import spoolyard.analysis.experiment.Progress;
import spoolyard.core.plant.Plant;
import spoolyard.core.process.PlantLaws;
import spoolyard.core.process.PlantRun;
import spoolyard.core.random.InverseTables;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.Swap;

/** Follows each swap of a line through replications of a plant. Immutable. */
public final class SwapStudy {
    private final Plant plant;
    private final String line;
    private final long masterSeed;
    private final InverseTables tables;

    /**
     * Prepares a study.
     *
     * @param plant the plant
     * @param line name of one of its lines
     * @param masterSeed seed of the experiment
     */
    public SwapStudy(Plant plant, String line, long masterSeed) {
        this.plant = plant;
        this.line = line;
        this.masterSeed = masterSeed;
        this.tables = PlantLaws.tables(plant);
    }

    /**
     * Runs replications.
     *
     * @param replications how many, {@code >= 1}
     * @param threads how many at once, {@code >= 1}
     * @param progress hears of each
     * @return every swap of the line, by replication, then as told
     */
    public List<SeenSwap> run(int replications, int threads, Progress progress) {
        CommonNumbers<List<Swap>> runs =
                new CommonNumbers<>((alone, replication) -> swaps(replication, EventLog.SILENT), threads);
        List<List<List<Swap>>> all = runs.run(1, 0, replications, progress);
        return IntStream.range(0, replications)
                .boxed()
                .flatMap(replication ->
                        all.get(replication).get(0).stream().map(swap -> new SeenSwap(replication, swap)))
                .toList();
    }

    /**
     * Tells of a swap with what everybody did.
     *
     * @param seen a swap that the study saw
     * @return the swap, with the people about it
     */
    public SwapStory explain(SeenSwap seen) {
        CrewWatch watch = new CrewWatch(plant.crew());
        swaps(seen.replication(), watch);
        return new SwapStory(seen, watch.stints());
    }

    /**
     * Overflows, the one that lost most first.
     *
     * @param swaps from {@link #run}
     * @return those in which the accumulator filled
     */
    public static List<SeenSwap> worstFirst(List<SeenSwap> swaps) {
        return swaps.stream()
                .filter(seen -> seen.swap().overflow().isPresent())
                .sorted(Comparator.comparingDouble(
                        (SeenSwap seen) -> -seen.swap().totalLostM()))
                .toList();
    }

    private List<Swap> swaps(int replication, EventLog log) {
        List<Swap> swaps = new ArrayList<>();
        new PlantRun(plant, tables, masterSeed, replication, log, swap -> {
                    if (swap.line().equals(line)) {
                        swaps.add(swap);
                    }
                })
                .run();
        return swaps;
    }

    /**
     * A swap and where it was seen.
     *
     * @param replication number of the replication
     * @param swap what happened
     */
    public record SeenSwap(int replication, Swap swap) {}
}
