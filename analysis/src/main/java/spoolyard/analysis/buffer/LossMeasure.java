package spoolyard.analysis.buffer;

import java.util.function.ToDoubleFunction;

/** In what losses at a full accumulator are told: a ratio of two sums, over swaps or over shifts. */
public enum LossMeasure {
    /** Swaps in which the accumulator filled. */
    OVERFLOW("overflow", "% of swaps", "overflow_pct_of_swaps", loss -> 100 * loss.overflows(), Loss::swaps),
    /** Filament to the bin. */
    WASTE("waste", "kg per shift", "waste_kg_per_shift", Loss::wasteKg, Loss::shifts),
    /** Output lost, in time of the line. */
    LOST("lost", "min per shift", "lost_min_per_shift", Loss::lostMin, Loss::shifts),
    /** Money: material of the waste, contribution of what could not be sold. */
    COST("cost", "per shift", "cost_per_shift", Loss::cost, Loss::shifts);

    private final String word;
    private final String unit;
    private final String column;
    private final ToDoubleFunction<Loss> amount;
    private final ToDoubleFunction<Loss> base;

    LossMeasure(String word, String unit, String column, ToDoubleFunction<Loss> amount, ToDoubleFunction<Loss> base) {
        this.word = word;
        this.unit = unit;
        this.column = column;
        this.amount = amount;
        this.base = base;
    }

    /**
     * The word for it in a target.
     *
     * @return lower-case
     */
    public String word() {
        return word;
    }

    /**
     * Its unit in words.
     *
     * @return for example {@code kg per shift}
     */
    public String unit() {
        return unit;
    }

    /**
     * Its name in files.
     *
     * @return letters and underscores
     */
    public String column() {
        return column;
    }

    /**
     * What is counted.
     *
     * @param loss of a replication
     * @return in the unit, times the base
     */
    double amount(Loss loss) {
        return amount.applyAsDouble(loss);
    }

    /**
     * What it is counted over.
     *
     * @param loss of a replication
     * @return swaps or shifts
     */
    double base(Loss loss) {
        return base.applyAsDouble(loss);
    }
}
