package spoolyard.analysis.bottleneck;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.experiment.Progress;
import spoolyard.analysis.experiment.Replicator;
import spoolyard.analysis.experiment.Simultaneous;
import spoolyard.analysis.experiment.TwoLevelDesign;
import spoolyard.core.plant.Plant;

/**
 * Main effects of factors on a plant by a two-level design. Every run of the design sees the same replications on common
 * random numbers, so each replication gives one estimate of each effect, and the replications an interval that asks for no
 * equal variances. The intervals of one measure hold jointly over all factors.
 */
public final class Screening {
    private final TwoLevelDesign design;
    private final List<Plant> plants;

    /**
     * Prepares a screening.
     *
     * @param design the design
     * @param plants one a run of the design
     */
    public Screening(TwoLevelDesign design, List<Plant> plants) {
        this.design = design;
        this.plants = List.copyOf(plants);
    }

    /**
     * Effects of one factor from its low to its high level. Immutable.
     *
     * @param factor number of the factor, from 0
     * @param goodPerWeek on good spools a week
     * @param packedPerWeek on packed spools a week
     * @param costPerSpool on the cost of a good spool, money; without values where nothing is priced
     */
    public record Effects(int factor, Interval goodPerWeek, Interval packedPerWeek, Interval costPerSpool) {}

    /**
     * Runs all plants.
     *
     * @param simulator makes the replications of a plant
     * @param replications replications of each plant, {@code >= 2}
     * @param threads how many at once, {@code >= 1}
     * @param progress hears of each replication of all plants
     * @return one a factor, in their order
     */
    public List<Effects> run(Function<Plant, Replicator> simulator, int replications, int threads, Progress progress) {
        List<List<Outcome>> outcomes = Outcome.ofEach(plants, simulator, threads, replications, progress);
        List<Effects> effects = new ArrayList<>();
        for (int factor = 0; factor < design.factors(); factor++) {
            effects.add(new Effects(
                    factor,
                    effect(factor, outcomes, Outcome::goodPerWeek),
                    effect(factor, outcomes, Outcome::packedPerWeek),
                    effect(factor, outcomes, Outcome::costPerSpool)));
        }
        return effects;
    }

    private Interval effect(int factor, List<List<Outcome>> outcomes, ToDoubleFunction<Outcome> value) {
        double[] byReplication = outcomes.stream()
                .mapToDouble(runs ->
                        design.effect(factor, runs.stream().mapToDouble(value).toArray()))
                .toArray();
        return Interval.of(byReplication, new Simultaneous(Interval.USUAL_LEVEL, design.factors()).eachLevel());
    }
}
