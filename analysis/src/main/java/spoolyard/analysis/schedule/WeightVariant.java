package spoolyard.analysis.schedule;

import java.util.List;

/**
 * Weights to search with for a plan that may stand up better than the one that costs least on paper. Immutable.
 *
 * @param name what is different, in words
 * @param weights the weights
 */
public record WeightVariant(String name, Weights weights) {
    /**
     * The usual ones: lateness dearer and cheaper, and more or no reserve before the due date.
     *
     * @param asked the weights asked for
     * @return in a fixed order; the first are the weights asked for, to be searched with another seed
     */
    public static List<WeightVariant> of(Weights asked) {
        return List.of(
                new WeightVariant("another seed", asked),
                late(asked, 4, "lateness x 4"),
                late(asked, 0.25, "lateness / 4"),
                reserve(asked, asked.reserveH() + 24, "reserve + 24 h"),
                reserve(asked, asked.reserveH() + 72, "reserve + 72 h"),
                reserve(asked, 0, "no reserve"),
                late(asked, 16, "lateness x 16"),
                late(asked, 1.0 / 16, "lateness / 16"));
    }

    private static WeightVariant late(Weights asked, double factor, String name) {
        return new WeightVariant(
                name,
                new Weights(
                        asked.prices(),
                        asked.purgePerKg(),
                        asked.linePerH(),
                        asked.latePerSpoolDay() * factor,
                        asked.reserveH(),
                        asked.first()));
    }

    private static WeightVariant reserve(Weights asked, double reserveH, String name) {
        return new WeightVariant(
                name,
                new Weights(
                        asked.prices(),
                        asked.purgePerKg(),
                        asked.linePerH(),
                        asked.latePerSpoolDay(),
                        reserveH,
                        asked.first()));
    }
}
