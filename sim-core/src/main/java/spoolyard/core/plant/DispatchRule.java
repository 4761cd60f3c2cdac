package spoolyard.core.plant;

/** How a free line picks its next order among those released, not yet started, and allowed on it. */
public enum DispatchRule {
    /** Smallest due date; ties by priority, then by place in the order book. */
    DUE_DATE_FIRST,
    /**
     * Next colour up the way from light to dark: the lightest colour not lighter than the present one, polymer and
     * diameter unchanged where possible; when none is left, the lightest of all. Ties by due date.
     */
    LIGHTEST_NEXT,
    /** Least purge in kg from what is on the line now; ties by due date. */
    LEAST_PURGE_NEXT,
    /** The sequence given for each line in {@link OrderBook#givenSequence()}; the line waits for the next one's release. */
    GIVEN_SEQUENCE
}
