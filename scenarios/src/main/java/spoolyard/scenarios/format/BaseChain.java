package spoolyard.scenarios.format;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
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

/** Follows the bases of a scenario down to the file that has none. */
final class BaseChain {
    static final String PLANT_FILE = "plant.yaml";

    private static final String BASE = "base";

    private final SourceFiles files;
    private final Faults faults;
    private final List<Path> visited = new ArrayList<>();
    private final List<Node.Mapping> layers = new ArrayList<>();

    BaseChain(SourceFiles files, Faults faults) {
        this.files = files;
        this.faults = faults;
    }

    /** The trees from the last base up to the scenario itself, without their bases; empty if one cannot be read. */
    Optional<List<Node.Mapping>> load(Path folderOrFile) {
        Path file = plantFile(folderOrFile);
        boolean isComplete = follow(file, Origin.ofFile(SourceFiles.shown(file)));
        Collections.reverse(layers);
        return isComplete ? Optional.of(layers) : Optional.empty();
    }

    private boolean follow(Path first, Origin firstStatedAt) {
        Optional<Path> next = Optional.of(first);
        Origin statedAt = firstStatedAt;
        while (next.isPresent()) {
            Optional<Node.Mapping> tree = open(next.get(), statedAt);
            if (tree.isEmpty()) {
                return false;
            }
            Map<String, Node> entries = new LinkedHashMap<>(tree.get().entries());
            Node base = entries.remove(BASE);
            layers.add(new Node.Mapping(tree.get().origin(), entries));
            if (base == null) {
                return true;
            }
            next = basePath(base);
            statedAt = base.origin();
        }
        return false;
    }

    private Optional<Node.Mapping> open(Path file, Origin statedAt) {
        Path real = real(file);
        if (visited.contains(real)) {
            faults.add(new Fault(
                    FaultKind.CIRCULAR_BASE,
                    statedAt,
                    SourceFiles.shown(file),
                    "Must not lead back to a file that varies this one.",
                    "name a base that stands on its own"));
            return Optional.empty();
        }
        visited.add(real);
        return files.open(file, statedAt, SourceFiles.YAML_LIMIT_BYTES)
                .flatMap(source -> YamlTree.parse(source, faults))
                .flatMap(this::mapping);
    }

    private Optional<Node.Mapping> mapping(Node node) {
        if (node instanceof Node.Mapping mapping) {
            return Optional.of(mapping);
        }
        faults.add(new Fault(
                FaultKind.WRONG_SHAPE,
                node.origin(),
                node.shown(),
                "Must be a mapping of keys to values.",
                "begin with spoolyard: 1, or with base: FOLDER"));
        return Optional.empty();
    }

    private Optional<Path> basePath(Node base) {
        Optional<Path> path =
                base instanceof Node.Text text ? PathText.resolve(text.text(), base.origin()) : Optional.empty();
        if (path.isEmpty()) {
            faults.add(new Fault(
                    FaultKind.WRONG_SHAPE,
                    base.origin(),
                    base.shown(),
                    "Must be the folder or file that this one varies.",
                    "write for example base: ../orrenvale"));
        }
        return path.map(BaseChain::plantFile);
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
}
