package spoolyard.analysis.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import spoolyard.analysis.buffer.Capacities;
import spoolyard.core.plant.Line;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.format.Quantity;

/** Which capacities may be chosen. */
final class CapacityOptions {
    /** As a scenario allows for an accumulator. */
    private static final double MOST_M = 5_000;

    private static final double USUAL_FACTOR = 3;
    private static final double LEAST_USUAL_M = 60;

    @Option(
            names = "--from",
            paramLabel = "M",
            description = "Smallest capacity to ask about, such as \"20 m\". Default: one step above what it holds at"
                    + " home.")
    private String from;

    @Option(
            names = "--to",
            paramLabel = "M",
            description = "Largest capacity to ask about. Default: three times the present one, 60 m at least.")
    private String to;

    @Option(
            names = "--step",
            paramLabel = "M",
            description = "Metres from one capacity to the next. Default: a round one that makes some forty.")
    private String step;

    /**
     * Looks whether each is a length.
     *
     * @param faults take up what is wrong
     * @throws IOException never
     */
    void check(OptionFaults faults) throws IOException {
        faults.check(() -> metres("--from", from));
        faults.check(() -> metres("--to", to));
        faults.check(() -> metres("--step", step));
    }

    /**
     * For a line.
     *
     * @param line the line
     * @return capacities, ascending, metres
     * @throws InputException if they make no sense for it
     */
    List<Double> of(Line line) throws InputException {
        double homeM = line.accumulator().homeM();
        double toM = metres("--to", to)
                .orElse(Math.max(
                        LEAST_USUAL_M, USUAL_FACTOR * line.accumulator().capacityM()));
        double stepM = metres("--step", step).orElse(Capacities.usualStepM(toM - homeM));
        Requirements.require(stepM > 0, "--step = " + step, "Must be above 0 m.");
        double fromM = metres("--from", from).orElse(stepM * Math.floor(homeM / stepM + 1));
        Requirements.require(
                fromM >= homeM, "--from = " + from, "Must be at least the " + homeM + " m it holds at home.");
        Requirements.require(
                toM >= fromM, "--to = " + (to == null ? toM + " m" : to), "Must be at least --from, " + fromM + " m.");
        Requirements.require(
                (toM - fromM) / stepM < Capacities.MOST,
                "--step = " + stepM + " m",
                "Must make at most " + Capacities.MOST + " capacities.");
        return Capacities.from(fromM, toM, stepM);
    }

    private static Optional<Double> metres(String option, String text) throws InputException {
        if (text == null) {
            return Optional.empty();
        }
        Optional<Double> metres = Quantity.parse(text)
                .flatMap(quantity -> quantity.in(Dimension.LENGTH))
                .filter(value -> value >= 0 && value <= MOST_M);
        if (metres.isEmpty()) {
            throw new InputException(
                    option + " = " + text,
                    "Must be a length with its unit, from 0 m to 5000 m.",
                    "write for example " + option + " \"80 m\"");
        }
        return metres;
    }
}
