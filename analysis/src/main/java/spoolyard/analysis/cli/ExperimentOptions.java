package spoolyard.analysis.cli;

import picocli.CommandLine.Option;
import spoolyard.analysis.experiment.Progress;

/** How an experiment is run: what every command that simulates understands. */
final class ExperimentOptions {
    private static final int MOST_THREADS = 1024;

    @Option(
            names = "--seed",
            paramLabel = "S",
            defaultValue = "1",
            description = "Master seed, any whole number. Default: ${DEFAULT-VALUE}.")
    private long seed;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "Replications at once; does not change the results. Default: one for each core.")
    private Integer threads;

    @Option(names = "--quiet", description = "Print nothing but faults.")
    private boolean isQuiet;

    /**
     * The master seed.
     *
     * @return any number
     */
    long seed() {
        return seed;
    }

    /**
     * How many replications at once.
     *
     * @return at least 1
     * @throws InputException if it is out of range
     */
    int threads() throws InputException {
        int wanted = threads == null ? Runtime.getRuntime().availableProcessors() : threads;
        if (wanted < 1 || wanted > MOST_THREADS) {
            throw new InputException(
                    "--threads = " + wanted,
                    "Must be a whole number from 1 to " + MOST_THREADS + ".",
                    "give such a number");
        }
        return wanted;
    }

    /**
     * Whether to print nothing but faults.
     *
     * @return true if asked for
     */
    boolean isQuiet() {
        return isQuiet;
    }

    /**
     * Who hears of progress.
     *
     * @param console where it may be shown
     * @return a bar on a terminal, unless quiet
     */
    Progress progress(Console console) {
        return isQuiet ? Progress.UNHEARD : ProgressBar.on(console);
    }
}
