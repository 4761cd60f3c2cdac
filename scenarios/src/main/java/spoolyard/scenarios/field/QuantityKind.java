package spoolyard.scenarios.field;

import java.util.Optional;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.format.Quantity;
import spoolyard.scenarios.read.Node;

/** A number with a unit, in a range. Immutable. */
public final class QuantityKind implements Kind<Double> {
    private final Dimension dimension;
    private final Bounds bounds;

    private QuantityKind(Dimension dimension, Bounds bounds) {
        this.dimension = dimension;
        this.bounds = bounds;
    }

    /**
     * A quantity above a bound.
     *
     * @param dimension its kind
     * @param low lower bound, not allowed itself, with unit
     * @param high upper bound, allowed itself, with unit
     * @return the kind; values are in the dimension's own unit
     */
    public static QuantityKind above(Dimension dimension, String low, String high) {
        return new QuantityKind(dimension, bounds(dimension, low, true, high));
    }

    /**
     * A quantity from a bound on.
     *
     * @param dimension its kind
     * @param low lower bound, allowed itself, with unit
     * @param high upper bound, allowed itself, with unit
     * @return the kind; values are in the dimension's own unit
     */
    public static QuantityKind from(Dimension dimension, String low, String high) {
        return new QuantityKind(dimension, bounds(dimension, low, false, high));
    }

    private static Bounds bounds(Dimension dimension, String low, boolean isLowOpen, String high) {
        return new Bounds(Quantity.of(low, dimension), isLowOpen, Quantity.of(high, dimension), low, high);
    }

    @Override
    public Double read(Node node, Reading reading) {
        Optional<Quantity> quantity = node instanceof Node.Text text ? Quantity.parse(text.text()) : Optional.empty();
        if (quantity.isEmpty()) {
            return fault(node, node instanceof Node.Nothing ? FaultKind.MISSING_VALUE : FaultKind.NOT_A_VALUE, reading);
        }
        Optional<Double> value = quantity.get().in(dimension);
        if (value.isEmpty()) {
            return fault(node, FaultKind.WRONG_UNIT, reading);
        }
        return value.filter(bounds::hold).orElseGet(() -> fault(node, FaultKind.OUT_OF_RANGE, reading));
    }

    @Override
    public Double standIn() {
        return bounds.inside();
    }

    private Double fault(Node node, FaultKind kind, Reading reading) {
        boolean isUnit = kind != FaultKind.OUT_OF_RANGE;
        String allowed = isUnit
                ? "Must be a " + dimension.label() + " in " + dimension.offeredUnits() + "."
                : "Must be " + bounds.text() + ".";
        String mend = isUnit
                ? "write a number with a point and one of these units, for example " + dimension.example()
                : "enter a " + dimension.label() + " in this range";
        reading.fault(kind, node, allowed, mend);
        return standIn();
    }
}
