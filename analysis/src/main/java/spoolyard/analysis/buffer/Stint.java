package spoolyard.analysis.buffer;

/**
 * What a person does for a while. Immutable.
 *
 * @param who the person, such as {@code operator 2}
 * @param what what, as the event log says it
 * @param detail on what and where; may be empty
 * @param startTick begin
 * @param endTick end; {@code Ticks.NEVER} if not within the run
 */
public record Stint(String who, String what, String detail, long startTick, long endTick) {
    /**
     * In words.
     *
     * @return for example {@code works: spool swap L3}
     */
    public String text() {
        return detail.isEmpty() ? what : what + ": " + detail;
    }

    boolean overlaps(long fromTick, long toTick) {
        return startTick < toTick && endTick > fromTick;
    }
}
