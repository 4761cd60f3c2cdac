package spoolyard.scenarios.format;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A unit as files write it. Immutable. Factors are fractions of whole or decimal numbers, so that {@code 0.85 kg} and
 * {@code 60 m/min} become the nearest double with one rounding.
 *
 * @param symbol text after the number
 * @param numerator the value is multiplied by this
 * @param denominator and divided by this to be in the dimension's own unit
 * @param isOffered true: named in messages; false: accepted as another spelling
 */
public record Unit(String symbol, BigDecimal numerator, BigDecimal denominator, boolean isOffered) {
    static Unit of(String symbol, String numerator, String denominator) {
        return new Unit(symbol, new BigDecimal(numerator), new BigDecimal(denominator), true);
    }

    static Unit of(String symbol, String factor) {
        return of(symbol, factor, "1");
    }

    /** Another spelling of the same unit. */
    Unit alias(String otherSymbol) {
        return new Unit(otherSymbol, numerator, denominator, false);
    }

    /**
     * Converts a number.
     *
     * @param number in this unit
     * @return in the dimension's own unit
     */
    public double convert(BigDecimal number) {
        BigDecimal multiplied = number.multiply(numerator);
        boolean isWhole = denominator.equals(BigDecimal.ONE);
        return (isWhole ? multiplied : multiplied.divide(denominator, MathContext.DECIMAL128)).doubleValue();
    }
}
