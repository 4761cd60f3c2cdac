package spoolyard.analysis.sequence;

import java.util.Arrays;

/**
 * Makes a concave function of numbers {@code >= 0} great by steps along its subgradient, whose size is fitted to each number. Ends
 * anywhere: the numbers are good, not the best. The same for the same function. For one thread, once.
 *
 * <p>Source, from memory: steps by moving means of the slope and of its square, Kingma and Ba, International Conference on Learning
 * Representations, 2015.
 */
final class Ascent {
    private static final double FIRST = 0.3;
    private static final double LAST = 0.001;
    private static final double MEMORY = 0.9;
    private static final double MEMORY_OF_SQUARES = 0.99;

    private final Slope function;
    private final double scale;
    private final double[] number;
    private final double[] slope;
    private final double[] mean;
    private final double[] square;
    private double[] best;
    private double bestValue = Double.NEGATIVE_INFINITY;

    /** A function with its subgradient. */
    @FunctionalInterface
    interface Slope {
        /** The value; fills the subgradient, and may change numbers that are not allowed. */
        double at(double[] number, double[] slope);
    }

    Ascent(Slope function, double[] start, double scale) {
        this.function = function;
        this.scale = scale;
        number = start.clone();
        best = start.clone();
        slope = new double[start.length];
        mean = new double[start.length];
        square = new double[start.length];
        Arrays.fill(square, 1e-12);
    }

    /** The best numbers on the way. */
    double[] run(int steps) {
        for (int step = 1; step <= steps; step++) {
            double value = function.at(number, slope);
            if (value > bestValue) {
                bestValue = value;
                best = number.clone();
            }
            move(step, FIRST * Math.pow(LAST / FIRST, (double) step / steps));
        }
        return best;
    }

    private void move(int step, double share) {
        double unbiased = 1 - Math.pow(MEMORY, step);
        double unbiasedSquare = 1 - Math.pow(MEMORY_OF_SQUARES, step);
        for (int i = 0; i < number.length; i++) {
            mean[i] = MEMORY * mean[i] + (1 - MEMORY) * slope[i];
            square[i] = MEMORY_OF_SQUARES * square[i] + (1 - MEMORY_OF_SQUARES) * slope[i] * slope[i];
            double towards = mean[i] / unbiased / Math.sqrt(square[i] / unbiasedSquare);
            number[i] = Math.max(0, number[i] + share * scale * towards);
        }
    }
}
