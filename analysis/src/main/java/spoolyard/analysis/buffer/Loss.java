package spoolyard.analysis.buffer;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Shift;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.OverflowCause;
import spoolyard.core.record.RunResult;

/**
 * What full accumulators cost a line in one replication. Immutable.
 *
 * @param shifts shifts of the plant within the run; one that is cut off counts by its part
 * @param swaps spool changes
 * @param overflows of these, changes in which the accumulator filled
 * @param overflowsByCause the same by cause
 * @param wasteKg filament sent to the bin for a full or nearly full accumulator, restarts after an overflow stop included, kg
 * @param lostMin output lost in minutes of the line at its rate: what went to the bin, what a slowed line did not make,
 *     and the time stopped
 * @param cost what that is worth; not a number without prices
 */
public record Loss(
        double shifts,
        double swaps,
        double overflows,
        Map<OverflowCause, Long> overflowsByCause,
        double wasteKg,
        double lostMin,
        double cost) {
    /** Copies the map; every cause must be a key. */
    public Loss {
        overflowsByCause = Collections.unmodifiableMap(new EnumMap<>(overflowsByCause));
    }

    /**
     * Reads it off a replication.
     *
     * @param plant the plant
     * @param line place of the line among those of the plant
     * @param run the replication
     * @return what it lost
     */
    public static Loss of(Plant plant, int line, RunResult run) {
        LineResult result = run.lines().get(line);
        LostOutput lost = LostOutput.of(plant.lines().get(line), result);
        double overflows =
                result.overflows().values().stream().mapToLong(Long::longValue).sum();
        double cost = plant.economy()
                .prices()
                .map(prices -> KilogramValue.of(prices, result).of(lost))
                .orElse(Double.NaN);
        return new Loss(
                shifts(plant), result.swaps(), overflows, result.overflows(), lost.wasteKg(), lost.minutes(), cost);
    }

    /** Shifts within the horizon, by the part of each that lies in it. */
    static double shifts(Plant plant) {
        double sum = 0;
        for (Shift shift : plant.shifts()) {
            double inside = Math.min(shift.endTick(), plant.horizonTicks()) - (double) Math.max(shift.startTick(), 0);
            sum += Math.max(0, inside) / (shift.endTick() - shift.startTick());
        }
        return sum;
    }
}
