package spoolyard.scenarios.format;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.read.Node;

/**
 * Merges layers of a mapping in which named members share keys, as lines share {@code every_line}: the shared keys as all
 * layers leave them, over them the member as the first layer has it, over that each further layer's, so that {@code null}
 * in any of them takes out what the member has by then.
 *
 * @param shared key of what the members share
 * @param members key of the members
 * @param faults takes each {@code null} that takes out nothing
 */
record SharedKeys(String shared, String members, Faults faults) {
    /**
     * Merges.
     *
     * @param layers the lowest first; at least one
     * @param set values from the command line that come before the members are made
     * @return the lowest patched by the others, with whole members
     */
    Node.Mapping merge(List<Node.Mapping> layers, UnaryOperator<Node.Mapping> set) {
        Node.Mapping tree = Keys.without(layers.get(0), members);
        for (Node.Mapping patch : layers.subList(1, layers.size())) {
            tree = patched(tree, Keys.without(patch, members));
        }
        return withMembers(set.apply(tree), layers);
    }

    /** Members that are no mapping are kept as a fault to be found. */
    private Node.Mapping withMembers(Node.Mapping tree, List<Node.Mapping> layers) {
        List<Node> ofMembers = layers.stream()
                .map(layer -> layer.entries().get(members))
                .filter(Objects::nonNull)
                .toList();
        if (ofMembers.isEmpty()) {
            return tree;
        }
        Node under = tree.entries().getOrDefault(shared, new Node.Mapping(tree.origin(), Map.of()));
        Map<String, Node> merged = new LinkedHashMap<>();
        ofMembers.forEach(layer -> addLayer(layer, under, merged));
        Node all = new Node.Mapping(ofMembers.get(0).origin(), merged);
        return Keys.with(
                tree,
                members,
                ofMembers.stream()
                        .filter(layer -> !(layer instanceof Node.Mapping))
                        .findFirst()
                        .orElse(all));
    }

    private void addLayer(Node layer, Node under, Map<String, Node> merged) {
        if (layer instanceof Node.Mapping mapping) {
            mapping.entries().forEach((name, member) -> {
                if (member instanceof Node.Nothing && merged.containsKey(name)) {
                    merged.remove(name);
                } else {
                    merged.put(name, over(merged.getOrDefault(name, under), member));
                }
            });
        }
    }

    /** A member that is no mapping stays as a fault to be found. */
    private Node over(Node under, Node member) {
        return member instanceof Node.Mapping mapping && under instanceof Node.Mapping
                ? patched(under, mapping)
                : member;
    }

    private Node.Mapping patched(Node tree, Node.Mapping patch) {
        new TakenOut(faults).check(tree, patch);
        return MergePatch.apply(tree, patch);
    }
}
