package spoolyard.analysis.cli;

import java.util.List;
import picocli.CommandLine.Option;
import spoolyard.analysis.sequence.Plan;
import spoolyard.analysis.sequence.SearchLimit;
import spoolyard.analysis.sequence.SearchProgress;
import spoolyard.analysis.sequence.SearchSettings;
import spoolyard.analysis.sequence.Sequencer;
import spoolyard.analysis.sequence.SequencingProblem;
import spoolyard.analysis.sequence.Solution;
import spoolyard.analysis.sequence.Stop;

/** How long and from which seed a plan is searched for. */
final class SearchOptions {
    private static final double SHORTEST_USUAL_S = 12;
    private static final double LONGEST_USUAL_S = 36;
    private static final double USUAL_S_AN_ORDER = 0.03;
    private static final double LONGEST_S = 86_400;
    private static final double MOST_ITERATIONS = 1e12;
    private static final int MOST_CHAINS = 256;

    @Option(
            names = "--seconds",
            paramLabel = "S",
            description =
                    "Time to search, learning included. Default: 12 up to 400 orders, then 3 more for each hundred,"
                            + " 36 at most; none if --iterations is given.")
    private Double seconds;

    @Option(
            names = "--iterations",
            paramLabel = "N",
            description = "Changes tried by each chain; with the same seed and number the plan is the same every time.")
    private Double iterations;

    @Option(
            names = "--seed",
            paramLabel = "S",
            defaultValue = "1",
            description = "Seed of search and simulation, any whole number. Default: ${DEFAULT-VALUE}.")
    private long seed;

    @Option(
            names = "--chains",
            paramLabel = "N",
            defaultValue = "2",
            description = "Independent searches, side by side. Default: ${DEFAULT-VALUE}.")
    private int chains;

    /**
     * Checks the numbers.
     *
     * @throws InputException if one is out of range
     */
    void check() throws InputException {
        Requirements.within("--seconds", seconds == null ? 1 : seconds, 0.001, LONGEST_S);
        Requirements.within("--iterations", iterations == null ? 1 : iterations, 1, MOST_ITERATIONS);
        Requirements.within("--chains", chains, 1, MOST_CHAINS);
    }

    /**
     * The limit as it was given.
     *
     * @return for example {@code --seconds = 60.0}; empty if none was given
     */
    String limit() {
        String count = iterations == null ? "" : "--iterations = " + iterations;
        return seconds == null ? count : "--seconds = " + seconds;
    }

    /**
     * Seed of search and simulation.
     *
     * @return any number
     */
    long seed() {
        return seed;
    }

    /**
     * Time to search that was given.
     *
     * @return seconds; 0 if none was given
     */
    double givenSeconds() {
        return seconds == null ? 0 : seconds;
    }

    /**
     * Whether the clock has no say: then the same call gives the same plan.
     *
     * @return true if iterations were given and seconds were not
     */
    boolean isCounted() {
        return iterations != null && seconds == null;
    }

    /**
     * When the search ends.
     *
     * @param orders how many are to be put in order
     * @return what was given, or the usual time for so many
     */
    SearchLimit limit(int orders) {
        double usualS = Math.min(LONGEST_USUAL_S, Math.max(SHORTEST_USUAL_S, USUAL_S_AN_ORDER * orders));
        double otherwiseS = iterations != null ? Double.POSITIVE_INFINITY : usualS;
        return new SearchLimit(
                iterations != null ? iterations : Double.POSITIVE_INFINITY, seconds == null ? otherwiseS : seconds);
    }

    /**
     * How to search.
     *
     * @param limit when to end
     * @param further number that makes the seed another one; 0 for the seed itself
     * @return the settings
     */
    SearchSettings settings(SearchLimit limit, int further) {
        int threads = Math.min(chains, Runtime.getRuntime().availableProcessors());
        return new SearchSettings(limit, seed + further, chains, threads);
    }

    /**
     * Searches, and shows on a terminal how far it has come.
     *
     * @param problem what is to be solved
     * @param starts plans to begin with
     * @param settings how
     * @param stop ends it early
     * @param console where it may be shown
     * @return the best plan found, with the quick bound
     */
    static Solution find(
            SequencingProblem problem, List<Plan> starts, SearchSettings settings, Stop stop, Console console) {
        SearchLine line = new SearchLine(console);
        Solution solution = new Sequencer(problem, settings, stop, line::show).find(starts);
        line.clear();
        return solution;
    }

    /**
     * Seeks a better bound for a plan, and shows on a terminal that it does.
     *
     * @param problem what was solved
     * @param found what the search came to
     * @param stop ends it early
     * @param console where it may be shown
     * @return the same plan with a bound that is no lower
     */
    Solution bounded(SequencingProblem problem, Solution found, Stop stop, Console console) {
        SearchLine line = new SearchLine(console);
        line.bounding(found.plan().cost(), found.bound());
        SearchSettings settings = settings(limit(problem.jobs().size()), 0);
        Solution bounded = new Sequencer(problem, settings, stop, SearchProgress.UNHEARD).bounded(found);
        line.clear();
        return bounded;
    }
}
