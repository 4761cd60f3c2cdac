package spoolyard.analysis.theory;

import java.util.List;
import org.hipparchus.special.Erf;
import org.hipparchus.special.Gamma;
import spoolyard.core.plant.Law;

/**
 * Upper tail of a {@link Law}: its survival function and its partial expectation. Thresholds are {@code >= 0} and in the
 * unit of the law.
 *
 * <p>Source: N. L. Johnson, S. Kotz, N. Balakrishnan, Continuous Univariate Distributions, 2nd ed. 1994 (lognormal ch. 14,
 * gamma ch. 17, exponential ch. 19, Weibull ch. 21) for the survival functions; the partial expectations follow from
 * E[(S - a)<sup>+</sup>] = integral of P(S &gt; t) over t from a.
 */
sealed interface Tail {
    /** P(S > a), in [0, 1]. */
    double probabilityAbove(double threshold);

    /** E[(S - a)+], in the unit of the law. */
    double meanExcess(double threshold);

    /** The tail of a law. */
    static Tail of(Law law) {
        if (law instanceof Law.Fixed fixed) {
            return new OfObserved(List.of(fixed.value()));
        }
        if (law instanceof Law.Observed observed) {
            return new OfObserved(observed.values());
        }
        return ofDensity(law);
    }

    private static Tail ofDensity(Law law) {
        if (law instanceof Law.Exponential exponential) {
            return new OfWeibull(exponential.mean(), 1);
        }
        if (law instanceof Law.Weibull weibull) {
            return new OfWeibull(weibull.mean(), weibull.shape());
        }
        if (law instanceof Law.Lognormal lognormal) {
            return new OfLognormal(lognormal.mean(), Math.sqrt(Math.log1p(lognormal.cv() * lognormal.cv())));
        }
        if (law instanceof Law.Gamma gamma) {
            return new OfGamma(gamma.mean(), 1 / (gamma.cv() * gamma.cv()));
        }
        return ofCorners(law);
    }

    private static Tail ofCorners(Law law) {
        if (law instanceof Law.Triangular triangular) {
            return new OfTriangular(triangular);
        }
        Law.Uniform uniform = (Law.Uniform) law;
        return uniform.low() == uniform.high()
                ? new OfObserved(List.of(uniform.low()))
                : new OfUniform(uniform.low(), uniform.high());
    }

    /** Equally likely values. */
    record OfObserved(List<Double> values) implements Tail {
        @Override
        public double probabilityAbove(double threshold) {
            return values.stream().filter(value -> value > threshold).count() / (double) values.size();
        }

        @Override
        public double meanExcess(double threshold) {
            double sum = values.stream()
                    .mapToDouble(value -> Math.max(0, value - threshold))
                    .sum();
            return sum / values.size();
        }
    }

    /** P(S > a) = exp(-(a / scale)^shape); the exponential has shape 1. */
    record OfWeibull(double mean, double shape) implements Tail {
        @Override
        public double probabilityAbove(double threshold) {
            return Math.exp(-power(threshold));
        }

        @Override
        public double meanExcess(double threshold) {
            return mean * Gamma.regularizedGammaQ(1 / shape, power(threshold));
        }

        private double power(double threshold) {
            return Math.pow(threshold * Gamma.gamma(1 + 1 / shape) / mean, shape);
        }
    }

    /** The logarithm is normal with standard deviation sigma; the excess has the form of Black's (1976) option price. */
    record OfLognormal(double mean, double sigma) implements Tail {
        @Override
        public double probabilityAbove(double threshold) {
            return normalBelow(distance(threshold) - sigma / 2);
        }

        @Override
        public double meanExcess(double threshold) {
            return mean * normalBelow(distance(threshold) + sigma / 2)
                    - threshold * normalBelow(distance(threshold) - sigma / 2);
        }

        private double distance(double threshold) {
            return Math.log(mean / threshold) / sigma;
        }

        private static double normalBelow(double z) {
            return Erf.erfc(-z / Math.sqrt(2)) / 2;
        }
    }

    /** Shape k, scale mean / k. */
    record OfGamma(double mean, double shape) implements Tail {
        @Override
        public double probabilityAbove(double threshold) {
            return Gamma.regularizedGammaQ(shape, threshold * shape / mean);
        }

        @Override
        public double meanExcess(double threshold) {
            return mean * Gamma.regularizedGammaQ(shape + 1, threshold * shape / mean)
                    - threshold * probabilityAbove(threshold);
        }
    }

    /** Constant density. */
    record OfUniform(double low, double high) implements Tail {
        @Override
        public double probabilityAbove(double threshold) {
            return Math.min(1, Math.max(0, high - threshold) / (high - low));
        }

        @Override
        public double meanExcess(double threshold) {
            double above = Math.max(0, high - threshold);
            double below = Math.max(0, low - threshold);
            return (above * above - below * below) / (2 * (high - low));
        }
    }

    /** Density that rises from low to mode and falls to high. */
    record OfTriangular(Law.Triangular law) implements Tail {
        @Override
        public double probabilityAbove(double threshold) {
            return threshold >= law.mode()
                    ? corner(law.high() - threshold, law.high() - law.mode(), 2)
                    : 1 - corner(threshold - law.low(), law.mode() - law.low(), 2);
        }

        @Override
        public double meanExcess(double threshold) {
            return threshold >= law.mode()
                    ? corner(law.high() - threshold, law.high() - law.mode(), 3) / 3
                    : law.mean() - threshold + corner(threshold - law.low(), law.mode() - law.low(), 3) / 3;
        }

        /** {@code reach^power / (width * side)}: what lies between the threshold and the nearer end; 0 beyond the end. */
        private double corner(double reach, double side, int power) {
            return reach <= 0 ? 0 : Math.pow(reach, power) / ((law.high() - law.low()) * side);
        }
    }
}
