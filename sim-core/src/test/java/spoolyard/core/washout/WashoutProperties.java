package spoolyard.core.washout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What every washout law must obey. */
class WashoutProperties {
    private static final int STEPS = 200_000;

    @Provide
    Arbitrary<Washout> laws() {
        return Arbitraries.oneOf(
                Arbitraries.doubles().between(0, 0.95).map(PlugAndTank::new),
                Arbitraries.integers().between(1, 60).map(TanksInSeries::new),
                Arbitraries.just(new SingleScrew()),
                Arbitraries.doubles().between(0.1, 1).map(LaminarPipe::new));
    }

    /** Down to a part in 1e9, each power of ten as likely as the other. */
    @Provide
    Arbitrary<Double> shares() {
        return Arbitraries.doubles().between(-9, -0.01).map(power -> Math.pow(10, power));
    }

    @Property(seed = "1")
    void isUndoneByItsInverse(@ForAll("laws") Washout law, @ForAll("shares") double share) {
        assertThat(law.oldShare(law.turnovers(share)) / share).isEqualTo(1, within(1e-6));
    }

    @Property(seed = "2")
    void takesLongerForLess(
            @ForAll("laws") Washout law,
            @ForAll("shares") double share,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double factor) {
        assertThat(law.turnovers(share * factor)).isGreaterThan(law.turnovers(share));
    }

    @Property(seed = "3")
    void neverRises(
            @ForAll("laws") Washout law,
            @ForAll @DoubleRange(min = 0, max = 60) double turnovers,
            @ForAll @DoubleRange(min = 0, max = 5) double more) {
        assertThat(law.oldShare(turnovers + more))
                .isLessThanOrEqualTo(law.oldShare(turnovers))
                .isBetween(0.0, 1.0);
        assertThat(law.oldShare(0)).isEqualTo(1);
        assertThat(law.turnovers(1)).isZero();
    }

    /** The mean residence is the integral of the old share: one turnover. The tail beyond 400 falls with t^-2 at most. */
    @Property(seed = "4", tries = 40)
    void holdsOneTurnover(@ForAll("laws") Washout law) {
        double end = 400;
        double step = end / STEPS;
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            sum += law.oldShare((i + 0.5) * step) * step;
        }
        double tail = law.oldShare(end) * end;

        assertThat(sum + tail).isEqualTo(1, within(2e-3));
    }
}
