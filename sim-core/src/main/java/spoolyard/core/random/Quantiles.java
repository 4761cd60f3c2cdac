package spoolyard.core.random;

import java.util.List;
import spoolyard.core.plant.Law;
import umontreal.ssj.probdist.NormalDist;
import umontreal.ssj.util.Num;

/**
 * The inverse distribution function of each law. {@code 1 - u} is never formed where a small {@code u} would drown in it.
 *
 * <p>Source: Law, Simulation Modeling and Analysis, 5th ed. 2015, section 8.3 (inverse transforms), from memory.
 */
final class Quantiles {
    private Quantiles() {}

    static Quantile of(Law law, InverseTables tables) {
        if (law instanceof Law.Fixed fixed) {
            return u -> fixed.value();
        } else if (law instanceof Law.Exponential exponential) {
            return exponential(exponential.mean());
        } else if (law instanceof Law.Uniform uniform) {
            return uniform(uniform.low(), uniform.high());
        } else if (law instanceof Law.Triangular triangular) {
            return triangular(triangular.low(), triangular.mode(), triangular.high());
        } else if (law instanceof Law.Lognormal lognormal) {
            return lognormal(lognormal.mean(), lognormal.cv());
        } else {
            return others(law, tables);
        }
    }

    private static Quantile others(Law law, InverseTables tables) {
        if (law instanceof Law.Gamma gamma) {
            return tables.quantile(gamma);
        } else if (law instanceof Law.Weibull weibull) {
            return weibull(weibull.mean(), weibull.shape());
        } else if (law instanceof Law.Observed observed) {
            return observed(observed.values());
        }
        throw new IllegalArgumentException("law = " + law + ". Must be one that can be drawn.");
    }

    private static Quantile exponential(double mean) {
        return u -> -mean * Math.log1p(-u);
    }

    private static Quantile uniform(double low, double high) {
        double width = high - low;
        return u -> low + width * u;
    }

    private static Quantile triangular(double low, double mode, double high) {
        double width = high - low;
        double shareBelowMode = (mode - low) / width;
        double rise = width * (mode - low);
        double fall = width * (high - mode);
        return u -> u < shareBelowMode ? low + Math.sqrt(u * rise) : high - Math.sqrt((1 - u) * fall);
    }

    private static Quantile lognormal(double mean, double cv) {
        double variance = Math.log1p(cv * cv);
        double sigma = Math.sqrt(variance);
        double mu = Math.log(mean) - variance / 2;
        return u -> Math.exp(mu + sigma * NormalDist.inverseF01(u));
    }

    /** By logarithms, so that no shape, however small, meets zero times infinity. */
    private static Quantile weibull(double mean, double shape) {
        double logScale = Math.log(mean) - Num.lnGamma(1 + 1 / shape);
        return u -> Math.exp(logScale + Math.log(-Math.log1p(-u)) / shape);
    }

    private static Quantile observed(List<Double> sortedValues) {
        double[] values = sortedValues.stream().mapToDouble(Double::doubleValue).toArray();
        return u -> values[(int) (u * values.length)];
    }
}
