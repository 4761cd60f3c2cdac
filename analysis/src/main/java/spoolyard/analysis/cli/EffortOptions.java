package spoolyard.analysis.cli;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;
import spoolyard.analysis.experiment.Effort;
import spoolyard.analysis.report.Measure;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.format.Quantity;

/** How many replications an experiment takes. */
final class EffortOptions {
    /** Most replications of any experiment. */
    static final int MOST_REPLICATIONS = 1_000_000;

    private static final int USUAL_REPLICATIONS = 20;
    private static final int USUAL_CAP = 1000;
    private static final int FEWEST_FOR_INTERVAL = 2;
    private static final double NARROWEST = 0.0001;
    private static final double WIDEST = 0.5;
    private static final double SHORTEST_S = 1;
    private static final double LONGEST_S = 7 * 86_400;

    @Option(
            names = "--replications",
            paramLabel = "N",
            description = {
                "Number of replications; more narrow the intervals. Default: 20. With --precision or --budget"
                        + " the most there may be; default then 1000."
            })
    private Integer replications;

    @Option(
            names = "--precision",
            paramLabel = "P",
            description = "Replicate until the interval is as narrow as this, such as 1%%, of the --measure.")
    private String precision;

    @Option(
            names = "--budget",
            paramLabel = "TIME",
            description = "Replicate for so long, such as 60s or \"5 min\", and no longer.")
    private String budget;

    @Option(
            names = "--measure",
            paramLabel = "NAME",
            defaultValue = "good_spools_per_week",
            description = "The number that --precision looks at, as in docs/results.md. Default: ${DEFAULT-VALUE}.")
    private String measure;

    /**
     * Checks all of them.
     *
     * @param fewest fewest replications that make sense
     * @param threads replications at once
     * @return how many replications to run
     * @throws InputException if one is out of range
     */
    Effort effort(int fewest, int threads) throws InputException {
        measure();
        OptionalDouble width = width();
        Optional<Duration> time = time();
        if (width.isEmpty() && time.isEmpty()) {
            int fixed = replications == null ? USUAL_REPLICATIONS : replications;
            require("--replications", fixed, fewest, MOST_REPLICATIONS);
            return Effort.of(fixed);
        }
        int first = width.isPresent() ? Effort.FEWEST_FOR_PRECISION : Math.max(fewest, FEWEST_FOR_INTERVAL);
        int most = replications == null ? USUAL_CAP : replications;
        require("--replications", most, first, MOST_REPLICATIONS);
        return new Effort(first, most, width, time, threads);
    }

    /**
     * The measure whose interval decides.
     *
     * @return one of all
     * @throws InputException if there is none of the name
     */
    Measure measure() throws InputException {
        return measure(measure);
    }

    /**
     * A measure by its name.
     *
     * @param name as it was typed
     * @return the measure
     * @throws InputException if there is none of the name
     */
    static Measure measure(String name) throws InputException {
        return Measure.named(name)
                .orElseThrow(() -> new InputException(
                        "--measure = " + name, "Must be one of " + Measure.names() + ".", "give one of these"));
    }

    private OptionalDouble width() throws InputException {
        if (precision == null) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Quantity.parse(precision)
                .flatMap(quantity -> quantity.in(Dimension.SHARE))
                .filter(share -> share >= NARROWEST && share <= WIDEST)
                .orElseThrow(() -> new InputException(
                        "--precision = " + precision,
                        "Must be from 0.01 % to 50 %.",
                        "write for example --precision 1%")));
    }

    private Optional<Duration> time() throws InputException {
        return time(budget);
    }

    /**
     * A time after which nothing more is begun.
     *
     * @param budget as given; null for none
     * @return the time
     * @throws InputException if it is none from 1 s to 7 days
     */
    static Optional<Duration> time(String budget) throws InputException {
        if (budget == null) {
            return Optional.empty();
        }
        return Optional.of(Quantity.parse(budget)
                .flatMap(quantity -> quantity.in(Dimension.TIME))
                .filter(seconds -> seconds >= SHORTEST_S && seconds <= LONGEST_S)
                .map(seconds -> Duration.ofMillis(Math.round(seconds * 1000)))
                .orElseThrow(() -> new InputException(
                        "--budget = " + budget,
                        "Must be a time from 1 s to 7 days.",
                        "write for example --budget 60s")));
    }

    /**
     * Checks a number.
     *
     * @param option its option
     * @param value the number
     * @param fewest least that is allowed
     * @param most greatest that is allowed
     * @throws InputException if it is out of range
     */
    static void require(String option, int value, int fewest, int most) throws InputException {
        if (value < fewest || value > most) {
            throw new InputException(
                    option + " = " + value,
                    "Must be a whole number from " + fewest + " to " + most + ".",
                    "give such a number");
        }
    }
}
