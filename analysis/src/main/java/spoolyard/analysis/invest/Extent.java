package spoolyard.analysis.invest;

import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;

/**
 * How much of what is bought a plant has more than another. Immutable.
 *
 * @param metres metres of accumulator, every strand counted; below 0 for fewer
 * @param winders winders that differ in anything, every strand counted, {@code >= 0}
 * @param paidHPerYear paid person-hours a year; below 0 for fewer
 */
public record Extent(double metres, int winders, double paidHPerYear) {
    /**
     * Compares the lines of two plants by their names.
     *
     * @param now one plant
     * @param then the other
     * @param paidHPerYear paid person-hours a year that the other has more
     * @return what the other has more
     */
    public static Extent between(Plant now, Plant then, double paidHPerYear) {
        Map<String, Line> before = now.lines().stream().collect(Collectors.toMap(Line::name, Function.identity()));
        double metres = 0;
        int winders = 0;
        for (Line line : then.lines()) {
            Line old = before.getOrDefault(line.name(), line);
            metres += line.strands() * line.accumulator().capacityM()
                    - old.strands() * old.accumulator().capacityM();
            winders += line.winder().equals(old.winder()) ? 0 : line.strands();
        }
        return new Extent(metres, winders, paidHPerYear);
    }

    /** What a price can be divided by. */
    public enum Unit {
        /** Metres of accumulator. */
        METRE("m"),
        /** Winders. */
        WINDER("winder"),
        /** Paid person-hours a year. */
        HOUR("h");

        private final String sign;

        Unit(String sign) {
            this.sign = sign;
        }

        /**
         * Its sign.
         *
         * @return a word or a letter
         */
        public String sign() {
            return sign;
        }
    }

    /**
     * How many of a unit.
     *
     * @param unit the unit
     * @return any number
     */
    public double in(Unit unit) {
        return switch (unit) {
            case METRE -> metres;
            case WINDER -> winders;
            case HOUR -> paidHPerYear;
        };
    }
}
