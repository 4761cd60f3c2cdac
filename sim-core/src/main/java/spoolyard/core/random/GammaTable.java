package spoolyard.core.random;

/**
 * The inverse distribution function of a gamma law of mean 1, tabled once. Immutable, safe among threads.
 *
 * <p>The logarithm of the value is a smooth, increasing function of {@code t = log(u / (1 - u))}: nearly linear in the
 * lower tail, a logarithm in the upper one, whatever the shape. It is tabled on equal steps of {@code t} with its exact
 * slope and read by cubic Hermite interpolation. The table holds every number a stream can give, 2<sup>-32</sup> from
 * either end.
 *
 * <p>Measured: probabilities are off by less than 5e-9 of the smaller tail at a coefficient of variation of 3, less than
 * 2e-9 at 1.5 and below.
 */
final class GammaTable implements Quantile {
    private static final double REACH = 24;
    private static final int CELLS = 1024;
    private static final double STEP = 2 * REACH / CELLS;
    private static final int COEFFICIENTS = 4;

    private final double[] coefficients = new double[COEFFICIENTS * CELLS]; // [cell][power], rising powers

    /**
     * Tables the law.
     *
     * @param cv standard deviation over mean, in ({@link NarrowGamma#LARGEST_CV}, 3]
     */
    GammaTable(double cv) {
        GammaLogit logit = new GammaLogit(1 / (cv * cv));
        double[] logValue = new double[CELLS + 1];
        double[] slope = new double[CELLS + 1];
        fillNodes(logit, logValue, slope);
        for (int cell = 0; cell < CELLS; cell++) {
            double rise = logValue[cell + 1] - logValue[cell];
            int at = COEFFICIENTS * cell;
            coefficients[at] = logValue[cell];
            coefficients[at + 1] = slope[cell];
            coefficients[at + 2] = 3 * rise - 2 * slope[cell] - slope[cell + 1];
            coefficients[at + 3] = slope[cell] + slope[cell + 1] - 2 * rise;
        }
    }

    /** From the middle outwards, each node starting from its neighbour. */
    private void fillNodes(GammaLogit logit, double[] logValue, double[] slope) {
        int middle = CELLS / 2;
        logValue[middle] = logit.solve(0, 0);
        slope[middle] = STEP / logit.slopeAt(logValue[middle]);
        for (int node = middle + 1; node <= CELLS; node++) {
            logValue[node] = logit.solve(node * STEP - REACH, logValue[node - 1] + slope[node - 1]);
            slope[node] = STEP / logit.slopeAt(logValue[node]);
        }
        for (int node = middle - 1; node >= 0; node--) {
            logValue[node] = logit.solve(node * STEP - REACH, logValue[node + 1] - slope[node + 1]);
            slope[node] = STEP / logit.slopeAt(logValue[node]);
        }
    }

    @Override
    public double at(double u) {
        double t = Math.log(u / (1 - u));
        double place = (t + REACH) / STEP;
        if (!(place >= 0 && place < CELLS)) {
            throw new IllegalArgumentException("u = " + u + ". Must be at least 4e-11 from 0 and from 1.");
        }
        int cell = (int) place;
        double z = place - cell;
        int c = COEFFICIENTS * cell;
        return Math.exp(
                coefficients[c] + z * (coefficients[c + 1] + z * (coefficients[c + 2] + z * coefficients[c + 3])));
    }
}
