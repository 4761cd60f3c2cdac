package spoolyard.analysis.theory;

/**
 * What is paid once as an equal amount at the end of each year, with interest: the capital recovery factor (A/P, i, n).
 *
 * <p>Source: L. Blank and A. Tarquin, Engineering Economy, 7th ed. 2012, section 2.2 (from memory).
 */
public final class CapitalRecovery {
    private CapitalRecovery() {}

    /**
     * The yearly amount for 1 paid now.
     *
     * @param interest rate a year as a share, {@code >= 0}
     * @param years life, {@code > 0}, not necessarily whole
     * @return {@code i (1 + i)^n / ((1 + i)^n - 1)}; without interest its limit {@code 1 / n}, an even write-off
     * @throws IllegalArgumentException outside these ranges
     */
    public static double factor(double interest, double years) {
        if (!(interest >= 0 && years > 0) || Double.isInfinite(interest) || Double.isInfinite(years)) {
            throw new IllegalArgumentException(
                    "interest = " + interest + ", years = " + years + ". Must be >= 0, > 0 and finite.");
        }
        return interest == 0 ? 1 / years : interest / -Math.expm1(-years * Math.log1p(interest));
    }
}
