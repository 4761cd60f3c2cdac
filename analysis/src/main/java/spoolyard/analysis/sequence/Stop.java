package spoolyard.analysis.sequence;

/** Lets somebody end a search early; it then returns the best plan so far. For any thread. */
public final class Stop {
    private volatile boolean asked;

    /** Ends the search soon. */
    public void ask() {
        asked = true;
    }

    /**
     * Whether somebody asked.
     *
     * @return true from then on
     */
    public boolean isAsked() {
        return asked;
    }
}
