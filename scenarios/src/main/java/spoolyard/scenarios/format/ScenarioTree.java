package spoolyard.scenarios.format;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
import spoolyard.scenarios.read.SourceFiles;
import spoolyard.scenarios.read.YamlTree;

/**
 * Loads a scenario's tree: a file with no {@code base} as it stands; a variation as a merge patch over its base, which
 * may be a variation itself; then the values from the command line.
 */
public final class ScenarioTree {
    /** File that a folder stands for. */
    public static final String PLANT_FILE = "plant.yaml";

    private static final String BASE = "base";

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
     * @param folderOrFile a folder with {@value #PLANT_FILE}, or a YAML file
     * @param sets values from the command line, each a pointer, {@code =} and YAML
     * @return the tree with all bases and values merged; empty if a file could not be read
     */
    public Optional<Node.Mapping> load(Path folderOrFile, List<String> sets) {
        Path file = plantFile(folderOrFile);
        Optional<Node.Mapping> tree = load(file, Origin.ofFile(SourceFiles.shown(file)), new ArrayList<>());
        if (tree.isEmpty()) {
            return tree;
        }
        Node.Mapping merged = tree.get();
        for (String set : sets) {
            files.note(set);
            merged = SetValue.apply(set, merged, faults);
        }
        return Optional.of(merged);
    }

    private Optional<Node.Mapping> load(Path file, Origin statedAt, List<Path> chain) {
        Path real = real(file);
        if (chain.contains(real)) {
            circular(file, statedAt);
            return Optional.empty();
        }
        chain.add(real);
        Optional<Node> node = files.open(file, statedAt, SourceFiles.YAML_LIMIT_BYTES)
                .flatMap(source -> YamlTree.parse(source, faults));
        if (node.isPresent() && !(node.get() instanceof Node.Mapping)) {
            wrongRoot(node.get());
        }
        return node.filter(Node.Mapping.class::isInstance)
                .map(Node.Mapping.class::cast)
                .flatMap(mapping -> overBase(mapping, chain));
    }

    private Optional<Node.Mapping> overBase(Node.Mapping mapping, List<Path> chain) {
        Node base = mapping.entries().get(BASE);
        if (base == null) {
            return Optional.of(mapping);
        }
        Optional<Path> path =
                base instanceof Node.Text text ? PathText.resolve(text.text(), base.origin()) : Optional.empty();
        if (path.isEmpty()) {
            wrongBase(base);
            return Optional.empty();
        }
        Map<String, Node> patch = new LinkedHashMap<>(mapping.entries());
        patch.remove(BASE);
        return load(plantFile(path.get()), base.origin(), chain)
                .map(tree -> MergePatch.apply(tree, new Node.Mapping(mapping.origin(), patch)));
    }

    private static Path plantFile(Path path) {
        return (Files.isDirectory(path) ? path.resolve(PLANT_FILE) : path).normalize();
    }

    private static Path real(Path file) {
        try {
            return file.toRealPath();
        } catch (IOException e) {
            return file.toAbsolutePath().normalize();
        }
    }

    private void circular(Path file, Origin statedAt) {
        faults.add(new Fault(
                FaultKind.CIRCULAR_BASE,
                statedAt,
                SourceFiles.shown(file),
                "Must not lead back to a file that varies this one.",
                "name a base that stands on its own"));
    }

    private void wrongBase(Node base) {
        faults.add(new Fault(
                FaultKind.WRONG_SHAPE,
                base.origin(),
                base.shown(),
                "Must be the folder or file that this one varies.",
                "write for example base: ../orrenvale"));
    }

    private void wrongRoot(Node node) {
        faults.add(new Fault(
                FaultKind.WRONG_SHAPE,
                node.origin(),
                node.shown(),
                "Must be a mapping of keys to values.",
                "begin with spoolyard: 1, or with base: FOLDER"));
    }
}
