package spoolyard.analysis.cli;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spoolyard.analysis.experiment.Progress;

/** How an experiment with a number of replications laid down beforehand is run. */
final class ExperimentOptions {
    @Option(
            names = "--replications",
            paramLabel = "N",
            defaultValue = "20",
            description = "Number of replications; more narrow the intervals. Default: ${DEFAULT-VALUE}.")
    private int replications;

    @Mixin
    private SimulationOptions simulation;

    /**
     * Checks the numbers.
     *
     * @param fewest fewest replications that make sense
     * @throws InputException if one is out of range
     */
    void check(int fewest) throws InputException {
        EffortOptions.require("--replications", replications, fewest, EffortOptions.MOST_REPLICATIONS);
        simulation.check();
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
        return simulation.seed();
    }

    /**
     * How many replications at once.
     *
     * @return at least 1 once checked
     */
    int threads() {
        return simulation.threads();
    }

    /**
     * Whether to print nothing but faults.
     *
     * @return true if asked for
     */
    boolean isQuiet() {
        return simulation.isQuiet();
    }

    /**
     * Who hears of progress.
     *
     * @param console where it may be shown
     * @return a bar on a terminal, unless quiet
     */
    Progress progress(Console console) {
        return simulation.progress(console);
    }
}
