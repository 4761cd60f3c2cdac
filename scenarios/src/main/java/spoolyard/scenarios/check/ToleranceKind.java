package spoolyard.scenarios.check;

import java.util.Optional;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.format.Quantity;
import spoolyard.scenarios.read.Node;

/** A symmetric tolerance of the diameter, with or without the sign for plus or minus: {@code 0.03 mm, ±0.03 mm}. */
public final class ToleranceKind implements Kind<Double> {
    static final ToleranceKind OF_DIAMETER = new ToleranceKind();

    private static final String LOWEST = "0.001 mm";
    private static final String HIGHEST = "1 mm";
    private static final Kind<Double> DEVIATION = QuantityKind.from(Dimension.DEVIATION, LOWEST, HIGHEST);

    private ToleranceKind() {}

    /**
     * Reads a tolerance that a person typed.
     *
     * @param text for example {@code 0.02 mm}
     * @return mm; empty if it is none
     */
    public static Optional<Double> parse(String text) {
        return Quantity.parse(unsigned(text))
                .flatMap(quantity -> quantity.in(Dimension.DEVIATION))
                .filter(mm -> mm >= Quantity.of(LOWEST, Dimension.DEVIATION))
                .filter(mm -> mm <= Quantity.of(HIGHEST, Dimension.DEVIATION));
    }

    private static String unsigned(String text) {
        return text.strip().startsWith("\u00b1") ? text.strip().substring(1) : text;
    }

    @Override
    public Double read(Node node, Reading reading) {
        Node plain = node instanceof Node.Text text ? new Node.Text(text.origin(), unsigned(text.text())) : node;
        return DEVIATION.read(plain, reading);
    }

    @Override
    public Double standIn() {
        return DEVIATION.standIn();
    }
}
