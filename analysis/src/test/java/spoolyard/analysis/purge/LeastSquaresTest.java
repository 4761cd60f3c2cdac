package spoolyard.analysis.purge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/**
 * Fits against the certified values of NIST/ITL Statistical Reference Datasets, nonlinear regression, from the first of the
 * two starts that come with each (values from memory, confirmed to all digits shown by another program's fit).
 */
class LeastSquaresTest {
    /** Misra1a: y = b1 (1 - exp(-b2 x)), lower difficulty. */
    @Test
    void agreesWithMisra1a() {
        double[] x = {77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0};
        double[] y = {10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78};

        LeastSquares fit = LeastSquares.of(
                        curve(x, (b, at) -> b[0] * -Math.expm1(-b[1] * at)), y, new double[] {500, 0.0001})
                .orElseThrow();

        assertThat(fit.parameters().get(0) / 2.3894212918E+02).isEqualTo(1, within(1e-7));
        assertThat(fit.parameters().get(1) / 5.5015643181E-04).isEqualTo(1, within(1e-7));
        assertThat(fit.standardErrors().get(0) / 2.7070075241E+00).isEqualTo(1, within(1e-5));
        assertThat(fit.standardErrors().get(1) / 7.2668688436E-06).isEqualTo(1, within(1e-5));
        assertThat(fit.spread() / 1.0187876330E-01).isEqualTo(1, within(1e-7));
    }

    /** DanWood: y = b1 x^b2, lower difficulty. */
    @Test
    void agreesWithDanWood() {
        double[] x = {1.309, 1.471, 1.490, 1.565, 1.611, 1.680};
        double[] y = {2.138, 3.421, 3.597, 4.340, 4.882, 5.660};

        LeastSquares fit = LeastSquares.of(curve(x, (b, at) -> b[0] * Math.pow(at, b[1])), y, new double[] {1, 5})
                .orElseThrow();

        assertThat(fit.parameters().get(0) / 7.6886226176E-01).isEqualTo(1, within(1e-7));
        assertThat(fit.parameters().get(1) / 3.8604055871E+00).isEqualTo(1, within(1e-7));
        assertThat(fit.standardErrors().get(0) / 1.8281973860E-02).isEqualTo(1, within(1e-5));
        assertThat(fit.standardErrors().get(1) / 5.1726610913E-02).isEqualTo(1, within(1e-5));
        assertThat(fit.spread() / 3.2853114039E-02).isEqualTo(1, within(1e-7));
        // t(0.975; 4) = 2.776445, GNU R
        assertThat(fit.halfWidth(1, 0.95) / (2.776445 * 5.1726610913E-02)).isEqualTo(1, within(1e-5));
    }

    /** A straight line by hand: leave a point out, fit the rest, and divide its distance by its standard error. */
    @Test
    void studentisesAsAFitWithoutThePointWould() {
        double[] x = {1, 2, 3, 4, 5};
        double[] y = {1.1, 1.9, 3.2, 3.9, 6.0};

        LeastSquares all = LeastSquares.of(curve(x, (b, at) -> b[0] + b[1] * at), y, new double[] {0, 1})
                .orElseThrow();

        double[] fewerX = Arrays.copyOf(x, 4);
        LeastSquares fewer = LeastSquares.of(
                        curve(fewerX, (b, at) -> b[0] + b[1] * at), Arrays.copyOf(y, 4), new double[] {0, 1})
                .orElseThrow();
        double distance =
                6.0 - fewer.parameters().get(0) - 5 * fewer.parameters().get(1);
        // variance of a prediction at 5 from points 1 to 4: s^2 (1 + 1/4 + 2.5^2 / 5)
        double error = fewer.spread() * Math.sqrt(1 + 0.25 + 1.25);
        assertThat(all.studentised().get(4)).isEqualTo(distance / error, within(1e-6));
    }

    @Test
    void tellsParametersThatCannotBeToldApart() {
        double[] x = {1, 2, 3, 4, 5};

        Optional<LeastSquares> fit = LeastSquares.of(
                curve(x, (b, at) -> (b[0] + b[1]) * at), new double[] {1, 2, 3, 4, 6}, new double[] {0.5, 0.5});

        assertThat(fit).isEmpty();
    }

    private interface Curve {
        double at(double[] parameters, double x);
    }

    private static Function<double[], double[]> curve(double[] x, Curve curve) {
        return parameters ->
                Arrays.stream(x).map(each -> curve.at(parameters, each)).toArray();
    }
}
