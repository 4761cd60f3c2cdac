package spoolyard.analysis.schedule;

/**
 * A place on a line. Immutable.
 *
 * @param kind what sort of place
 * @param other the order that it is told by; empty for the first and the last place
 */
public record Spot(Kind kind, String other) {
    /** Sorts of places. */
    public enum Kind {
        /** Before all orders that are not frozen. */
        FIRST,
        /** After all orders. */
        LAST,
        /** Just before another order of the line. */
        BEFORE,
        /** Just after another order of the line. */
        AFTER
    }
}
