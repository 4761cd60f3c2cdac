package spoolyard.analysis.bottleneck;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import spoolyard.analysis.experiment.CommonNumbers;
import spoolyard.analysis.experiment.Difference;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.experiment.Progress;
import spoolyard.analysis.experiment.Replicator;
import spoolyard.analysis.experiment.Simultaneous;
import spoolyard.core.plant.Plant;

/**
 * Measures what each relief brings: the same replications of the plant as it is and of the plant relieved, on common
 * random numbers, and the difference of each pair. The intervals of one measure hold jointly over all reliefs.
 */
public final class ReliefStudy {
    private final Function<Plant, Replicator> simulator;
    private final int replications;
    private final int threads;

    /**
     * Prepares a study.
     *
     * @param simulator makes the replications of a plant; the same number must mean the same random numbers for all
     * @param replications replications of each plant, {@code >= 2}
     * @param threads how many at once, {@code >= 1}
     * @throws IllegalArgumentException if there are too few replications for an interval
     */
    public ReliefStudy(Function<Plant, Replicator> simulator, int replications, int threads) {
        if (replications < 2) {
            throw new IllegalArgumentException("replications = " + replications + ". Must be >= 2 for an interval.");
        }
        this.simulator = simulator;
        this.replications = replications;
        this.threads = threads;
    }

    /**
     * Runs the plant as it is and each relief.
     *
     * @param plant the plant as it is
     * @param reliefs what to try, at least one
     * @param progress hears of each replication of all plants
     * @return one a relief, the most extra good spools first
     */
    public List<Gain> run(Plant plant, List<Relief> reliefs, Progress progress) {
        List<Plant> plants = new ArrayList<>(List.of(plant));
        reliefs.forEach(relief -> plants.add(relief.plant()));
        List<Replicator> replicators = plants.stream().map(simulator).toList();
        List<List<Outcome>> outcomes = new CommonNumbers<>(
                        (number, replication) -> Outcome.of(
                                plants.get(number), replicators.get(number).replicate(replication)),
                        threads)
                .run(plants.size(), 0, replications, progress);
        double level = new Simultaneous(Interval.USUAL_LEVEL, reliefs.size()).eachLevel();
        List<Gain> gains = new ArrayList<>();
        for (int i = 0; i < reliefs.size(); i++) {
            gains.add(gain(reliefs.get(i), new Pairs(outcomes, i + 1, level)));
        }
        gains.sort(Comparator.comparingDouble(
                gain -> -gain.goodPerWeek().interval().mean()));
        return gains;
    }

    private static Gain gain(Relief relief, Pairs pairs) {
        return new Gain(
                relief,
                pairs.difference(Outcome::goodPerWeek),
                pairs.difference(Outcome::packedPerWeek),
                pairs.difference(Outcome::costPerSpool),
                pairs.difference(Outcome::contributionPerWeek));
    }

    /** The replications of the plant as it is with those of one relief. */
    private record Pairs(List<List<Outcome>> outcomes, int alternative, double level) {
        Difference difference(ToDoubleFunction<Outcome> value) {
            return Difference.of(of(0, value), of(alternative, value), level);
        }

        private double[] of(int plant, ToDoubleFunction<Outcome> value) {
            return outcomes.stream()
                    .mapToDouble(replication -> value.applyAsDouble(replication.get(plant)))
                    .toArray();
        }
    }
}
