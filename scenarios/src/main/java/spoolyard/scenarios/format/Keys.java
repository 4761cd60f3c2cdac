package spoolyard.scenarios.format;

import java.util.LinkedHashMap;
import java.util.Map;
import spoolyard.scenarios.read.Node;

/** Mappings with a key more or less. */
final class Keys {
    private Keys() {}

    static Node.Mapping without(Node.Mapping mapping, String... keys) {
        Map<String, Node> entries = new LinkedHashMap<>(mapping.entries());
        for (String key : keys) {
            entries.remove(key);
        }
        return new Node.Mapping(mapping.origin(), entries);
    }

    static Node.Mapping with(Node.Mapping mapping, String key, Node value) {
        Map<String, Node> entries = new LinkedHashMap<>(mapping.entries());
        entries.put(key, value);
        return new Node.Mapping(mapping.origin(), entries);
    }
}
