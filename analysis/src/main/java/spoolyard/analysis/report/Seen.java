package spoolyard.analysis.report;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import spoolyard.analysis.buffer.Loss;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.RunResult;

/**
 * A replication as the measures look at it. Immutable.
 *
 * @param setting what was run
 * @param whole the plant as a whole
 */
record Seen(Setting setting, PlantSheet.Whole whole) {
    private static final double WEEK_TICKS = 7.0 * 24 * Ticks.PER_HOUR;
    private static final double S_PER_H = 3600;

    /**
     * Looks at a replication.
     *
     * @param setting what was run
     * @param result what it told
     * @return ready to be measured
     */
    static Seen of(Setting setting, RunResult result) {
        return new Seen(setting, PlantSheet.Whole.of(setting, result));
    }

    /**
     * A column of the plant's table.
     *
     * @param column which
     * @return its value in this replication
     */
    double plant(Column<PlantSheet.Whole> column) {
        return column.value().applyAsDouble(whole);
    }

    /**
     * A quantity of the whole run for each week of it.
     *
     * @param amount in the whole run
     * @return the same for a week
     */
    double perWeek(double amount) {
        return amount * WEEK_TICKS / whole.result().horizonTicks();
    }

    /**
     * What full accumulators cost all lines.
     *
     * @param part which
     * @return for each shift of the run; not a number without a shift
     */
    double perShift(ToDoubleFunction<Loss> part) {
        List<Loss> losses = IntStream.range(0, whole.result().lines().size())
                .mapToObj(line -> Loss.of(setting.plant(), line, whole.result()))
                .toList();
        return losses.stream().mapToDouble(part).sum() / losses.get(0).shifts();
    }

    /**
     * Paid hours in the whole run.
     *
     * @return person-hours, breaks and overlapping hand-overs included
     */
    double labourH() {
        return whole.result().crew().stream()
                        .mapToDouble(RunResult.CrewResult::paidS)
                        .sum()
                / S_PER_H;
    }

    /**
     * Longest time that any work waited for a person.
     *
     * @return hours; 0 if nothing waited
     */
    double longestWaitH() {
        return whole.result().crew().stream()
                        .mapToDouble(RunResult.CrewResult::longestWaitS)
                        .max()
                        .orElse(0)
                / S_PER_H;
    }

    /**
     * What a good spool costs.
     *
     * @return money; not a number for a plant without prices or a run without a good spool
     */
    double costPerGoodSpool() {
        List<CostRow> parts = CostRow.parts(setting, whole.result());
        return parts.isEmpty() ? Double.NaN : parts.get(parts.size() - 1).perGoodSpool();
    }
}
