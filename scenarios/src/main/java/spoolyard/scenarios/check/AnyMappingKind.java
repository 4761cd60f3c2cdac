package spoolyard.scenarios.check;

import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.read.Node;

/** A mapping whose keys are read elsewhere: what lines share was merged into each of them. */
final class AnyMappingKind implements Kind<Boolean> {
    @Override
    public Boolean read(Node node, Reading reading) {
        boolean isMapping = node instanceof Node.Mapping;
        if (!isMapping) {
            reading.fault(
                    FaultKind.WRONG_SHAPE,
                    node,
                    "Must be keys with values (a mapping).",
                    "write the keys that all share below it, indented by two spaces");
        }
        return isMapping;
    }

    @Override
    public Boolean standIn() {
        return true;
    }
}
