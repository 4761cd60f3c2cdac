package spoolyard.scenarios.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spoolyard.scenarios.read.Node;

/** Ways through raw trees. */
final class Trees {
    private Trees() {}

    /** The value under keys within keys; {@link Node.Nothing} if there is none. */
    static Node at(Node tree, String... path) {
        Node node = tree;
        for (String key : path) {
            Node.Nothing none = new Node.Nothing(node.origin().child(key));
            node = node instanceof Node.Mapping mapping ? mapping.entries().getOrDefault(key, none) : none;
        }
        return node;
    }

    /** Keys of a mapping; none if it is not a mapping. */
    static List<String> keys(Node node) {
        return node instanceof Node.Mapping mapping
                ? List.copyOf(mapping.entries().keySet())
                : List.of();
    }

    /** A mapping without some of its keys; anything else as it is. */
    static Node without(Node node, List<String> keys) {
        if (node instanceof Node.Mapping mapping) {
            Map<String, Node> left = new LinkedHashMap<>(mapping.entries());
            left.keySet().removeAll(keys);
            return new Node.Mapping(mapping.origin(), left);
        }
        return node;
    }
}
