package spoolyard.scenarios.field;

import java.util.Map;
import java.util.function.Function;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.read.Node;

/**
 * A mapping with known keys. Immutable.
 *
 * @param type name of the type of mapping, as in the schema
 * @param build makes the value out of the keys
 * @param <T> its type
 */
public record MappingKind<T>(String type, Function<MappingReader, T> build) implements Kind<T> {
    @Override
    public T read(Node node, Reading reading) {
        if (!(node instanceof Node.Mapping mapping)) {
            reading.fault(
                    FaultKind.WRONG_SHAPE,
                    node,
                    "Must be keys with values (a mapping).",
                    "write the keys below it, indented by two spaces");
            return standIn();
        }
        MappingReader reader = new MappingReader(mapping, type, reading, false);
        T value = build.apply(reader);
        reader.end();
        return value;
    }

    @Override
    public T standIn() {
        Node.Mapping none = new Node.Mapping(Origin.ofFile("nowhere"), Map.of());
        return build.apply(new MappingReader(none, type, Reading.begin(), true));
    }
}
