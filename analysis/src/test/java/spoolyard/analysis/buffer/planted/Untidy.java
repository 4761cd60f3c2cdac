package spoolyard.analysis.buffer.planted;

/** Breaks the rules of sizing, to prove that they fire. */
public final class Untidy {
    private Untidy() {}

    /**
     * Knows a report.
     *
     * @return a number
     */
    public static int number() {
        return spoolyard.analysis.report.planted.Untidy.number();
    }
}
