package spoolyard.analysis.experiment;

import org.hipparchus.distribution.continuous.BetaDistribution;

/**
 * How often something happened in independent trials, and between which limits its probability lies. Immutable.
 *
 * <p>The exact interval: each limit is the probability at which as many or more, or as few or fewer, would happen in half
 * of what the level leaves. It never covers less than its level, and covers more with few trials. Source: C. J. Clopper and
 * E. S. Pearson, The use of confidence or fiducial limits illustrated in the case of the binomial, Biometrika 26 (1934)
 * 404-413; by quantiles of the beta distribution.
 *
 * @param count how often it happened, 0 to {@code trials}
 * @param trials number of trials, {@code >= 1}
 * @param level level of confidence, in (0, 1)
 */
public record Proportion(int count, int trials, double level) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if a number is out of range
     */
    public Proportion {
        if (trials < 1 || count < 0 || count > trials || !(level > 0 && level < 1)) {
            throw new IllegalArgumentException("count = " + count + ", trials = " + trials + ", level = " + level
                    + ". Must be from 0 to the trials, >= 1, and in (0, 1).");
        }
    }

    /**
     * Observed.
     *
     * @return count over trials, in [0, 1]
     */
    public double share() {
        return count / (double) trials;
    }

    /**
     * Lower limit.
     *
     * @return in [0, share]
     */
    public double low() {
        return count == 0 ? 0 : quantile(count, trials - count + 1.0, (1 - level) / 2);
    }

    /**
     * Upper limit.
     *
     * @return in [share, 1]
     */
    public double high() {
        return count == trials ? 1 : quantile(count + 1.0, trials - count, (1 + level) / 2);
    }

    private static double quantile(double alpha, double beta, double probability) {
        return new BetaDistribution(alpha, beta).inverseCumulativeProbability(probability);
    }
}
