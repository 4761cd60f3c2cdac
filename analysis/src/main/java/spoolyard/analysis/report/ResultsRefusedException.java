package spoolyard.analysis.report;

/** Results cannot go where they were asked to go. Nothing was changed there. Immutable. */
public final class ResultsRefusedException extends Exception {
    private final String place;
    private final String rule;
    private final String mend;

    /**
     * Says why.
     *
     * @param place file or folder, as it was given
     * @param rule what is there and what may be there, as sentences
     * @param mend how to put it right, an imperative clause without a full stop
     */
    public ResultsRefusedException(String place, String rule, String mend) {
        super(place + ": " + rule + "\n  Mend: " + mend + ".");
        this.place = place;
        this.rule = rule;
        this.mend = mend;
    }

    /**
     * Where.
     *
     * @return file or folder
     */
    public String place() {
        return place;
    }

    /**
     * Why.
     *
     * @return sentences
     */
    public String rule() {
        return rule;
    }

    /**
     * What to do.
     *
     * @return an imperative clause
     */
    public String mend() {
        return mend;
    }
}
