package spoolyard.core.record;

/** What a work place of a finishing station is doing; at every instant exactly one. */
public enum ServerState {
    /** Works on spools. */
    WORKING("working", true),
    /** A stoppage is being put right or waits for it. */
    DOWN("down", true),
    /** Finished, but the next station has no room. */
    BLOCKED("blocked", false),
    /** Spools are there, nobody to work on them. */
    WAITING_FOR_CREW("waiting for crew", false),
    /** Spools are there, no carton to put them in. */
    NO_CARTON("no carton", false),
    /** Nothing to work on. */
    STARVED("starved", false),
    /** Outside its opening hours. */
    CLOSED("closed", false);

    private final String label;
    private final boolean active;

    ServerState(String label, boolean active) {
        this.label = label;
        this.active = active;
    }

    /**
     * Name for people and files.
     *
     * @return lower-case words
     */
    public String label() {
        return label;
    }

    /**
     * Whether this is an active period (see {@link LineState#isActive()}).
     *
     * @return true if active
     */
    public boolean isActive() {
        return active;
    }
}
