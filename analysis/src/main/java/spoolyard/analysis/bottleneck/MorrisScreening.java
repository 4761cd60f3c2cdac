package spoolyard.analysis.bottleneck;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.hipparchus.stat.StatUtils;
import spoolyard.analysis.experiment.ElementaryEffects;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.experiment.MorrisDesign;
import spoolyard.analysis.experiment.Progress;
import spoolyard.analysis.experiment.Replicator;
import spoolyard.core.plant.Plant;

/**
 * Elementary effects of factors on a plant. Every point of the design sees the same replications on common random
 * numbers; an effect is that of the whole range, as if it were straight, from the mean over the replications.
 */
public final class MorrisScreening {
    private final MorrisDesign design;
    private final List<Plant> plants;
    private final List<List<Double>> shares;
    private final long seed;

    /**
     * Prepares a screening.
     *
     * @param design the design
     * @param plants one a point of the design
     * @param shares one a point: share of its range at which each factor really is, which rounding may have moved
     * @param seed for the bootstrap
     */
    public MorrisScreening(MorrisDesign design, List<Plant> plants, List<List<Double>> shares, long seed) {
        this.design = design;
        this.plants = List.copyOf(plants);
        this.shares = List.copyOf(shares);
        this.seed = seed;
    }

    /**
     * What a factor does to a measure. Immutable.
     *
     * @param effects over the walks
     * @param luck standard deviation that chance in the replications alone gives an elementary effect
     */
    public record Found(ElementaryEffects effects, double luck) {
        private static final double MEAN_SIZE_OF_NORMAL = Math.sqrt(2 / Math.PI);

        /**
         * Whether there is more than chance.
         *
         * @return true if the interval of the size lies above what chance alone gives
         */
        public boolean isSure() {
            return effects.size().low() > MEAN_SIZE_OF_NORMAL * luck;
        }
    }

    /**
     * What a factor does. Immutable.
     *
     * @param factor number of the factor, from 0
     * @param goodPerWeek to good spools a week
     * @param packedPerWeek to packed spools a week
     * @param costPerSpool to the cost of a good spool, money; not numbers where nothing is priced
     */
    public record Effects(int factor, Found goodPerWeek, Found packedPerWeek, Found costPerSpool) {}

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
                    found(factor, outcomes, Outcome::goodPerWeek),
                    found(factor, outcomes, Outcome::packedPerWeek),
                    found(factor, outcomes, Outcome::costPerSpool)));
        }
        return effects;
    }

    private Found found(int factor, List<List<Outcome>> outcomes, ToDoubleFunction<Outcome> value) {
        double[][] byWalk = IntStream.range(0, design.walks().size())
                .mapToObj(walk -> effects(walk, factor, outcomes, value))
                .toArray(double[][]::new);
        double[] means = IntStream.range(0, byWalk.length)
                .mapToDouble(walk -> StatUtils.mean(byWalk[walk]))
                .toArray();
        double luck = IntStream.range(0, byWalk.length)
                .mapToDouble(walk -> StatUtils.variance(byWalk[walk]) / byWalk[walk].length)
                .average()
                .orElseThrow();
        return new Found(ElementaryEffects.of(means, Interval.USUAL_LEVEL, seed), Math.sqrt(luck));
    }

    /** The effect of one step in each replication. */
    private double[] effects(int walk, int factor, List<List<Outcome>> outcomes, ToDoubleFunction<Outcome> value) {
        int before = design.before(walk, factor);
        double step = shares.get(before + 1).get(factor) - shares.get(before).get(factor);
        return outcomes.stream()
                .mapToDouble(points ->
                        (value.applyAsDouble(points.get(before + 1)) - value.applyAsDouble(points.get(before))) / step)
                .toArray();
    }
}
