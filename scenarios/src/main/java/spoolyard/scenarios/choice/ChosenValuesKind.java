package spoolyard.scenarios.choice;

import java.util.ArrayList;
import java.util.List;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.format.Pointer;
import spoolyard.scenarios.read.Node;

/** Values by the JSON Pointers of what they are set over. Immutable. */
record ChosenValuesKind() implements Kind<List<ChosenValue>> {
    @Override
    public List<ChosenValue> read(Node node, Reading reading) {
        List<ChosenValue> values = new ArrayList<>();
        if (!(node instanceof Node.Mapping mapping) || mapping.entries().isEmpty()) {
            reading.fault(
                    FaultKind.WRONG_SHAPE,
                    node,
                    "Must be JSON Pointers with values (a mapping), one or more.",
                    "write for example {/lines/L3/accumulator: 100 m}");
            return values;
        }
        mapping.entries().forEach((pointer, value) -> {
            if (!Pointer.isOfValue(pointer)) {
                reading.fault(
                        FaultKind.BAD_POINTER,
                        value,
                        "The key must be the JSON Pointer of a value.",
                        "write for example /lines/L3/accumulator");
            }
            values.add(new ChosenValue(pointer, FlowText.of(value), value.origin()));
        });
        return values;
    }

    @Override
    public List<ChosenValue> standIn() {
        return List.of();
    }
}
