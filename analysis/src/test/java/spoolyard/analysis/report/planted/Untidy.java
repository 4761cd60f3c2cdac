package spoolyard.analysis.report.planted;

import picocli.CommandLine;

/** Breaks the rules of the reports, to prove that they fire. */
public final class Untidy {
    private Untidy() {}

    /**
     * Knows the command line, and an experiment that knows it.
     *
     * @return a number
     */
    public static int number() {
        return new CommandLine(new Object()).getUsageHelpWidth()
                + spoolyard.analysis.experiment.planted.Untidy.number();
    }
}
