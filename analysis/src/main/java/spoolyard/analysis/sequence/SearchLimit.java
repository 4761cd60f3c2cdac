package spoolyard.analysis.sequence;

/**
 * When a search ends. Immutable. Only a limit on iterations gives the same plan every time.
 *
 * @param iterations changes tried by each chain, {@code > 0}; infinite for no limit
 * @param seconds time on the clock, {@code > 0}; infinite for no limit
 */
public record SearchLimit(double iterations, double seconds) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if a limit is not above 0, or there is none
     */
    public SearchLimit {
        if (!(iterations > 0 && seconds > 0) || Math.min(iterations, seconds) == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException(
                    "iterations = " + iterations + ", seconds = " + seconds + ". Both must be > 0 and one finite.");
        }
    }

    /**
     * A part of it.
     *
     * @param share {@code > 0}
     * @return both limits times the share
     */
    public SearchLimit times(double share) {
        return new SearchLimit(iterations * share, seconds * share);
    }

    /**
     * A number of iterations.
     *
     * @param count changes tried by each chain, {@code > 0}
     * @return the limit
     */
    public static SearchLimit iterations(double count) {
        return new SearchLimit(count, Double.POSITIVE_INFINITY);
    }

    /**
     * A time.
     *
     * @param seconds time on the clock, {@code > 0}
     * @return the limit
     */
    public static SearchLimit seconds(double seconds) {
        return new SearchLimit(Double.POSITIVE_INFINITY, seconds);
    }
}
