package spoolyard.core.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import umontreal.ssj.probdistmulti.BiNormalGenzDist;

/** The long-run law of the loop against published formulas and against brute force. */
class StationaryDiameterTest {
    private static GaugeLoop loop(int deadSamples, double white, double phi, double gain) {
        return new GaugeLoop(1, deadSamples, white, 1, phi, gain);
    }

    /** Mean square of the responses to a unit shock in every noise input at every instant: no covariance is solved. */
    private static double bruteForceVariance(GaugeLoop loop, int deadTimes) {
        int b = loop.deadSamples();
        int end = b * deadTimes;
        double sum = 0;
        for (int at = 0; at < end; at++) {
            sum += meanSquareOfLastDeadTime(loop, end, at, loop.shockMm(), 0);
            sum += meanSquareOfLastDeadTime(loop, end, at, 0, loop.spreadMm());
        }
        return sum;
    }

    private static double meanSquareOfLastDeadTime(GaugeLoop loop, int end, int at, double shock, double white) {
        int b = loop.deadSamples();
        double[] made = new double[end];
        double drift = 0;
        double correction = 0;
        double square = 0;
        for (int t = at / b * b; t < end; t++) {
            if (t % b == 0 && t - 2 * b >= 0) {
                double mean = 0;
                for (int s = t - 2 * b; s < t - b; s++) {
                    mean += made[s] / b;
                }
                correction -= loop.gain() * mean;
            }
            drift = loop.driftPerSample() * drift + (t == at ? shock : 0);
            made[t] = drift + correction + (t == at ? white : 0);
            square += t >= end - b ? made[t] * made[t] / b : 0;
        }
        return square;
    }

    @ParameterizedTest
    @CsvSource({"1,0,0.9,0.5", "1,0.7,0.5,0.9", "5,0.75,0.95,0.5", "8,0,0.9,0.3", "8,2,0.97,0.8", "3,0.5,0.2,0.1"})
    void hasTheVarianceOfTheSumOfAllShockResponses(int dead, double white, double phi, double gain) {
        GaugeLoop loop = loop(dead, white, phi, gain);

        double sd = StationaryDiameter.of(loop).standardDeviationMm();

        assertThat(sd * sd).isCloseTo(bruteForceVariance(loop, 1200 / dead), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.9, 0.9967})
    void withoutCorrectionHasTheVarianceOfDriftAndNoise(double phi) {
        double sd = StationaryDiameter.of(loop(7, 0.75, phi, 0)).standardDeviationMm();

        assertThat(sd * sd).isCloseTo(1 + 0.75 * 0.75, within(1e-12));
    }

    @Test
    void withoutCorrectionHasTheTailOfTheNormalLaw() {
        // Two-sided tails of the standard normal law at 1, 2, 3: Abramowitz and Stegun 1964, table 26.1 (from memory).
        StationaryDiameter unit = StationaryDiameter.of(loop(7, 0, 0.9, 0));

        assertThat(unit.shareOutside(1)).isCloseTo(0.3173105, within(1e-7));
        assertThat(unit.shareOutside(2)).isCloseTo(0.0455003, within(1e-7));
        assertThat(unit.shareOutside(3)).isCloseTo(0.0026998, within(1e-7));
    }

    @ParameterizedTest
    @CsvSource({"0.5,1", "0.9,2", "0.9,3", "0.9967,3", "0.9967,1.5", "0.2,4"})
    void withoutCorrectionLeavesAToleranceAsOftenAsTheBivariateNormalLawSays(double phi, double tolerance) {
        // P(|x| <= T < |y|) by the orthant probabilities of Genz, Statistics and Computing 14 (2004) 151-160, as coded
        // in SSJ; the crossing rate of a sampled normal process by them: Cramer and Leadbetter 1967, chapter 10.
        double oneAbove =
                BiNormalGenzDist.cdf(tolerance, -tolerance, phi) - BiNormalGenzDist.cdf(-tolerance, -tolerance, phi);

        double exits = StationaryDiameter.of(loop(4, 0, phi, 0)).exitsPerS(tolerance);

        assertThat(exits).isCloseTo(2 * oneAbove, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"1,0.9", "4,0.9", "8,0.9967", "20,0.97"})
    void noGainBeatsTheMinimumVarianceController(int dead, double phi) {
        // Error variance of the best forecast b samples ahead of an AR(1) process, which no controller with a delay of
        // b
        // can beat: Astrom, Introduction to Stochastic Control Theory, 1970, chapter 6; Box and Jenkins 1970, 5.2.
        double shock = 1 - phi * phi;
        double bound = shock * (1 - Math.pow(phi, 2 * dead)) / (1 - phi * phi);

        for (double gain = 0; gain < 0.96; gain += 0.05) {
            double sd = StationaryDiameter.of(loop(dead, 0, phi, gain)).standardDeviationMm();

            assertThat(sd * sd).as("gain %s", gain).isGreaterThan(bound);
        }
    }

    @Test
    void correctionHelpsAgainstSlowDriftAndHurtsAgainstNoise() {
        double drifting =
                StationaryDiameter.of(loop(8, 0.75, Math.exp(-1 / 300.0), 0.5)).standardDeviationMm();
        double noisy =
                StationaryDiameter.of(new GaugeLoop(1, 8, 1, 1e-9, 0.5, 0.5)).standardDeviationMm();

        assertThat(drifting).isLessThan(Math.sqrt(1 + 0.75 * 0.75));
        assertThat(noisy).isGreaterThan(1);
    }

    @Test
    void thePureNoiseLoopHasTheVarianceOfItsSecondOrderRecursion() {
        // With dead time of one sample and no drift, u(k+1) = u(k) - g (u(k-1) + w(k-1)): an AR(2) process with
        // coefficients 1 and -g and shock variance g^2. Its variance is (1 - a2) s^2 / ((1 + a2) ((1 - a2)^2 - a1^2)),
        // Box and Jenkins 1970, equation 3.2.28 (from memory), here with a1 = 1, a2 = -g.
        double g = 0.4;
        double ofCorrection = (1 + g) * g * g / ((1 - g) * ((1 + g) * (1 + g) - 1));

        double sd = StationaryDiameter.of(new GaugeLoop(1, 1, 1, 0, 0.5, g)).standardDeviationMm();

        assertThat(sd * sd).isCloseTo(1 + ofCorrection, within(1e-12));
    }
}
