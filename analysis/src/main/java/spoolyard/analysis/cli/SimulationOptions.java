package spoolyard.analysis.cli;

import picocli.CommandLine.Option;
import spoolyard.analysis.experiment.Progress;

/** Seed, threads and silence: what every command that simulates understands. */
final class SimulationOptions {
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
     * Checks the numbers.
     *
     * @throws InputException if one is out of range
     */
    void check() throws InputException {
        EffortOptions.require("--threads", threads(), 1, MOST_THREADS);
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
}
