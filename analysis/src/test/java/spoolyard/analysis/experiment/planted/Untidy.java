package spoolyard.analysis.experiment.planted;

/** Breaks the rules of the experiments, to prove that they fire. */
public final class Untidy {
    private Untidy() {}

    /**
     * Knows a report, which knows it.
     *
     * @return a number
     */
    public static int number() {
        return spoolyard.analysis.report.planted.Untidy.number();
    }
}
