package spoolyard.scenarios.fault;

/**
 * Something in a sound scenario that a plant engineer would want to know before trusting a result. Immutable.
 *
 * @param kind what sort of warning
 * @param origin where the reason stands
 * @param message one or two sentences
 */
public record Warning(Kind kind, Origin origin, String message) {
    /** Sorts of warnings. */
    public enum Kind {
        /** An order that no line can make. */
        ORDER_WITHOUT_LINE,
        /** An order in a polymer in which its colour is not offered. */
        COLOUR_NOT_OFFERED,
        /** An order due before the fastest line could finish it. */
        DUE_TOO_SOON,
        /** A line with more eligible work than hours. */
        LINE_OVERLOADED,
        /** A crew with more work than people. */
        CREW_OVERLOADED,
        /** Work for which nobody is there who may do it: winders that run in a shift, anything else in all of them. */
        NOBODY_TO_ATTEND,
        /** A winder that cannot catch up after a swap. */
        WINDER_TOO_SLOW,
        /** An accumulator that cannot take up what comes while the crew swaps a spool. */
        ACCUMULATOR_TOO_SMALL,
        /** A dryer hopper that cannot dry as fast as its line could run. */
        DRYER_TOO_SMALL,
        /** A hopper, a drying time or dryers on wheels without effect. */
        DRYING_IN_VAIN,
        /** A stock that what is ordered needs more of. */
        STOCK_TOO_SMALL,
        /** More is ordered too late to come in time. */
        REORDER_TOO_LATE,
        /** Regrind where it is not used, or more of it than usual. */
        REGRIND_UNUSUAL,
        /** A lab or an exposure clock that cannot do what it is there for. */
        QUALITY_IN_VAIN,
        /** A rack that fills while finishing is closed. */
        RACK_TOO_SMALL,
        /** Finishing that cannot keep up with the lines. */
        FINISHING_TOO_SLOW,
        /** A tolerance that much of what a line makes does not keep. */
        TOLERANCE_TOO_TIGHT,
        /** A column of a table that nobody reads. */
        COLUMN_IGNORED,
        /** A wall-clock time that a clock change skips or repeats. */
        CLOCK_CHANGE,
        /** A roster that labour law may not allow. */
        LABOUR_LAW
    }

    /**
     * The warning as it is shown to people.
     *
     * @return place and message on one line
     */
    public String text() {
        return origin.where() + ": " + message;
    }
}
