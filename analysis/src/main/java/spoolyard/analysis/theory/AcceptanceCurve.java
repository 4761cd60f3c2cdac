package spoolyard.analysis.theory;

/**
 * Operating characteristic of a single sampling plan by attributes: the chance that a lot is accepted. Immutable.
 *
 * <p>Source: D. C. Montgomery, Introduction to Statistical Quality Control, section on single-sampling plans: type B curve
 * (lots from a process, binomial law) and type A curve (one lot of known content, hypergeometric law).
 *
 * @param sampleSize n, {@code >= 1}
 * @param acceptance Ac, {@code >= 0}: accepted with at most so many defective in the sample
 */
public record AcceptanceCurve(int sampleSize, int acceptance) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if an argument is out of range
     */
    public AcceptanceCurve {
        Ranges.atLeastOne("sampleSize", sampleSize);
        Ranges.notNegative("acceptance", acceptance);
    }

    /**
     * Type B: each spool is defective with the same chance. Cost: O(Ac).
     *
     * @param share that chance, in [0, 1)
     * @return sum over d up to Ac of C(n, d) p<sup>d</sup> (1 - p)<sup>n - d</sup>
     */
    public double binomial(double share) {
        double odds = share / (1 - share);
        double term = Math.pow(1 - share, sampleSize);
        double sum = term;
        for (int d = 1; d <= Math.min(acceptance, sampleSize); d++) {
            term *= odds * (sampleSize - d + 1) / d;
            sum += term;
        }
        return sum;
    }

    /**
     * Type A: a lot with a known number of defective spools. Cost: O(n + Ac).
     *
     * @param lot spools in the lot, {@code >= n}
     * @param defective defective ones among them, in [0, lot]
     * @return sum over d up to Ac of C(D, d) C(N - D, n - d) / C(N, n)
     */
    public double hypergeometric(int lot, int defective) {
        double sum = 0;
        for (int d = 0; d <= Math.min(acceptance, sampleSize); d++) {
            sum += inSample(lot, defective, d);
        }
        return sum;
    }

    /** Chance of exactly d defective spools in the sample: C(n, d) times that of them coming first. */
    private double inSample(int lot, int defective, int d) {
        if (d > defective || sampleSize - d > lot - defective) {
            return 0;
        }
        double chance = 1;
        for (int i = 0; i < d; i++) {
            chance *= (defective - i) / (double) (lot - i) * (sampleSize - i) / (i + 1);
        }
        for (int i = 0; i < sampleSize - d; i++) {
            chance *= (lot - defective - i) / (double) (lot - d - i);
        }
        return chance;
    }
}
