package spoolyard.core.gauge;

import spoolyard.core.random.Normal;

/**
 * The chance that of two jointly normal values with mean zero the first lies within a tolerance and the second without:
 * the integral over the first value of its density times the chance, given it, that the second is outside (composite
 * Simpson rule).
 */
final class Exit {
    private static final int FEWEST_STEPS = 128;
    private static final int MOST_STEPS = 1 << 16;
    private static final double STEPS_IN_A_SPREAD = 40;

    private Exit() {}

    static double probability(double firstVariance, double secondVariance, double covariance, double tolerance) {
        double first = Math.sqrt(firstVariance);
        double slope = covariance / firstVariance;
        double rest = Math.sqrt(Math.max(0, secondVariance - slope * covariance));
        double finest = Math.min(first, rest / Math.max(1e-9, Math.abs(slope)));
        double wanted = tolerance / Math.max(finest, tolerance / MOST_STEPS) * STEPS_IN_A_SPREAD;
        int steps = 2 * (int) Math.ceil(Math.min(MOST_STEPS, Math.max(FEWEST_STEPS, wanted)) / 2);
        double sum = 0;
        for (int i = 0; i <= steps; i++) {
            double x = tolerance * i / steps;
            double outside =
                    Normal.above((tolerance - slope * x) / rest) + Normal.above((tolerance + slope * x) / rest);
            double weight = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * Normal.density(x / first) / first * outside;
        }
        return 2 * sum * tolerance / steps / 3;
    }
}
