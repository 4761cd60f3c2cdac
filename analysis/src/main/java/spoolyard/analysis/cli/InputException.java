package spoolyard.analysis.cli;

import java.util.Collection;

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

    /**
     * Says all that is wrong at once.
     *
     * @param faults each as above, at least one
     */
    InputException(Collection<String> faults) {
        super(String.join("\n", faults) + "\n" + (faults.size() == 1 ? "1 fault" : faults.size() + " faults")
                + ". Nothing was run or written.");
    }
}
