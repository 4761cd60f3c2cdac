package spoolyard.analysis.cli;

/** The program was called in a way that makes no sense. */
final class InputException extends Exception {
    /**
     * Says what is wrong and how to mend it.
     *
     * @param option the option, as it was given, with its value
     * @param allowed what may stand there, as a sentence
     * @param mend how to put it right, an imperative clause without a full stop
     */
    InputException(String option, String allowed, String mend) {
        super(option + ". " + allowed + "\n  Mend: " + mend + ".");
    }
}
