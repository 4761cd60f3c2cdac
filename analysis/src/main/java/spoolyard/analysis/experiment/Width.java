package spoolyard.analysis.experiment;

/** How narrow an interval is, against a size. */
public final class Width {
    private Width() {}

    /**
     * Half-width over a size.
     *
     * @param interval the interval
     * @param size what it is measured by, any sign
     * @return a part of one; 0 for a half-width of 0 whatever the size; not a number without an interval, or with a size
     *     of 0
     */
    public static double of(Interval interval, double size) {
        double halfWidth = interval.halfWidth().orElse(Double.NaN);
        if (halfWidth == 0) {
            return 0;
        }
        return size == 0 ? Double.NaN : halfWidth / Math.abs(size);
    }

    /**
     * Half-width over the least that the true mean may be, as the interval has it. If it is at most {@code w}, the mean
     * is at most {@code w} of the truth off wherever the interval holds the truth.
     *
     * <p>Source: A. M. Law, Simulation Modeling and Analysis, 5th ed. 2015, section 9.4.1: to stop at a relative error of
     * {@code w} the relative half-width must be at most {@code w / (1 + w)}.
     *
     * @param interval the interval of a mean
     * @return a part of one, from the relative half-width {@code r} as {@code r / (1 - r)}; infinite where the interval
     *     holds 0
     */
    public static double relativeError(Interval interval) {
        double relative = of(interval, interval.mean());
        return relative >= 1 ? Double.POSITIVE_INFINITY : relative / (1 - relative);
    }
}
