package spoolyard.analysis.report;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Shift;
import spoolyard.core.record.RunResult;

/** Which shifts count when output is told per shift. */
final class FullShifts {
    private FullShifts() {}

    /**
     * Shifts that lie in the run from their begin to their end and in which at least one line is meant to run.
     *
     * @param plant the plant
     * @return places in the list of shifts, ascending
     */
    static List<Integer> of(Plant plant) {
        return IntStream.range(0, plant.shifts().size())
                .filter(i -> isFull(plant, plant.shifts().get(i)))
                .boxed()
                .toList();
    }

    /**
     * Mean over the full shifts of a replication.
     *
     * @param plant the plant
     * @param result the replication, with its shifts in the order of the plant's
     * @param value value of a shift
     * @return the mean; not a number without a full shift
     */
    static double mean(Plant plant, RunResult result, ToDoubleFunction<RunResult.ShiftResult> value) {
        return of(plant).stream()
                .map(result.shifts()::get)
                .mapToDouble(value)
                .average()
                .orElse(Double.NaN);
    }

    private static boolean isFull(Plant plant, Shift shift) {
        return shift.startTick() >= 0
                && shift.endTick() <= plant.horizonTicks()
                && plant.lines().stream()
                        .flatMap(line -> line.workingPeriods().stream())
                        .anyMatch(
                                period -> period.startTick() < shift.endTick() && period.endTick() > shift.startTick());
    }
}
