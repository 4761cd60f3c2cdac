package spoolyard.scenarios.factor;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.format.Quantity;

/**
 * A value of a scenario that may be low or high. Immutable.
 *
 * @param name its name, for people
 * @param pointer JSON Pointer of the value
 * @param low the low value as YAML
 * @param high the high value as YAML
 * @param origin where it is declared
 */
public record Factor(String name, String pointer, String low, String high, Origin origin) {
    private static final MathContext DIGITS = new MathContext(9);

    /**
     * A value between low and high, or one of them.
     *
     * @param value as YAML
     * @param share where it is in the range: 0 at low, 1 at high
     */
    public record Level(String value, double share) {}

    /**
     * The value at a share of the range. Between two numbers of the same unit it is on the straight line from one to the
     * other, and whole where both are written as whole counts, without a unit or in spools. Anything else is low or high,
     * whichever is nearer.
     *
     * @param share in [0, 1]
     * @return the value, and the share at which it really is
     */
    public Level level(double share) {
        Optional<Quantity> from = Quantity.parse(low);
        Optional<Quantity> to = Quantity.parse(high);
        boolean isStraight =
                from.isPresent() && to.isPresent() && from.get().unit().equals(to.get().unit());
        if (share == 0 || share == 1 || !isStraight) {
            return share < 0.5 ? new Level(low, 0) : new Level(high, 1);
        }
        BigDecimal range = to.get().number().subtract(from.get().number());
        BigDecimal exact = from.get().number().add(range.multiply(BigDecimal.valueOf(share)));
        BigDecimal value =
                isCount(from.get()) && isCount(to.get()) ? exact.setScale(0, RoundingMode.HALF_UP) : exact.round(DIGITS);
        String unit = from.get().unit();
        return new Level(
                value.stripTrailingZeros().toPlainString() + (unit.isEmpty() ? "" : " " + unit),
                value.subtract(from.get().number()).divide(range, MathContext.DECIMAL64).doubleValue());
    }

    private static boolean isCount(Quantity quantity) {
        return quantity.number().scale() <= 0 && List.of("", "spools").contains(quantity.unit());
    }

    /**
     * A level as a setting.
     *
     * @param isHigh which level
     * @return pointer, equals sign and value
     */
    public String setting(boolean isHigh) {
        return pointer + "=" + (isHigh ? high : low);
    }
}
