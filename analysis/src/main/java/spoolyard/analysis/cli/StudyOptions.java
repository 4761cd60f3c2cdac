package spoolyard.analysis.cli;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spoolyard.analysis.experiment.Progress;

/** How the points of a study are run. */
final class StudyOptions {
    /** About as many runs as a study makes unless it is told how many. */
    private static final int USUAL_RUNS = 800;

    private static final int FEWEST = 4;
    private static final int USUAL_MOST = 20;

    @Option(
            names = "--replications",
            paramLabel = "N",
            description = "Replications of each point. Default: as many as make 800 runs in all, 4 to 20.")
    private Integer replications;

    @Mixin
    private SimulationOptions simulation;

    /**
     * Checks the numbers.
     *
     * @throws InputException if one is out of range
     */
    void check() throws InputException {
        if (replications != null) {
            EffortOptions.require("--replications", replications, 2, EffortOptions.MOST_REPLICATIONS);
        }
        simulation.check();
    }

    /**
     * Replications of each point.
     *
     * @param points how many points
     * @return at least 2 once checked
     */
    int replications(int points) {
        return replications != null ? replications : Math.max(FEWEST, Math.min(USUAL_MOST, USUAL_RUNS / points));
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
