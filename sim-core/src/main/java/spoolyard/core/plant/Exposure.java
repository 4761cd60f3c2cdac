package spoolyard.core.plant;

/**
 * How spools that wait for sealing in moist air are dealt with. The limit of each polymer is
 * {@link Polymer#exposureLimitS()}. Immutable.
 *
 * @param beyond what happens to a spool beyond its limit, which is seen when it is its turn to be sealed
 * @param order which spool is sealed next
 * @param oven where spools are dried again
 */
public record Exposure(Beyond beyond, Order order, Oven oven) {
    /** What happens to a spool beyond its limit. */
    public enum Beyond {
        /** It is sealed all the same and only counted. */
        SEAL,
        /** It is dried again. */
        RE_DRY,
        /** It is ground. */
        SCRAP
    }

    /** Which spool is sealed next. */
    public enum Order {
        /** The one that came first. */
        FIRST_COME,
        /** The one whose clock runs out first. */
        TIGHTEST_CLOCK_FIRST
    }

    /**
     * Ovens for spools.
     *
     * @param ovens how many, {@code >= 1}
     * @param spools spools in an oven at once, {@code >= 1}; it starts with what is there
     * @param dryingS time, seconds
     * @param scrapped chance that a spool is not good after it, in [0, 1]
     * @param crew who stands by; usually nobody
     */
    public record Oven(int ovens, int spools, Law dryingS, double scrapped, CrewNeed crew) {
        /** For plants that dry no spool again. */
        public static final Oven NONE = new Oven(1, 1, Law.ZERO, 0, CrewNeed.NOBODY);
    }
}
