package spoolyard.core.plant;

/**
 * A single sampling plan by attributes. Immutable.
 *
 * @param sampleSize spools taken at random from the lot, {@code >= 1}
 * @param acceptance Ac: the lot is accepted with at most so many defective spools in the sample, {@code >= 0}; with one
 *     more (Re) it is refused
 */
public record SamplingPlan(int sampleSize, int acceptance) {
    /** Checks the ranges. */
    public SamplingPlan {
        if (sampleSize < 1 || acceptance < 0) {
            throw new IllegalArgumentException(
                    "sample of " + sampleSize + ", Ac = " + acceptance + ". Must be >= 1 and >= 0.");
        }
    }

    /**
     * Whether a lot passes.
     *
     * @param defective defective spools in the sample
     * @return true if not more than the acceptance number
     */
    public boolean accepts(int defective) {
        return defective <= acceptance;
    }
}
