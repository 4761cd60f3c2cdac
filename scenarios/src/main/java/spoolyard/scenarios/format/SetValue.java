package spoolyard.scenarios.format;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.read.Node;
import spoolyard.scenarios.read.YamlTree;

/**
 * One value set from the command line, for example {@code /lines/L3/accumulator=80 m}. The value is YAML; it replaces
 * what stands there; mappings on the way that are not there are made; an empty value or {@code null} takes the key out.
 * Immutable.
 */
public final class SetValue {
    private final String text;
    private final Faults faults;

    private SetValue(String text, Faults faults) {
        this.text = text;
        this.faults = faults;
    }

    /**
     * Sets a value.
     *
     * @param text pointer, {@code =}, value
     * @param tree the tree
     * @param faults takes what is wrong with pointer or value
     * @return the tree with the value; unchanged if there is a fault
     */
    public static Node.Mapping apply(String text, Node.Mapping tree, Faults faults) {
        return new SetValue(text, faults).apply(tree);
    }

    private Node.Mapping apply(Node.Mapping tree) {
        int sign = text.indexOf('=');
        Optional<Pointer> pointer = sign < 0 ? Optional.empty() : Pointer.parse(text.substring(0, sign));
        if (pointer.isEmpty() || pointer.get().isRoot()) {
            report("Must be a JSON Pointer, an equals sign and a value.");
            return tree;
        }
        Origin origin = new Origin("--set", 0, text.substring(0, sign));
        Optional<Node> value = YamlTree.parseValue(text.substring(sign + 1), origin, faults);
        return value.map(v -> in(tree, pointer.get(), v)).orElse(tree);
    }

    private Node.Mapping in(Node.Mapping mapping, Pointer pointer, Node value) {
        Map<String, Node> entries = new LinkedHashMap<>(mapping.entries());
        String key = pointer.first();
        Node old = entries.getOrDefault(key, new Node.Nothing(mapping.origin().child(key)));
        Node changed = changed(old, pointer.rest(), value);
        if (changed instanceof Node.Nothing) {
            entries.remove(key);
        } else {
            entries.put(key, changed);
        }
        return new Node.Mapping(mapping.origin(), entries);
    }

    private Node changed(Node old, Pointer rest, Node value) {
        if (rest.isRoot()) {
            return value;
        }
        if (old instanceof Node.Mapping mapping) {
            return in(mapping, rest, value);
        }
        if (old instanceof Node.Sequence sequence) {
            return in(sequence, rest, value);
        }
        if (old instanceof Node.Nothing) {
            return in(new Node.Mapping(value.origin(), Map.of()), rest, value);
        }
        report("Must lead to a value; " + old.origin().shownField() + " is text and has no part " + rest.first() + ".");
        return old;
    }

    private Node in(Node.Sequence sequence, Pointer pointer, Node value) {
        List<Node> items = new ArrayList<>(sequence.items());
        String token = pointer.first();
        boolean isIndex = token.matches("0|[1-9]\\d{0,5}") && Integer.parseInt(token) < items.size();
        if (isIndex) {
            int index = Integer.parseInt(token);
            items.set(index, changed(items.get(index), pointer.rest(), value));
        } else {
            report("Must lead to a value; " + sequence.origin().shownField() + " is a list of " + items.size()
                    + ", counted from 0.");
        }
        return new Node.Sequence(sequence.origin(), items);
    }

    private void report(String allowed) {
        faults.add(new Fault(
                FaultKind.BAD_POINTER,
                new Origin("--set", 0, "setting"),
                text,
                allowed,
                "write it like --set /lines/L3/accumulator=\"80 m\""));
    }
}
