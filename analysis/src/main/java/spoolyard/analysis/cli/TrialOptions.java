package spoolyard.analysis.cli;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;
import spoolyard.analysis.experiment.Effort;

/** How often a plan is simulated before it is believed. */
final class TrialOptions {
    private static final int USUAL = 20;
    private static final int FEWEST = 4;
    private static final int MOST = 10_000;
    private static final double USUAL_S = 12;

    @Option(
            names = "--replications",
            paramLabel = "N",
            description =
                    "Simulated replications of the plan and of today's order; 0 for none. Default: 20, or as many as"
                            + " go into 12 s, or into --seconds if that is more; all 20 if --iterations is given.")
    private Integer replications;

    /**
     * Checks the number.
     *
     * @param fewest fewest replications that make sense
     * @throws InputException if it is out of range
     */
    void check(int fewest) throws InputException {
        Requirements.range("--replications", most(), fewest, MOST);
    }

    /**
     * Whether there is to be a trial.
     *
     * @return false for no replications
     */
    boolean isWanted() {
        return most() > 0;
    }

    /**
     * Replications if the time does not run out.
     *
     * @return how many, {@code >= 0}
     */
    int most() {
        return replications == null ? USUAL : replications;
    }

    /**
     * How many replications to run.
     *
     * @param search what was searched, and how long
     * @return a number laid down beforehand if one was given or the clock has no say
     */
    Effort effort(SearchOptions search) {
        return replications != null || search.isCounted()
                ? Effort.of(Math.max(1, most()))
                : new Effort(
                        FEWEST,
                        USUAL,
                        OptionalDouble.empty(),
                        Optional.of(Duration.ofMillis((long) (1000 * Math.max(USUAL_S, search.givenSeconds())))),
                        Runtime.getRuntime().availableProcessors());
    }

    /**
     * What became of them.
     *
     * @param made replications that were made
     * @return lines without line breaks; none if all were made
     */
    List<String> told(int made) {
        return made >= most()
                ? List.of()
                : List.of("Time was up after " + made + " of " + most() + " replications: --replications " + most()
                        + " makes all of them.");
    }
}
