package spoolyard.core.record;

/** Where a run tells what happens, event by event. Off by default: {@link #SILENT}. */
@FunctionalInterface
public interface EventLog {
    /** Tells nobody. */
    EventLog SILENT = (tick, station, what, detail) -> {};

    /**
     * One thing that happened.
     *
     * @param tick when, ticks since the start of the run; never decreases
     * @param station where: a line, a strand as {@code L4/2}, a station, or a person as {@code operator 2}
     * @param what what, in a few fixed words
     * @param detail more, or empty
     */
    void tell(long tick, String station, String what, String detail);

    /**
     * Whether telling has any effect, so that a caller need not build text for nothing.
     *
     * @return false for {@link #SILENT} only
     */
    default boolean isOn() {
        return this != SILENT;
    }
}
