package spoolyard.scenarios.format;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with a unit, as written. Immutable.
 *
 * @param number the number
 * @param unit the text after it; empty if there is none
 */
public record Quantity(BigDecimal number, String unit) {
    /** Longest text looked at; more digits than this mean nothing. */
    private static final int LONGEST = 40;

    private static final Pattern FORM = Pattern.compile("([+-]?\\d+(?:\\.\\d+)?(?:[eE][+-]?\\d{1,2})?)\\s*(\\D.*)?");

    /**
     * Splits a text into number and unit.
     *
     * @param text for example {@code 18 kg/h}
     * @return the parts; empty if the text does not begin with a decimal number with a point
     */
    public static Optional<Quantity> parse(String text) {
        Matcher matcher = FORM.matcher(text.strip());
        if (text.length() > LONGEST || !matcher.matches()) {
            return Optional.empty();
        }
        String unit = matcher.group(2) == null ? "" : matcher.group(2).strip();
        return Optional.of(new Quantity(new BigDecimal(matcher.group(1)), unit));
    }

    /**
     * A quantity written in the program itself.
     *
     * @param text for example {@code 18 kg/h}
     * @param dimension its kind
     * @return its value in the dimension's own unit
     * @throws IllegalArgumentException if the text is not such a quantity
     */
    public static double of(String text, Dimension dimension) {
        return parse(text)
                .flatMap(q -> q.in(dimension))
                .orElseThrow(() -> new IllegalArgumentException("\"" + text + "\" is no " + dimension.label() + "."));
    }

    /**
     * Converts.
     *
     * @param dimension kind of quantity asked for
     * @return value in the dimension's own unit; empty if the unit is not one of the dimension's
     */
    public Optional<Double> in(Dimension dimension) {
        return dimension.unit(unit).map(u -> u.convert(number));
    }
}
