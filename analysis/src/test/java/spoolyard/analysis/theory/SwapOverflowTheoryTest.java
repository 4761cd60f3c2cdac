package spoolyard.analysis.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static spoolyard.analysis.theory.CheckTable.number;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.Law;

/** Overflow of an accumulator by the law of the swap time; sources at each check and in {@code checks/SOURCES.md}. */
final class SwapOverflowTheoryTest {
    private static final Percentage DIGITS = Percentage.withPercentage(1e-9);

    /** Hand: C/v = 60 m / (4/3 m/s) = 45 s; a swap of 48 s loses 3 s x 4/3 m/s = 4 m, one of 45 s just fits. */
    @Test
    void fixedSwapLosesWhatExceedsTheRoom() {
        SwapOverflow slow = new SwapOverflow(new Law.Fixed(48), 60, 4.0 / 3);
        SwapOverflow fits = new SwapOverflow(new Law.Fixed(45), 60, 4.0 / 3);

        assertThat(slow.graceS()).isCloseTo(45, within(1e-12));
        assertThat(slow.probability()).isEqualTo(1);
        assertThat(slow.meanLossM()).isCloseTo(4, within(1e-12));
        assertThat(fits.probability()).isZero();
        assertThat(fits.meanLossM()).isZero();
    }

    /** Hand: of 10, 20, 30, 40 s two exceed 25 s, by 5 and 15 s: 1/2, and 2 m/s x 20 s / 4 = 10 m. */
    @Test
    void observedSwapsCountEachValueOnce() {
        SwapOverflow overflow = new SwapOverflow(new Law.Observed(List.of(40.0, 10.0, 30.0, 20.0)), 50, 2);

        assertThat(overflow.probability()).isEqualTo(0.5);
        assertThat(overflow.meanLossM()).isCloseTo(10, within(1e-12));
    }

    /** A chi-square law with n degrees of freedom is gamma with mean n and cv sqrt(2/n); quantiles of GNU R. */
    @Test
    void gammaTailAgreesWithChiSquareQuantiles() {
        for (CSVRecord row : CheckTable.rows("stats/chi2_quantiles.csv")) {
            double degrees = number(row, "df");
            Law.Gamma law = new Law.Gamma(degrees, Math.sqrt(2 / degrees));
            SwapOverflow overflow = new SwapOverflow(law, number(row, "chi2"), 1);

            assertThat(overflow.probability()).isCloseTo(1 - number(row, "p"), within(1e-11));
        }
    }

    /** If ln S is normal with mean m and deviation s, P(S > exp(m + s z)) = 1 - Phi(z); quantiles of GNU R. */
    @Test
    void lognormalTailAgreesWithNormalQuantiles() {
        double sigma = 0.4;
        Law.Lognormal law = new Law.Lognormal(18, Math.sqrt(Math.expm1(sigma * sigma)));
        for (CSVRecord row : CheckTable.rows("stats/normal_quantiles.csv")) {
            double threshold = 18 * Math.exp(-sigma * sigma / 2 + sigma * number(row, "z"));
            SwapOverflow overflow = new SwapOverflow(law, threshold, 1);

            assertThat(overflow.probability()).isCloseTo(1 - number(row, "p"), within(1e-12));
        }
    }

    /**
     * The excess of a lognormal is an undiscounted call price. J. C. Hull, Options, Futures and Other Derivatives, the
     * worked example of the Black-Scholes chapter (value from memory): spot 42, strike 40, rate 10 %, volatility 20 %,
     * half a year: N(d1) = 0.7791, N(d2) = 0.7349, call 4.76.
     */
    @Test
    void lognormalExcessAgreesWithAPublishedOptionPrice() {
        double growth = Math.exp(0.1 * 0.5);
        double cv = Math.sqrt(Math.expm1(0.2 * 0.2 * 0.5));
        SwapOverflow overflow = new SwapOverflow(new Law.Lognormal(42 * growth, cv), 40, 1);

        assertThat(overflow.probability()).isCloseTo(0.7349, within(0.00005));
        assertThat(overflow.meanLossM() / growth).isCloseTo(4.76, within(0.005));
    }

    /**
     * Source: for a whole shape k the gamma tail is a Poisson sum (Erlang 1917). Hand, k = 4, mean 4, a = 2: P = e^-2 (1 + 2
     * + 2 + 4/3) = 19/3 e^-2; with k = 5: 7 e^-2; excess = 4 x 7 e^-2 - 2 x 19/3 e^-2 = 46/3 e^-2.
     */
    @Test
    void gammaOfWholeShapeAgreesWithThePoissonSum() {
        SwapOverflow overflow = new SwapOverflow(new Law.Gamma(4, 0.5), 4, 2);

        assertThat(overflow.probability()).isCloseTo(19.0 / 3 * Math.exp(-2), DIGITS);
        assertThat(overflow.meanLossM()).isCloseTo(2 * 46.0 / 3 * Math.exp(-2), DIGITS);
    }

