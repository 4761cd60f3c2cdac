package spoolyard.scenarios.format;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.read.Node;
import spoolyard.scenarios.read.SourceFiles;

/**
 * Loads a scenario's tree: the base and each variation over it as a JSON Merge Patch (RFC 7396), then the values from the
 * command line.
 *
 * <p>Lines are merged in layers: {@code every_line} as all files leave it, over it the line as the base has it, over that
 * each variation's, so that {@code null} in any of them takes out what the line has by then.
 */
public final class ScenarioTree {
    private static final String SHARED = "every_line";
    private static final String LINES = "lines";

    private final SourceFiles files;
    private final Faults faults;

    /**
     * Nothing loaded yet.
     *
     * @param files opens the files
     * @param faults takes what is wrong
     */
    public ScenarioTree(SourceFiles files, Faults faults) {
        this.files = files;
        this.faults = faults;
    }

    /**
     * Loads.
     *
     * @param folderOrFile a folder with a {@code plant.yaml}, or a YAML file
     * @param sets values from the command line, each a pointer, {@code =} and YAML; those of {@code every_line} go first
     * @return the tree with all bases and values merged and each line complete; empty if a file could not be read
     */
    public Optional<Node.Mapping> load(Path folderOrFile, List<String> sets) {
        Optional<List<Node.Mapping>> layers = new BaseChain(files, faults).load(folderOrFile);
        sets.forEach(files::note);
        return layers.map(all -> merge(all, sets));
    }

    private Node.Mapping merge(List<Node.Mapping> layers, List<String> sets) {
        Node.Mapping tree = without(layers.get(0), LINES);
        for (Node.Mapping patch : layers.subList(1, layers.size())) {
            tree = patched(tree, without(patch, LINES));
        }
        tree = set(tree, sets.stream().filter(ScenarioTree::isShared).toList());
        tree = withLines(tree, layers);
        return set(tree, sets.stream().filter(set -> !isShared(set)).toList());
    }

    /** A part {@code lines} that is no mapping is kept as a fault to be found. */
    private Node.Mapping withLines(Node.Mapping tree, List<Node.Mapping> layers) {
        List<Node> ofLines = layers.stream()
                .map(layer -> layer.entries().get(LINES))
                .filter(Objects::nonNull)
                .toList();
        if (ofLines.isEmpty()) {
            return tree;
        }
        Node shared = tree.entries().getOrDefault(SHARED, new Node.Mapping(tree.origin(), Map.of()));
        Map<String, Node> lines = new LinkedHashMap<>();
        ofLines.forEach(layer -> addLayer(layer, shared, lines));
        Node merged = new Node.Mapping(ofLines.get(0).origin(), lines);
        return with(
                tree,
                LINES,
                ofLines.stream()
                        .filter(layer -> !(layer instanceof Node.Mapping))
                        .findFirst()
                        .orElse(merged));
    }

    private void addLayer(Node layer, Node shared, Map<String, Node> lines) {
        if (layer instanceof Node.Mapping mapping) {
            mapping.entries().forEach((name, line) -> {
                if (line instanceof Node.Nothing && lines.containsKey(name)) {
                    lines.remove(name);
                } else {
                    lines.put(name, merged(lines.getOrDefault(name, shared), line));
                }
            });
        }
    }

    /** A line that is no mapping stays as a fault to be found. */
    private Node merged(Node under, Node line) {
        return line instanceof Node.Mapping mapping && under instanceof Node.Mapping ? patched(under, mapping) : line;
    }

    private Node.Mapping patched(Node tree, Node.Mapping patch) {
        new TakenOut(faults).check(tree, patch);
        return MergePatch.apply(tree, patch);
    }

    private Node.Mapping set(Node.Mapping tree, List<String> sets) {
        Node.Mapping changed = tree;
        for (String set : sets) {
            changed = SetValue.apply(set, changed, faults);
        }
        return changed;
    }

    private static boolean isShared(String set) {
        return set.startsWith("/" + SHARED + "/") || set.startsWith("/" + SHARED + "=");
    }

    private static Node.Mapping without(Node.Mapping mapping, String key) {
        Map<String, Node> entries = new LinkedHashMap<>(mapping.entries());
        entries.remove(key);
        return new Node.Mapping(mapping.origin(), entries);
    }

    private static Node.Mapping with(Node.Mapping mapping, String key, Node value) {
        Map<String, Node> entries = new LinkedHashMap<>(mapping.entries());
        entries.put(key, value);
        return new Node.Mapping(mapping.origin(), entries);
    }
}
