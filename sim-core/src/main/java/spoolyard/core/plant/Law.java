package spoolyard.core.plant;

import java.util.List;

/**
 * The probability law of a duration, an interval or a mass: what it is, not how it is drawn. Immutable.
 *
 * <p>The unit is that of the field that holds the law, for example {@code durationS} for seconds. Every law is
 * non-negative. Laws are drawn by inversion, one uniform a draw, in {@code spoolyard.core.random}.
 */
public sealed interface Law {
    /** The law of a thing that takes no time. */
    Law ZERO = new Fixed(0);

    /**
     * Mean of the law.
     *
     * @return the mean, in the unit of the law
     */
    double mean();

    /**
     * The same law for values so many times as large.
     *
     * @param factor what every value is multiplied by, {@code > 0}
     * @return a law of the same form
     */
    Law times(double factor);

    /**
     * Always the same value.
     *
     * @param value the value, {@code >= 0}
     */
    record Fixed(double value) implements Law {
        /** Checks the range. */
        public Fixed {
            require(value >= 0 && value < Double.POSITIVE_INFINITY, "fixed value", value, "finite and >= 0");
        }

        @Override
        public double mean() {
            return value;
        }

        @Override
        public Law times(double factor) {
            return new Fixed(factor * value);
        }
    }

    /**
     * Exponential.
     *
     * @param mean the mean, {@code > 0}
     */
    record Exponential(double mean) implements Law {
        /** Checks the range. */
        public Exponential {
            require(mean > 0 && mean < Double.POSITIVE_INFINITY, "mean", mean, "finite and > 0");
        }

        @Override
        public Law times(double factor) {
            return new Exponential(factor * mean);
        }
    }

    /**
     * Uniform on an interval.
     *
     * @param low lower end, {@code >= 0}
     * @param high upper end, {@code >= low}
     */
    record Uniform(double low, double high) implements Law {
        /** Checks the ranges. */
        public Uniform {
            require(low >= 0, "low", low, ">= 0");
            require(high >= low && high < Double.POSITIVE_INFINITY, "high", high, "finite and >= low");
        }

        @Override
        public double mean() {
            return (low + high) / 2;
        }

        @Override
        public Law times(double factor) {
            return new Uniform(factor * low, factor * high);
        }
    }

    /**
     * Triangular.
     *
     * @param low lower end, {@code >= 0}
     * @param mode most likely value, {@code low <= mode <= high}
     * @param high upper end, {@code > low}
     */
    record Triangular(double low, double mode, double high) implements Law {
        /** Checks the ranges. */
        public Triangular {
            require(low >= 0, "low", low, ">= 0");
            require(high > low && high < Double.POSITIVE_INFINITY, "high", high, "finite and > low");
            require(mode >= low && mode <= high, "mode", mode, "between low and high");
        }

        @Override
        public double mean() {
            return (low + mode + high) / 3;
        }

        @Override
        public Law times(double factor) {
            return new Triangular(factor * low, factor * mode, factor * high);
        }
    }

    /**
     * Lognormal by its own mean and coefficient of variation (not those of the logarithm).
     *
     * @param mean the mean, {@code > 0}
     * @param cv standard deviation over mean, {@code > 0}
     */
    record Lognormal(double mean, double cv) implements Law {
        /** Checks the ranges. */
        public Lognormal {
            requireMeanAndCv(mean, cv);
        }

        @Override
        public Law times(double factor) {
            return new Lognormal(factor * mean, cv);
        }
    }

    /**
     * Gamma by mean and coefficient of variation; its shape is 1 / cv<sup>2</sup>.
     *
     * @param mean the mean, {@code > 0}
     * @param cv standard deviation over mean, in {@code (0, 3]}: beyond, inversion of the density is not exact
     *     enough near zero
     */
    record Gamma(double mean, double cv) implements Law {
        /** Checks the ranges. */
        public Gamma {
            requireMeanAndCv(mean, cv);
            require(cv <= 3, "cv", cv, "<= 3");
        }

        @Override
        public Law times(double factor) {
            return new Gamma(factor * mean, cv);
        }
    }

    /**
     * Weibull by mean and shape.
     *
     * @param mean the mean, {@code > 0}
     * @param shape shape, {@code > 0}; 1 is exponential, above 1 wears out, below 1 fails early
     */
    record Weibull(double mean, double shape) implements Law {
        /** Checks the ranges. */
        public Weibull {
            require(mean > 0 && mean < Double.POSITIVE_INFINITY, "mean", mean, "finite and > 0");
            require(shape > 0 && shape < Double.POSITIVE_INFINITY, "shape", shape, "finite and > 0");
        }

        @Override
        public Law times(double factor) {
            return new Weibull(factor * mean, shape);
        }
    }

    /**
     * Observed values, each equally likely.
     *
     * @param values at least one value, each {@code >= 0}
     */
    record Observed(List<Double> values) implements Law {
        /** Copies and sorts the values, so that drawing is monotone in the uniform. */
        public Observed {
            require(!values.isEmpty(), "number of observed values", values.size(), ">= 1");
            values = values.stream().sorted().toList();
            require(values.get(0) >= 0, "smallest observed value", values.get(0), ">= 0");
        }

        @Override
        public double mean() {
            return values.stream().mapToDouble(Double::doubleValue).sum() / values.size();
        }

        @Override
        public Law times(double factor) {
            return new Observed(values.stream().map(value -> factor * value).toList());
        }
    }

    private static void requireMeanAndCv(double mean, double cv) {
        require(mean > 0 && mean < Double.POSITIVE_INFINITY, "mean", mean, "finite and > 0");
        require(cv > 0 && cv < Double.POSITIVE_INFINITY, "cv", cv, "finite and > 0");
    }

    private static void require(boolean holds, String name, double value, String rule) {
        if (!holds) {
            throw new IllegalArgumentException(name + " = " + value + ". Must be " + rule + ".");
        }
    }
}
