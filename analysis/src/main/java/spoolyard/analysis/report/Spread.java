package spoolyard.analysis.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import spoolyard.analysis.experiment.Difference;

/**
 * An interval of a difference as people read it: rounded outwards, so that rounding never claims more than the data.
 *
 * @param low lower end
 * @param high upper end, {@code >= low}
 */
record Spread(double low, double high) {
    private static final int MOST_EXTRA_DECIMALS = 4;

    /**
     * The interval of a difference.
     *
     * @param difference with an interval
     * @return its ends
     */
    static Spread of(Difference difference) {
        return new Spread(difference.low(), difference.high());
    }

    /**
     * Whether the difference is an increase.
     *
     * @return true if the lower end is above 0
     */
    boolean isAboveZero() {
        return low > 0;
    }

    /**
     * How large the difference is, without its sign; for one that does not hold 0.
     *
     * @param decimals digits after the point, more where the smaller end would become 0
     * @return for example {@code 31 to 44}, or {@code 480} where both ends are the same
     */
    String size(int decimals) {
        return joined(near(), Math.max(Math.abs(low), Math.abs(high)), needed(decimals), "");
    }

    /**
     * Both ends with their signs.
     *
     * @param decimals digits after the point, more where an end would become 0 that is not
     * @return for example {@code -4.8 to +2.0}
     */
    String signed(int decimals) {
        boolean holdsZero = low <= 0 && high >= 0;
        return joined(low, high, holdsZero ? decimals : needed(decimals), "+");
    }

    private double near() {
        return Math.min(Math.abs(low), Math.abs(high));
    }

    private int needed(int decimals) {
        int needed = decimals;
        while (rounded(near(), needed, RoundingMode.FLOOR).signum() == 0 && needed < decimals + MOST_EXTRA_DECIMALS) {
            needed++;
        }
        return needed;
    }

    private static String joined(double from, double to, int decimals, String plus) {
        boolean isExact = from == to;
        BigDecimal lower = rounded(from, decimals, isExact ? RoundingMode.HALF_EVEN : RoundingMode.FLOOR);
        BigDecimal upper = rounded(to, decimals, isExact ? RoundingMode.HALF_EVEN : RoundingMode.CEILING);
        String first = shown(lower, decimals, plus);
        return lower.compareTo(upper) == 0 ? first : first + " to " + shown(upper, decimals, plus);
    }

    /** Seven digits first: what is beyond is the rounding of sums and must not push an end outwards. */
    private static BigDecimal rounded(double value, int decimals, RoundingMode mode) {
        return Figures.exact(value).orElseThrow().setScale(decimals, mode);
    }

    private static String shown(BigDecimal value, int decimals, String plus) {
        return (value.signum() > 0 ? plus : "") + Figures.shown(value.doubleValue(), decimals);
    }
}
