package spoolyard.analysis.cli;

import picocli.CommandLine.Option;
import spoolyard.analysis.experiment.Progress;

/** How an experiment is run: what every command that simulates understands. */
final class ExperimentOptions {
    private static final int MOST_REPLICATIONS = 1_000_000;
    private static final int MOST_THREADS = 1024;

    @Option(
            names = "--replications",
            paramLabel = "N",
            defaultValue = "20",
            description = "Number of replications; more narrow the intervals. Default: ${DEFAULT-VALUE}.")
    private int replications;

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
     * Checks the numbers.
     *
     * @param fewest fewest replications that make sense
     * @throws InputException if one is out of range
     */
    void check(int fewest) throws InputException {
        require("--replications", replications, fewest, MOST_REPLICATIONS);
        require("--threads", threads(), 1, MOST_THREADS);
    }

    /**
     * How many replications.
     *
     * @return at least 1 once checked
     */
    int replications() {
        return replications;
    }

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
     * @return at least 1 once checked
     */
    int threads() {
        return threads == null ? Runtime.getRuntime().availableProcessors() : threads;
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

    private static void require(String option, int value, int fewest, int most) throws InputException {
        if (value < fewest || value > most) {
            throw new InputException(
                    option + " = " + value,
                    "Must be a whole number from " + fewest + " to " + most + ".",
                    "give such a number");
        }
    }
}
