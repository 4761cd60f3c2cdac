package spoolyard.analysis.schedule;

/** A change of a plan that cannot be made. */
public final class RefusedChangeException extends Exception {
    private static final long serialVersionUID = 1;

    private final String mend;

    RefusedChangeException(String why, String mend) {
        super(why);
        this.mend = mend;
    }

    /**
     * How to put it right.
     *
     * @return an imperative clause without a full stop
     */
    public String mend() {
        return mend;
    }
}
