package spoolyard.core.record;

/** Where a run tells its spool changes, one by one. Off by default: {@link #SILENT}. */
@FunctionalInterface
public interface SwapLog {
    /** Tells nobody. */
    SwapLog SILENT = swap -> {};

    /**
     * A spool change of which all is known: told when the next spool of the strand is full, or at the end of the run.
     *
     * @param swap what happened
     */
    void tell(Swap swap);

    /**
     * Whether telling has any effect, so that a caller need not gather for nothing.
     *
     * @return false for {@link #SILENT} only
     */
    default boolean isOn() {
        return this != SILENT;
    }
}
