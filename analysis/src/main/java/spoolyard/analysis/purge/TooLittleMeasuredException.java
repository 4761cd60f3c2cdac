package spoolyard.analysis.purge;

/** The measured changeovers of a plant do not suffice to calibrate its estimate. */
public final class TooLittleMeasuredException extends Exception {
    private static final long serialVersionUID = 1;

    /**
     * Says why.
     *
     * @param message a clause
     */
    TooLittleMeasuredException(String message) {
        super(message);
    }
}
