package spoolyard.core.random;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import spoolyard.core.plant.Law;
import spoolyard.core.quantity.Ticks;

/** Every law the plant allows can be drawn, with whatever parameters. */
final class LawDrawProperties {
    /** The least and the largest number the generator gives are 1 and m1 times its unit, about 2^-32. */
    private static final double LEAST_UNIFORM = 2.328306549295727688e-10;

    private static final double[] UNIFORMS = {
        LEAST_UNIFORM, 1e-8, 1e-4, 0.01, 0.2, 0.5, 0.50001, 0.9, 0.9999, 1 - 1e-8, 1 - 2 * LEAST_UNIFORM
    };

    @Property(tries = 1000, seed = "20261105")
    void isNeverNegativeNeverUndefinedAndNeverFalls(@ForAll("laws") Law law) {
        Quantile quantile = Quantiles.of(law, InverseTables.NONE);
        double last = 0;

        for (double u : UNIFORMS) {
            double value = quantile.at(u);
            assertThat(value).as("%s at %s", law, u).isGreaterThanOrEqualTo(last);
            last = value;
        }
    }

    @Property(tries = 1000, seed = "20261106")
    void givesATickOfTime(@ForAll("laws") Law law) {
        Variate variate = new Streams(1, 0).variate(law, "any");

        assertThat(variate.nextTicks()).isBetween(0L, Ticks.NEVER);
    }

    @Provide
    Arbitrary<Law> laws() {
        Arbitrary<Double> mean = positive(-6, 9);
        Arbitrary<Double> width = Arbitraries.doubles().between(0, 1e6);
        return Arbitraries.oneOf(
                mean.map(Law.Fixed::new),
                mean.map(Law.Exponential::new),
                Combinators.combine(width, width).as((low, more) -> new Law.Uniform(low, low + more)),
                Combinators.combine(width, width, mean)
                        .as((low, a, b) -> new Law.Triangular(low, low + a, low + a + b + 1)),
                Combinators.combine(mean, positive(-9, 3)).as(Law.Lognormal::new),
                Combinators.combine(
                                mean,
                                Arbitraries.oneOf(
                                        positive(-9, 0), Arbitraries.doubles().between(1, 3)))
                        .as(Law.Gamma::new),
                Combinators.combine(mean, positive(-4, 4)).as(Law.Weibull::new),
                Arbitraries.doubles()
                        .between(0, 1e9)
                        .list()
                        .ofMinSize(1)
                        .ofMaxSize(50)
                        .map(LawDrawProperties::observed));
    }

    private static Law observed(List<Double> values) {
        return new Law.Observed(values);
    }

    private static Arbitrary<Double> positive(double leastExponent, double mostExponent) {
        return Arbitraries.doubles().between(leastExponent, mostExponent).map(exponent -> Math.pow(10, exponent));
    }
}
