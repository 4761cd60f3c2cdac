package spoolyard.core.gauge;

import spoolyard.core.random.Normal;

/**
 * The long-run law of the deviation in a {@link GaugeLoop}, exactly. The loop is linear and its noise is normal, so the
 * deviation is normal; its variance depends on how far the sample is from the last correction. State at a correction:
 * correction, mean measured but not yet used, drift. Its covariance {@code P} solves {@code P = A P A' + Q} (discrete
 * Lyapunov equation), by doubling. Immutable.
 *
 * <p>Source of the doubling: R. A. Smith, Matrix equation XA + BX = C, SIAM Journal on Applied Mathematics 16 (1968)
 * 198-201.
 */
public final class StationaryDiameter {
    private static final int MOST_DOUBLINGS = 60;
    private static final int CORRECTION = 0;
    private static final int MEASURED = 1;
    private static final int DRIFT = 2;

    private final GaugeLoop loop;
    private final double[] variances;
    private final double[] toNext;

    private StationaryDiameter(GaugeLoop loop, double[] variances, double[] toNext) {
        this.loop = loop;
        this.variances = variances;
        this.toNext = toNext;
    }

    /**
     * Solves a loop.
     *
     * @param loop the loop
     * @return its stationary law. Cost: O(dead time in samples)
     */
    public static StationaryDiameter of(GaugeLoop loop) {
        double[][] p = solve(transition(loop), noise(loop));
        int b = loop.deadSamples();
        double[] variances = new double[b];
        double[] toNext = new double[b];
        double phi = loop.driftPerSample();
        double drift = loop.driftSpreadMm() * loop.driftSpreadMm();
        double white = loop.spreadMm() * loop.spreadMm();
        double fade = phi;
        for (int j = 0; j < b; j++) {
            variances[j] = p[CORRECTION][CORRECTION] + 2 * fade * p[CORRECTION][DRIFT] + drift + white;
            toNext[j] = p[CORRECTION][CORRECTION] + (fade + fade * phi) * p[CORRECTION][DRIFT] + phi * drift;
            fade *= phi;
        }
        toNext[b - 1] = acrossCorrection(loop, p);
        return new StationaryDiameter(loop, variances, toNext);
    }

    /** Covariance of the last sample before a correction with the first after it. */
    private static double acrossCorrection(GaugeLoop loop, double[][] p) {
        double phi = loop.driftPerSample();
        double fade = Math.pow(phi, loop.deadSamples());
        double ofCorrections = p[CORRECTION][CORRECTION] - loop.gain() * p[CORRECTION][MEASURED];
        double driftAndNext = fade * (p[CORRECTION][DRIFT] - loop.gain() * p[MEASURED][DRIFT]);
        double correctionAndDrift = phi * fade * p[CORRECTION][DRIFT];
        return ofCorrections + driftAndNext + correctionAndDrift + phi * loop.driftSpreadMm() * loop.driftSpreadMm();
    }

    private static double[][] transition(GaugeLoop loop) {
        double meanFade = 0;
        double fade = 1;
        for (int j = 0; j < loop.deadSamples(); j++) {
            fade *= loop.driftPerSample();
            meanFade += fade / loop.deadSamples();
        }
        return new double[][] {{1, -loop.gain(), 0}, {1, 0, meanFade}, {0, 0, fade}};
    }

    private static double[][] noise(GaugeLoop loop) {
        int b = loop.deadSamples();
        double phi = loop.driftPerSample();
        double ofMean = 0;
        double ofBoth = 0;
        double ofDrift = 0;
        double power = 1;
        double sum = 0;
        for (int left = 0; left < b; left++) {
            sum += power;
            ofMean += sum * sum / b / b;
            ofBoth += sum * power / b;
            ofDrift += power * power;
            power *= phi;
        }
        double shock = loop.shockMm() * loop.shockMm();
        double white = loop.spreadMm() * loop.spreadMm() / b;
        return new double[][] {
            {0, 0, 0}, {0, shock * ofMean + white, shock * ofBoth}, {0, shock * ofBoth, shock * ofDrift}
        };
    }

    private static double[][] solve(double[][] transition, double[][] noise) {
        double[][] p = noise;
        double[][] a = transition;
        for (int i = 0; i < MOST_DOUBLINGS; i++) {
            double[][] next = Matrix3.plus(p, Matrix3.times(Matrix3.times(a, p), Matrix3.transposed(a)));
            if (Matrix3.isSame(next, p)) {
                return next;
            }
            p = next;
            a = Matrix3.times(a, a);
        }
        return p;
    }

    /**
     * Standard deviation over all samples.
     *
     * @return mm
     */
    public double standardDeviationMm() {
        double sum = 0;
        for (double variance : variances) {
            sum += variance;
        }
        return Math.sqrt(sum / variances.length);
    }

    /**
     * Share of the running time, and so of the metres, out of a tolerance.
     *
     * @param toleranceMm greatest allowed deviation, mm
     * @return a share
     */
    public double shareOutside(double toleranceMm) {
        double sum = 0;
        for (double variance : variances) {
            sum += 2 * Normal.above(toleranceMm / Math.sqrt(variance));
        }
        return sum / variances.length;
    }

    /**
     * How often the deviation leaves a tolerance, one sample in and the next out.
     *
     * @param toleranceMm greatest allowed deviation, mm
     * @return exits per second of running time. Cost: O(dead time in samples)
     */
    public double exitsPerS(double toleranceMm) {
        double sum = 0;
        int b = variances.length;
        for (int j = 0; j < b; j++) {
            sum += Exit.probability(variances[j], variances[(j + 1) % b], toNext[j], toleranceMm);
        }
        return sum / b / loop.sampleS();
    }
}
