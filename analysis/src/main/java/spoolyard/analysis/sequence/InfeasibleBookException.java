package spoolyard.analysis.sequence;

/** No plan can hold all that is asked for; the message names the conflict. */
public final class InfeasibleBookException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /**
     * Names a conflict.
     *
     * @param conflict what contradicts what, and how to mend it
     */
    public InfeasibleBookException(String conflict) {
        super(conflict);
    }
}
