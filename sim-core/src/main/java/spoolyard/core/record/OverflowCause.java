package spoolyard.core.record;

/**
 * Why an accumulator filled during a swap.
 *
 * <p>Metres lost: the first of a swap, as many as the accumulator held above its home when the spool was full, are lost
 * because that level was carried over from the swap before; each metre beyond is lost to what held the swap at that
 * moment. An overflow counts under what it would have begun with had the accumulator been home, or under
 * {@link #CARRIED_OVER} if it would not have begun at all.
 */
public enum OverflowCause {
    /** No person had reached the winder yet. */
    NO_CREW("no crew"),
    /** A person was at work on it. */
    SWAP_TOO_SLOW("swap too slow"),
    /** The finished-spool rack was full. */
    RACK_FULL("rack full"),
    /** The winder had not caught up with the swap before when the spool was full. */
    CARRIED_OVER("level carried over");

    private final String label;

    OverflowCause(String label) {
        this.label = label;
    }

    /**
     * Name for people and files.
     *
     * @return lower-case words
     */
    public String label() {
        return label;
    }
}
