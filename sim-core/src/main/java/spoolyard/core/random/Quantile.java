package spoolyard.core.random;

/** The inverse of a distribution function. Immutable, safe among threads. */
@FunctionalInterface
interface Quantile {
    /**
     * The value below which a share of the draws falls.
     *
     * @param u the share, in the open interval (0, 1)
     * @return the value, {@code >= 0}; never decreases in {@code u}
     */
    double at(double u);
}
