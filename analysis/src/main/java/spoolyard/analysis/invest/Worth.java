package spoolyard.analysis.invest;

import spoolyard.analysis.experiment.Interval;

/**
 * What a mix is worth a year against the plant as it is: intervals of the differences, replication by replication.
 * Immutable.
 *
 * @param gain contribution and material that full accumulators lose less
 * @param net the gain less the price of the mix
 * @param plantNet contribution of the good kilograms of the whole plant less the price: also what people do besides, but
 *     far less sharp; without a value where nobody says what a kilogram brings
 */
public record Worth(Interval gain, Interval net, Interval plantNet) {
    /**
     * Of the differences, replication by replication.
     *
     * @param gained what full accumulators lose less a year
     * @param plantGained contribution of the whole plant more a year
     * @param price what the mix costs
     * @param level confidence of each interval, in (0, 1)
     * @return what the mix is worth
     */
    static Worth of(double[] gained, double[] plantGained, MixPrice price, double level) {
        Interval gain = Interval.of(gained, level);
        return new Worth(gain, less(gain, price), less(Interval.of(plantGained, level), price));
    }

    /** The price is known, so the interval only moves. */
    private static Interval less(Interval interval, MixPrice price) {
        return new Interval(
                interval.mean() - price.perYear(), interval.halfWidth(), interval.level(), interval.count());
    }

    /**
     * Years after which what was paid once has come back, without interest.
     *
     * @param price what it costs
     * @param gainPerYear what it gains a year
     * @return infinite if it never does; not a number if nothing was paid once
     */
    public static double payBackYears(MixPrice price, double gainPerYear) {
        double left = gainPerYear - price.runningPerYear() - price.payPerYear();
        if (price.once() == 0) {
            return Double.NaN;
        }
        return left > 0 ? price.once() / left : Double.POSITIVE_INFINITY;
    }
}
