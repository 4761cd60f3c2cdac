package spoolyard.analysis.buffer;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.record.Swap;
import spoolyard.core.record.SwapLog;

/**
 * Scores the swaps of a line in a run by their {@link OverflowChance}, and counts the overflows of those that have none.
 * For one run.
 */
public final class SwapScores implements SwapLog {
    private final OverflowChance chance;
    private final Map<Integer, Swap> last = new HashMap<>();
    private double score;
    private double countedSwaps;
    private double countedOverflows;

    /**
     * Has heard of nothing yet.
     *
     * @param plant the plant
     * @param line one of its lines
     */
    public SwapScores(Plant plant, Line line) {
        this.chance = new OverflowChance(plant, line);
    }

    @Override
    public void tell(Swap swap) {
        if (swap.line().equals(chance.line().name())) {
            Swap before = last.put(swap.strand(), swap);
            if (before != null) {
                score(before, swap.fullTick());
            }
        }
    }

    private void score(Swap swap, long knownUntilTick) {
        OptionalDouble its = chance.of(swap, knownUntilTick);
        double overflow = swap.overflow().isPresent() ? 1 : 0;
        score += its.orElse(overflow);
        if (its.isEmpty()) {
            countedSwaps++;
            countedOverflows += overflow;
        }
    }

    /**
     * What a run lost, with the overflows that were to be expected in place of those that happened. To be asked once, at
     * the end of the run.
     *
     * @param counted what happened
     * @return as counted, but for the overflows
     */
    public Loss of(Loss counted) {
        last.values().forEach(swap -> score(swap, chance.plant().horizonTicks()));
        return new Loss(
                counted.shifts(),
                counted.swaps(),
                score,
                counted.overflowsByCause(),
                counted.wasteKg(),
                counted.lostMin(),
                counted.cost(),
                new Loss.Counted(countedSwaps, countedOverflows));
    }
}
