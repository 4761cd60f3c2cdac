package spoolyard.core.random;

/** The inverse of a distribution function. Immutable, safe among threads. */
@FunctionalInterface
interface Quantile {
    /**
     * The value below which a share of the draws falls.
     *
     * @param u the share, in the open interval (0, 1) and as far from its ends as the numbers of a stream, 2<sup>-32</sup>
     * @return the value, {@code >= 0}; never decreases in {@code u}
     */
    double at(double u);
}
