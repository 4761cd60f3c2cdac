package spoolyard.analysis.sequence;

/**
 * How to search. Immutable.
 *
 * @param limit when to end
 * @param seed any number; the same seed and a limit on iterations give the same plan
 * @param chains independent searches, {@code >= 1}, each with a seed of its own; the plan depends on their number
 * @param threads how many run at once, {@code >= 1}; the plan of a limit on iterations does not depend on it
 */
public record SearchSettings(SearchLimit limit, long seed, int chains, int threads) {
    /** Chains unless somebody asks for another number. */
    public static final int USUAL_CHAINS = 2;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if there is no chain or no thread
     */
    public SearchSettings {
        if (chains < 1 || threads < 1) {
            throw new IllegalArgumentException(
                    "chains = " + chains + ", threads = " + threads + ". Both must be >= 1.");
        }
    }
}
