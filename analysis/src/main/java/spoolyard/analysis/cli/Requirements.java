package spoolyard.analysis.cli;

import java.util.List;
import spoolyard.analysis.buffer.LossMeasure;
import spoolyard.analysis.buffer.LossTarget;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.scenarios.fault.Nearest;

/** What options must be. */
final class Requirements {
    private Requirements() {}

    /**
     * A whole number.
     *
     * @param option its name
     * @param value as given
     * @param fewest least that makes sense
     * @param most greatest that makes sense
     * @throws InputException if it is out of range
     */
    static void range(String option, int value, int fewest, int most) throws InputException {
        require(
                value >= fewest && value <= most,
                option + " = " + value,
                "Must be a whole number from " + fewest + " to " + most + ".");
    }

    /**
     * A number.
     *
     * @param option its name
     * @param value as given
     * @param least that makes sense
     * @param most that makes sense
     * @throws InputException if it is out of range
     */
    static void within(String option, double value, double least, double most) throws InputException {
        if (!(value >= least && value <= most)) {
            throw new InputException(
                    option + " = " + value, "Must be from " + least + " to " + most + ".", "give such a number");
        }
    }

    /**
     * Anything.
     *
     * @param holds whether it is as it must be
     * @param given the option with its value
     * @param allowed what may stand there, as a sentence
     * @throws InputException if it does not hold
     */
    static void require(boolean holds, String given, String allowed) throws InputException {
        require(holds, given, allowed, "give another value");
    }

    /**
     * Anything.
     *
     * @param holds whether it is as it must be
     * @param given the option with its value
     * @param allowed what may stand there, as a sentence
     * @param mend how to mend it
     * @throws InputException if it does not hold
     */
    static void require(boolean holds, String given, String allowed, String mend) throws InputException {
        if (!holds) {
            throw new InputException(given, allowed, mend);
        }
    }

    /**
     * A target for losses at full accumulators.
     *
     * @param given as it was typed
     * @param plant the plant
     * @return the target
     * @throws InputException if it is none, or asks for money of a plant without prices
     */
    static LossTarget target(String given, Plant plant) throws InputException {
        LossTarget target = target(given);
        require(
                target.measure() != LossMeasure.COST || plant.economy().prices().isPresent(),
                "--target = " + given,
                "Must not ask for cost: the scenario has no costs.");
        return target;
    }

    /**
     * Confidence in an answer.
     *
     * @param percent as given
     * @throws InputException unless at least 50 and below 100
     */
    static void confidence(double percent) throws InputException {
        require(percent >= 50 && percent < 100, "--confidence = " + percent, "Must be at least 50 and below 100.");
    }

    /**
     * A target by itself.
     *
     * @param given as given
     * @return the target
     * @throws InputException if it has none of the forms
     */
    static LossTarget target(String given) throws InputException {
        return LossTarget.parse(given)
                .orElseThrow(() -> new InputException(
                        "--target = " + given,
                        "Must have one of the forms " + LossTarget.FORMS + "; of swaps at most 100 %.",
                        "write for example --target \"overflow <= 2 % of swaps\""));
    }

    /**
     * A line by its name.
     *
     * @param plant the plant
     * @param name as given
     * @return the line
     * @throws InputException if the plant has none of that name
     */
    static Line line(Plant plant, String name) throws InputException {
        List<String> names = plant.lines().stream().map(Line::name).toList();
        String meant = Nearest.to(name, names)
                .map(near -> "write " + near + ", if that is what you mean")
                .orElse("give one of these");
        return plant.lines().stream()
                .filter(line -> line.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new InputException(
                        "--line = " + name, "Must be a line of this plant: " + String.join(", ", names) + ".", meant));
    }
}
