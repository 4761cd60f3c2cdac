package spoolyard.scenarios.field;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.read.Node;

/**
 * Values under names that the plant chooses. Immutable.
 *
 * @param ofName how to read the value under a name
 * @param <T> type of the values
 */
public record NamedKind<T>(Function<String, Kind<T>> ofName) implements Kind<Map<String, T>> {
    private static final int LONGEST_NAME = 60;

    @Override
    public Map<String, T> read(Node node, Reading reading) {
        Map<String, T> values = new LinkedHashMap<>();
        if (node instanceof Node.Mapping mapping) {
            mapping.entries().forEach((name, value) -> {
                checkName(name, value, reading);
                values.put(name, ofName.apply(name).read(value, reading));
            });
        } else {
            reading.fault(
                    FaultKind.WRONG_SHAPE,
                    node,
                    "Must be names with values (a mapping).",
                    "write each name below it, indented by two spaces, with a colon");
        }
        return values;
    }

    @Override
    public Map<String, T> standIn() {
        return Map.of();
    }

    private static void checkName(String name, Node value, Reading reading) {
        if (name.isBlank() || name.equals("*") || name.equals("nobody") || name.length() > LONGEST_NAME) {
            reading.fault(
                    FaultKind.NOT_A_VALUE,
                    value,
                    "The name must have 1 to " + LONGEST_NAME + " characters and be neither * nor nobody.",
                    "choose another name");
        }
    }
}
