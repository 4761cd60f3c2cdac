package spoolyard.scenarios.field;

import java.math.BigDecimal;
import java.util.Optional;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.format.Quantity;

/** Plain numbers, without a unit. */
public final class Numbers {
    private Numbers() {}

    /**
     * A whole number.
     *
     * @param low lowest, allowed itself
     * @param high highest, allowed itself
     * @return the kind
     */
    public static Kind<Integer> whole(int low, int high) {
        String allowed = "Must be a whole number >= " + low + " and <= " + high + ".";
        return new TextKind<>(
                text -> wholeNumber(text).filter(n -> n >= low && n <= high),
                FaultKind.OUT_OF_RANGE,
                allowed,
                "enter a whole number in this range, without a unit",
                low);
    }

    /**
     * A number above a bound.
     *
     * @param low lower bound, not allowed itself
     * @param high upper bound, allowed itself
     * @return the kind
     */
    public static Kind<Double> above(String low, String high) {
        return decimal(bounds(low, true, high));
    }

    /**
     * A number from a bound on.
     *
     * @param low lower bound, allowed itself
     * @param high upper bound, allowed itself
     * @return the kind
     */
    public static Kind<Double> from(String low, String high) {
        return decimal(bounds(low, false, high));
    }

    private static Bounds bounds(String low, boolean isLowOpen, String high) {
        return new Bounds(Double.parseDouble(low), isLowOpen, Double.parseDouble(high), low, high);
    }

    private static Kind<Double> decimal(Bounds bounds) {
        return new TextKind<>(
                text -> decimalNumber(text).map(BigDecimal::doubleValue).filter(bounds::hold),
                FaultKind.OUT_OF_RANGE,
                "Must be a number " + bounds.text() + ", without a unit.",
                "enter a number in this range with a decimal point",
                bounds.inside());
    }

    private static Optional<BigDecimal> decimalNumber(String text) {
        return Quantity.parse(text).filter(q -> q.unit().isEmpty()).map(Quantity::number);
    }

    /** Also takes 12.0 for 12, as spreadsheets write it. */
    private static Optional<Integer> wholeNumber(String text) {
        return decimalNumber(text)
                .filter(n -> n.abs().compareTo(BigDecimal.valueOf(Integer.MAX_VALUE)) <= 0)
                .filter(n -> n.stripTrailingZeros().scale() <= 0)
                .map(BigDecimal::intValueExact);
    }
}
