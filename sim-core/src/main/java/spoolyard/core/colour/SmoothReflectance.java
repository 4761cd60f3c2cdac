package spoolyard.core.colour;

import java.util.Arrays;
import java.util.Optional;

/**
 * Finds a reflectance for a colour. L*a*b* are three numbers and fit infinitely many curves; this is the smoothest that a
 * surface can have: with {@code R = (1 + tanh z) / 2} in each band, so that {@code 0 < R < 1}, the sum of the squared steps
 * of {@code z} is least under the condition that the colour is met exactly. Solved by Newton's method on the Lagrangian,
 * where need be in several strides on the straight way from the grey of the same luminance: if the colour is possible, so
 * are all on that way.
 *
 * <p>Source: S. A. Burns, Numerical methods for smoothest reflectance reconstruction, Color Research and Application 45
 * (2020) 8-21, least hyperbolic tangent slope squared.
 */
final class SmoothReflectance {
    private static final int BANDS = CieTables.BANDS;
    private static final int MOST_STEPS = 12;
    private static final double CLOSE = 1e-11;
    private static final double SHORTEST_STRIDE = 1e-4;

    private final double[][] weights;
    private final double[] grey;
    private final double[] target;
    private final double[] wanted = new double[3];
    private final double[] unknowns = new double[BANDS + 3];

    private SmoothReflectance(Viewing viewing, Tristimulus target) {
        weights = viewing.weights();
        Tristimulus white = viewing.white();
        grey = new double[] {white.x() * target.y(), target.y(), white.z() * target.y()};
        this.target = new double[] {target.x(), target.y(), target.z()};
    }

    /**
     * Finds it.
     *
     * @param colour the colour
     * @param viewing light and eye
     * @return reflectance of each band, in (0, 1); empty if no surface can have the colour. Cost: a few systems of 39
     *     equations
     */
    static Optional<double[]> of(CieLab colour, Viewing viewing) {
        return new SmoothReflectance(viewing, colour.xyz(viewing.white())).solved();
    }

    private Optional<double[]> solved() {
        if (!(target[1] > 0 && target[1] < 1)) {
            return Optional.empty();
        }
        Arrays.fill(unknowns, 0, BANDS, 0.5 * Math.log(target[1] / (1 - target[1])));
        double done = 0;
        double stride = 1;
        while (done < 1 && stride >= SHORTEST_STRIDE) {
            double next = Math.min(1, done + stride);
            double[] before = unknowns.clone();
            if (isMet(next)) {
                done = next;
                stride *= 2;
            } else {
                System.arraycopy(before, 0, unknowns, 0, unknowns.length);
                stride /= 4;
            }
        }
        return done >= 1 ? Optional.of(reflectance()) : Optional.empty();
    }

    /** Whether Newton's method, from where it stands, meets the colour so far on the way from grey. */
    private boolean isMet(double way) {
        for (int j = 0; j < 3; j++) {
            wanted[j] = grey[j] + way * (target[j] - grey[j]);
        }
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] residual = residual();
            if (largest(residual) < CLOSE) {
                return true;
            }
            Optional<double[]> move = LinearSystem.solution(jacobian(), residual);
            if (move.isEmpty()) {
                return false;
            }
            for (int i = 0; i < unknowns.length; i++) {
                unknowns[i] -= move.get()[i];
            }
        }
        return false;
    }

    private double[] residual() {
        double[] residual = new double[unknowns.length];
        for (int i = 0; i < BANDS; i++) {
            residual[i] = curvature(i) + halfSech2(i) * multiplied(i);
        }
        for (int j = 0; j < 3; j++) {
            double sum = -wanted[j];
            for (int i = 0; i < BANDS; i++) {
                sum += weights[j][i] * reflectance(i);
            }
            residual[BANDS + j] = sum;
        }
        return residual;
    }

    private double[][] jacobian() {
        double[][] jacobian = new double[unknowns.length][unknowns.length];
        for (int i = 0; i < BANDS; i++) {
            boolean isEdge = i == 0 || i == BANDS - 1;
            jacobian[i][i] = (isEdge ? 2 : 4) - 2 * halfSech2(i) * Math.tanh(unknowns[i]) * multiplied(i);
            if (i > 0) {
                jacobian[i][i - 1] = -2;
                jacobian[i - 1][i] = -2;
            }
            for (int j = 0; j < 3; j++) {
                jacobian[i][BANDS + j] = halfSech2(i) * weights[j][i];
                jacobian[BANDS + j][i] = halfSech2(i) * weights[j][i];
            }
        }
        return jacobian;
    }

    private double curvature(int i) {
        double below = i > 0 ? unknowns[i] - unknowns[i - 1] : 0;
        double above = i < BANDS - 1 ? unknowns[i] - unknowns[i + 1] : 0;
        return 2 * (below + above);
    }

    private double multiplied(int i) {
        double sum = 0;
        for (int j = 0; j < 3; j++) {
            sum += weights[j][i] * unknowns[BANDS + j];
        }
        return sum;
    }

    private double halfSech2(int i) {
        double tanh = Math.tanh(unknowns[i]);
        return (1 - tanh * tanh) / 2;
    }

    /** {@code (1 + tanh z) / 2}, exact near zero too. */
    private double reflectance(int i) {
        return 1 / (1 + Math.exp(-2 * unknowns[i]));
    }

    private double[] reflectance() {
        double[] reflectance = new double[BANDS];
        for (int i = 0; i < BANDS; i++) {
            reflectance[i] = reflectance(i);
        }
        return reflectance;
    }

    private static double largest(double[] values) {
        double largest = 0;
        for (double value : values) {
            largest = Math.max(largest, Math.abs(value));
        }
        return largest;
    }
}
