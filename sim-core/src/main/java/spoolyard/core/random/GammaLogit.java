package spoolyard.core.random;

import umontreal.ssj.probdist.GammaDist;
import umontreal.ssj.util.Num;

/**
 * The logit of the gamma distribution function of mean 1, {@code log(F / (1 - F))}, as a function of the logarithm of
 * the value. Immutable.
 *
 * <p>Source of F: SSJ's GammaDist, series below the mean and continued fraction above (Bhattacharjee, Algorithm AS 32,
 * Applied Statistics 19 (1970) 285-287), each of full relative precision in its tail.
 */
final class GammaLogit {
    private static final int DIGITS = 15;
    private static final double LAST_STEP = 1e-10; // what is left is its square: Newton's method
    private static final int MOST_STEPS = 50;

    private final double shape;
    private final double logShape;
    private final double logGamma;

    GammaLogit(double shape) {
        this.shape = shape;
        this.logShape = Math.log(shape);
        this.logGamma = Num.lnGamma(shape);
    }

    /** Derivative of the logit: {@code x f(x) / (F (1 - F))}. */
    double slopeAt(double logValue) {
        double x = Math.exp(logValue + logShape);
        return density(logValue, x) / (below(x) * above(x));
    }

    /** The logarithm of the value whose logit is {@code t}, by Newton's method from a start nearby. */
    double solve(double t, double start) {
        double logValue = start;
        for (int i = 0; i < MOST_STEPS; i++) {
            double x = Math.exp(logValue + logShape);
            double below = below(x);
            double above = above(x);
            double step = (t - Math.log(below / above)) * below * above / density(logValue, x);
            logValue += step;
            if (Math.abs(step) <= LAST_STEP * Math.max(1, Math.abs(logValue))) {
                return logValue;
            }
        }
        throw new IllegalStateException("gamma shape " + shape + ", logit " + t + ": no solution found.");
    }

    private double density(double logValue, double x) {
        return Math.exp(shape * (logValue + logShape) - x - logGamma);
    }

    private double below(double x) {
        return GammaDist.cdf(shape, DIGITS, x);
    }

    private double above(double x) {
        return GammaDist.barF(shape, DIGITS, x);
    }
}