    /** Hand: P(S > a) = e^(-a/m), excess m e^(-a/m); a Weibull law of shape 1 is the same. */
    @Test
    void exponentialForgets() {
        SwapOverflow exponential = new SwapOverflow(new Law.Exponential(20), 60, 2);
        SwapOverflow weibull = new SwapOverflow(new Law.Weibull(20, 1), 60, 2);

        assertThat(exponential.probability()).isCloseTo(Math.exp(-1.5), DIGITS);
        assertThat(exponential.meanLossM()).isCloseTo(40 * Math.exp(-1.5), DIGITS);
        assertThat(weibull.meanLossM()).isCloseTo(exponential.meanLossM(), DIGITS);
    }

    /**
     * Hand, shape 1/2 and mean 2 (scale 1): P(S > t) = e^-sqrt(t); the integral from 4 is 2 (sqrt(4) + 1) e^-2 = 6 e^-2.
     */
    @Test
    void weibullOfShapeOneHalfAgreesWithItsIntegral() {
        SwapOverflow overflow = new SwapOverflow(new Law.Weibull(2, 0.5), 4, 1);

        assertThat(overflow.probability()).isCloseTo(Math.exp(-2), DIGITS);
        assertThat(overflow.meanLossM()).isCloseTo(6 * Math.exp(-2), DIGITS);
    }

    /** Hand: uniform on 10 to 30 s; above 25 s a quarter, excess 25/40 s; from 5 s all, excess 15 s. */
    @Test
    void uniformIsAStraightLine() {
        Law.Uniform law = new Law.Uniform(10, 30);

        assertThat(new SwapOverflow(law, 25, 1).probability()).isCloseTo(0.25, DIGITS);
        assertThat(new SwapOverflow(law, 25, 1).meanLossM()).isCloseTo(0.625, DIGITS);
        assertThat(new SwapOverflow(law, 5, 1).probability()).isEqualTo(1);
        assertThat(new SwapOverflow(law, 5, 1).meanLossM()).isCloseTo(15, DIGITS);
        assertThat(new SwapOverflow(law, 31, 1).meanLossM()).isZero();
        assertThat(new SwapOverflow(new Law.Uniform(7, 7), 5, 1).meanLossM()).isCloseTo(2, DIGITS);
    }

    /**
     * Hand: triangular 0, 6, 10 s. Above 8 s: 2^2/(10 x 4) = 1/10, excess 2^3/(3 x 40) = 1/15. Above 3 s: 1 - 9/60 = 17/20,
     * excess 16/3 - 3 + 27/180 = 149/60.
     */
    @Test
    void triangularIsTwoParabolas() {
        Law.Triangular law = new Law.Triangular(0, 6, 10);

        assertThat(new SwapOverflow(law, 8, 1).probability()).isCloseTo(0.1, DIGITS);
        assertThat(new SwapOverflow(law, 8, 1).meanLossM()).isCloseTo(1.0 / 15, DIGITS);
        assertThat(new SwapOverflow(law, 3, 1).probability()).isCloseTo(0.85, DIGITS);
        assertThat(new SwapOverflow(law, 3, 1).meanLossM()).isCloseTo(149.0 / 60, DIGITS);
        assertThat(new SwapOverflow(law, 10, 1).probability()).isZero();
        assertThat(new SwapOverflow(new Law.Triangular(2, 2, 5), 1, 1).meanLossM())
                .isCloseTo(2, DIGITS);
    }

    @Test
    void withoutRoomEverySwapLosesItsWholeTime() {
        for (Law law : List.of(
                new Law.Fixed(18),
                new Law.Lognormal(18, 0.25),
                new Law.Gamma(18, 0.25),
                new Law.Weibull(18, 2),
                new Law.Exponential(18),
                new Law.Uniform(16, 20),
                new Law.Triangular(16, 18, 20))) {
            SwapOverflow overflow = new SwapOverflow(law, 0, 1.5);

            assertThat(overflow.probability()).isEqualTo(1);
            assertThat(overflow.meanLossM()).isCloseTo(27, DIGITS);
        }
    }

    @Test
    void refusesArgumentsOutOfRangeAndNamesThem() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SwapOverflow(Law.ZERO, 60, 0))
                .withMessage("lineSpeedMPerS = 0.0. Must be finite and > 0.");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SwapOverflow(Law.ZERO, -1, 1))
                .withMessage("roomM = -1.0. Must be finite and >= 0.");
    }
}
