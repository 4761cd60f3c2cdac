package spoolyard.core.purge;

import spoolyard.core.colour.ColourDifference;
import spoolyard.core.colour.HidingColour;

/**
 * How much of an old colour a new one hides: the ratio of scattering, old over new, up to which their mixture stays within
 * the tolerance of the new colour. Washout comes from above, so it is the first ratio at which the tolerance is met whatever
 * smaller ratio follows. Searched in steps of a quarter in the logarithm, then by bisection.
 */
final class CleanRatio {
    private static final double TRACE = Math.exp(-25);
    private static final double HIGHEST_LOG = 40;
    private static final double LOG_STEP = 0.25;
    private static final int BISECTIONS = 45;

    private final HidingColour from;
    private final HidingColour to;
    private final double toleranceDeltaE;

    private CleanRatio(HidingColour from, HidingColour to, double toleranceDeltaE) {
        this.from = from;
        this.to = to;
        this.toleranceDeltaE = toleranceDeltaE;
    }

    /**
     * Finds it.
     *
     * @param from the old colour
     * @param to the new colour
     * @param toleranceDeltaE CIEDE2000, {@code > 0}
     * @return the ratio, {@code > 0}; infinity if the old colour itself is within the tolerance
     */
    static double of(HidingColour from, HidingColour to, double toleranceDeltaE) {
        return new CleanRatio(from, to, toleranceDeltaE).found();
    }

    private double found() {
        double low = start();
        double high = low;
        while (isClean(high)) {
            if (high > HIGHEST_LOG) {
                return Double.POSITIVE_INFINITY;
            }
            low = high;
            high += LOG_STEP;
        }
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = (low + high) / 2;
            if (isClean(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.exp(low);
    }

    /** A logarithm at which the mixture is clean: below where the slope at a trace would lead. */
    private double start() {
        double perRatio = deltaE(TRACE) / TRACE;
        double log = perRatio > 0 ? Math.min(HIGHEST_LOG, Math.log(toleranceDeltaE / perRatio)) : HIGHEST_LOG;
        while (!isClean(log)) {
            log -= 1;
        }
        return log - 1;
    }

    private boolean isClean(double logRatio) {
        return deltaE(Math.exp(logRatio)) <= toleranceDeltaE;
    }

    private double deltaE(double ratio) {
        return ColourDifference.ciede2000(to.mixedWith(from, ratio), to.lab());
    }
}
