package spoolyard.core.record;

/** What held the swap when an accumulator filled. */
public enum OverflowCause {
    /** No person had reached the winder yet. */
    NO_CREW("no crew"),
    /** A person was at work on it. */
    SWAP_TOO_SLOW("swap too slow"),
    /** The finished-spool rack was full. */
    RACK_FULL("rack full");

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
