package spoolyard.analysis.experiment;

/**
 * Where the transient of a series ends, by the marginal standard error rule (MSER): the cut that makes the standard error
 * of the mean of the rest least. Immutable.
 *
 * <p>With {@code d} of {@code n} batch means cut, the statistic is {@code sum of (z_i - mean)^2 / (n - d)^2} over the rest;
 * the cut is where it is least over {@code d = 0 .. n/2}. MSER-5 has batches of five values. Source: K. P. White, An
 * effective truncation heuristic for bias reduction in simulation output, Simulation 69 (1997) 323-334; K. P. White, M. J.
 * Cobb and S. C. Spratt, A comparison of five steady-state truncation heuristics for simulation, Winter Simulation
 * Conference 2000.
 *
 * @param cut values to leave out at the beginning, a multiple of the batch size
 * @param statistic least value of the statistic
 * @param mean mean of the rest, whole batches only
 * @param isAtLimit true if the least is at the last cut looked at: there is no sign that the transient has ended
 */
public record Truncation(int cut, double statistic, double mean, boolean isAtLimit) {
    /** Values to a batch in MSER-5. */
    public static final int USUAL_BATCH = 5;

    /**
     * Finds the cut.
     *
     * @param series values in order of time
     * @param batch values to a batch, {@code >= 1}; values beyond the last whole batch are left out
     * @return the truncation; the smallest cut if several are as good. O(n).
     * @throws IllegalArgumentException if there are not at least two batches
     */
    public static Truncation of(double[] series, int batch) {
        if (batch < 1 || series.length / batch < 2) {
            throw new IllegalArgumentException(
                    "values = " + series.length + ", batch = " + batch + ". Must be at least two batches.");
        }
        double[] means = Batches.means(series, 0, batch);
        int last = means.length / 2;
        Truncation best = new Truncation(0, Double.POSITIVE_INFINITY, Double.NaN, false);
        double mean = 0;
        double squares = 0;
        for (int i = means.length - 1; i >= 0; i--) {
            int count = means.length - i;
            double step = means[i] - mean;
            mean += step / count;
            squares += step * (means[i] - mean);
            double statistic = squares / ((double) count * count);
            if (i <= last && statistic <= best.statistic()) {
                best = new Truncation(i * batch, statistic, mean, i == last);
            }
        }
        return best;
    }
}
