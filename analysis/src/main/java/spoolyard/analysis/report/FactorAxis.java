package spoolyard.analysis.report;

import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import spoolyard.scenarios.factor.Level;
import spoolyard.scenarios.format.Quantity;

/**
 * Where the levels of a factor stand on an axis: at their numbers, if all have one of the same unit, else in a row.
 * Immutable.
 *
 * @param title what stands beside it
 * @param labels distinct levels, in the order in which they stand
 * @param places where each stands, from 0 to 1
 * @param numbers the number of each; empty if they are no numbers
 */
record FactorAxis(String title, List<String> labels, List<Double> places, List<Double> numbers) {
    private static final MathContext SHORT = new MathContext(5);

    /**
     * The axis of a factor.
     *
     * @param report the study
     * @param factor number of the factor
     * @return over the levels at its points
     */
    static FactorAxis of(StudyReport report, int factor) {
        List<String> seen = report.points().stream()
                .map(point -> point.get(factor))
                .map(Level::label)
                .distinct()
                .toList();
        String title =
                StudyText.letter(factor) + "  " + report.factors().get(factor).pointer();
        Optional<String> unit = unit(seen);
        if (unit.isEmpty()) {
            return new FactorAxis(title, seen, inARow(seen.size()), List.of());
        }
        List<String> sorted = seen.stream()
                .sorted((one, other) -> Double.compare(number(one), number(other)))
                .toList();
        List<Double> numbers = sorted.stream().map(FactorAxis::number).toList();
        double low = numbers.get(0);
        double span = Math.max(Double.MIN_NORMAL, numbers.get(numbers.size() - 1) - low);
        List<Double> places =
                numbers.stream().map(number -> (number - low) / span).toList();
        return new FactorAxis(title + (unit.get().isEmpty() ? "" : ", " + unit.get()), sorted, places, numbers);
    }

    /**
     * Whether its levels are numbers.
     *
     * @return false if they stand in a row
     */
    boolean isNumeric() {
        return !numbers.isEmpty();
    }

    /**
     * Place of a level in the order.
     *
     * @param level one of them
     * @return from 0
     */
    int index(Level level) {
        return labels.indexOf(level.label());
    }

    /**
     * Short text of a level.
     *
     * @param index place in the order
     * @return at most five digits, without its unit, which stands in the title
     */
    String shown(int index) {
        return isNumeric()
                ? Quantity.parse(labels.get(index))
                        .orElseThrow()
                        .number()
                        .round(SHORT)
                        .toPlainString()
                : labels.get(index);
    }

    private static List<Double> inARow(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> count == 1 ? 0 : i / (count - 1.0))
                .toList();
    }

    private static Optional<String> unit(List<String> labels) {
        List<Optional<String>> units = labels.stream()
                .map(label -> Quantity.parse(label).map(Quantity::unit))
                .distinct()
                .toList();
        return units.size() == 1 ? units.get(0) : Optional.empty();
    }

    private static double number(String label) {
        return Quantity.parse(label).orElseThrow().number().doubleValue();
    }
}
