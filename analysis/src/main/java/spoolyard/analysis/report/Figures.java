package spoolyard.analysis.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Optional;

/** How numbers are written. */
final class Figures {
    private static final MathContext FOR_FILES = new MathContext(7);

    private static final double SMALLEST = 1e-9;
    private static final int DECIMALS_OF_A_TICK = 6;

    private Figures() {}

    /**
     * For files: seven significant digits, decimal point, no exponent; what is smaller than 1e-9 is the rounding of
     * sums and written as 0.
     *
     * @param value any value
     * @return the number; empty if it is not a number
     */
    static Optional<BigDecimal> exact(double value) {
        if (Double.isNaN(value)) {
            return Optional.empty();
        }
        if (Math.abs(value) < SMALLEST) {
            return Optional.of(BigDecimal.ZERO);
        }
        BigDecimal rounded = new BigDecimal(value, FOR_FILES).stripTrailingZeros();
        return Optional.of(rounded.scale() < 0 ? rounded.setScale(0) : rounded);
    }

    /**
     * For CSV cells.
     *
     * @param value any value
     * @return the number, or an empty text if it is not a number
     */
    static String cell(double value) {
        return exact(value).map(BigDecimal::toPlainString).orElse("");
    }

    /**
     * Seconds since the start of the run, exact.
     *
     * @param tick ticks since the start
     * @return seconds with as many decimals as needed
     */
    static String seconds(long tick) {
        BigDecimal seconds = BigDecimal.valueOf(tick, DECIMALS_OF_A_TICK).stripTrailingZeros();
        return seconds.toPlainString();
    }

    /**
     * For people: fixed decimals, thousands parted by a space.
     *
     * @param value a finite value
     * @param decimals digits after the point
     * @return the text
     */
    static String shown(double value, int decimals) {
        DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
        symbols.setGroupingSeparator(' ');
        DecimalFormat format = new DecimalFormat("#,##0", symbols);
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        String text = format.format(value);
        return text.matches("-[0.]+") ? text.substring(1) : text;
    }
}
