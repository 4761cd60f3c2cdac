package spoolyard.scenarios.check;

import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.read.Node;

/**
 * A whole number of spools, or {@code unlimited}, which reads as {@link Integer#MAX_VALUE}.
 *
 * @param spools a number of spools
 */
record UnlimitedKind(Kind<Double> spools) implements Kind<Integer> {
    @Override
    public Integer read(Node node, Reading reading) {
        if (node instanceof Node.Text text && text.text().equals("unlimited")) {
            return Integer.MAX_VALUE;
        }
        double count = spools.read(node, reading);
        if (count != Math.rint(count)) {
            reading.fault(FaultKind.NOT_A_VALUE, node, "Must be a whole number of spools, or unlimited.", "round it");
        }
        return (int) count;
    }

    @Override
    public Integer standIn() {
        return 0;
    }
}
