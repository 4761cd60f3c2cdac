package spoolyard.analysis.buffer;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
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
 * @param overflows of these, changes in which the accumulator filled; where they are rare, as many as were to be expected
 * @param overflowsByCause the same by cause
 * @param wasteKg filament sent to the bin for a full or nearly full accumulator, restarts after an overflow stop included, kg
 * @param lostMin output lost in minutes of the line at its rate: what went to the bin, what a slowed line did not make,
 *     and the time stopped
 * @param cost what that is worth; not a number without prices
 * @param counted of the changes, those whose overflow was counted and not expected
 */
public record Loss(
        double shifts,
        double swaps,
        double overflows,
        Map<OverflowCause, Long> overflowsByCause,
        double wasteKg,
        double lostMin,
        double cost,
        Counted counted) {
    /** Copies the map; every cause must be a key. */
    public Loss {
        overflowsByCause = Collections.unmodifiableMap(new EnumMap<>(overflowsByCause));
    }

    /**
     * A replication all of whose overflows were counted.
     *
     * @param shifts as above
     * @param swaps as above
     * @param overflows as above
     * @param overflowsByCause as above
     * @param wasteKg as above
     * @param lostMin as above
     * @param cost as above
     */
    public Loss(
            double shifts,
            double swaps,
            double overflows,
            Map<OverflowCause, Long> overflowsByCause,
            double wasteKg,
            double lostMin,
            double cost) {
        this(shifts, swaps, overflows, overflowsByCause, wasteKg, lostMin, cost, new Counted(swaps, overflows));
    }

    /**
     * Overflows that were seen to happen, whether counted or not.
     *
     * @return their number
     */
    double seenOverflows() {
        return overflowsByCause.values().stream().mapToLong(Long::longValue).sum();
    }

    /**
     * Spool changes whose overflow was counted.
     *
     * @param swaps how many
     * @param overflows of these, changes in which the accumulator filled
     */
    public record Counted(double swaps, double overflows) {}

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

    /**
     * What several lines lost together in a replication.
     *
     * @param lines what each lost, at least one
     * @return their sum over the same shifts
     */
    public static Loss together(List<Loss> lines) {
        Map<OverflowCause, Long> byCause = new EnumMap<>(OverflowCause.class);
        lines.forEach(
                line -> line.overflowsByCause().forEach((cause, count) -> byCause.merge(cause, count, Long::sum)));
        return new Loss(
                lines.get(0).shifts(),
                sum(lines, Loss::swaps),
                sum(lines, Loss::overflows),
                byCause,
                sum(lines, Loss::wasteKg),
                sum(lines, Loss::lostMin),
                sum(lines, Loss::cost),
                new Counted(sum(lines, line -> line.counted().swaps()), sum(lines, line -> line.counted()
                        .overflows())));
    }

    private static double sum(List<Loss> lines, ToDoubleFunction<Loss> part) {
        return lines.stream().mapToDouble(part).sum();
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
