package spoolyard.scenarios.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Nearest;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.read.Node;

/**
 * A value for each of the things that a scenario declares under a name. Immutable.
 *
 * @param what what the names stand for, for example {@code polymer}
 * @param names the names there are
 * @param isForAll true: every name must have a value
 * @param value how to read a value
 * @param <T> type of the values
 */
record RatesKind<T>(String what, List<String> names, boolean isForAll, Kind<T> value) implements Kind<Map<String, T>> {
    @Override
    public Map<String, T> read(Node node, Reading reading) {
        Map<String, T> values = new LinkedHashMap<>();
        if (!(node instanceof Node.Mapping mapping)) {
            reading.fault(
                    FaultKind.WRONG_SHAPE,
                    node,
                    "Must be names with values (a mapping).",
                    "write each name below it, indented by two spaces, with a colon");
            return values;
        }
        mapping.entries().forEach((name, given) -> {
            requireKnown(name, given, reading);
            values.put(name, value.read(given, reading));
        });
        if (isForAll) {
            names.stream()
                    .filter(name -> !mapping.entries().containsKey(name))
                    .filter(name -> !isMisspelt(name, mapping))
                    .forEach(name -> reading.missing(
                            mapping.origin().child(name),
                            "Must be given for every " + what + " of this plant.",
                            "add " + name));
        }
        return values;
    }

    private boolean isMisspelt(String name, Node.Mapping mapping) {
        return mapping.entries().keySet().stream()
                .filter(given -> !names.contains(given))
                .anyMatch(given -> Nearest.to(given, names).equals(Optional.of(name)));
    }

    private void requireKnown(String name, Node given, Reading reading) {
        if (!names.contains(name)) {
            String list = names.isEmpty() ? "(there is none)" : String.join(", ", names);
            String mend = Nearest.to(name, names)
                    .map(near -> "rename " + name + " to " + near + ", or delete it")
                    .orElse("delete " + name + ", or add the " + what);
            String allowed = "The name must be a " + what + " of this plant: " + list + ".";
            Fault fault = new Fault(FaultKind.UNKNOWN_NAME, given.origin(), given.shown(), allowed, mend);
            if (names.isEmpty()) {
                reading.faults().addOnce("no " + what, fault);
            } else {
                reading.faults().add(fault);
            }
        }
    }

    @Override
    public Map<String, T> standIn() {
        return Map.of();
    }
}
