package spoolyard.scenarios.check;

import java.util.Map;
import java.util.function.Function;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.format.MergePatch;
import spoolyard.scenarios.read.Node;

/**
 * Named values, each merged over what all share (RFC 7396).
 *
 * @param shared what all share; {@link Node.Nothing} if there is none
 * @param ofName how to read the merged value under a name
 * @param <T> type of the values
 */
record OverSharedKind<T>(Node shared, Function<String, Kind<T>> ofName) implements Kind<Map<String, T>> {
    @Override
    public Map<String, T> read(Node node, Reading reading) {
        if (shared instanceof Node.Text || shared instanceof Node.Sequence) {
            reading.fault(
                    FaultKind.WRONG_SHAPE,
                    shared,
                    "Must be keys with values (a mapping).",
                    "write the keys that all share below it, indented by two spaces");
        }
        return new NamedKind<>(name -> new Merged<>(shared, ofName.apply(name))).read(node, reading);
    }

    @Override
    public Map<String, T> standIn() {
        return Map.of();
    }

    private record Merged<T>(Node shared, Kind<T> kind) implements Kind<T> {
        @Override
        public T read(Node node, Reading reading) {
            return kind.read(MergePatch.apply(shared, node), reading);
        }

        @Override
        public T standIn() {
            return kind.standIn();
        }
    }
}
