package spoolyard.core.plant;

/** What a line does when an accumulator can take no more. Immutable. */
public sealed interface OverflowPolicy {
    /** Filament goes to the scrap bin at line speed until the winder runs again; the strand stays alive. */
    record Waste() implements OverflowPolicy {}

    /** The line stops until the swap is done, then threads up and stabilises as after a strand break. */
    record Stop() implements OverflowPolicy {}

    /**
     * The whole line drops to its minimum speed while any of its accumulators is above a level and its winder stands;
     * an accumulator that fills all the same wastes.
     *
     * @param fromLevelShare share of the accumulator's room at which the line slows, in (0, 1]
     * @param minimumSpeedShare minimum speed as a share of the normal speed, in (0, 1)
     * @param scrapShare share of the metres made while slowed that is out of tolerance and cut out, in [0, 1]
     */
    record Slow(double fromLevelShare, double minimumSpeedShare, double scrapShare) implements OverflowPolicy {}
}
