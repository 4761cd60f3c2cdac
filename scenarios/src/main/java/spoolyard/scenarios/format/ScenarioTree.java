package spoolyard.scenarios.format;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.read.Node;
import spoolyard.scenarios.read.SourceFiles;

/**
 * Loads a scenario's tree: the base and each variation over it as a JSON Merge Patch (RFC 7396), then the values from the
 * command line.
 *
 * <p>Lines are merged in layers: {@code every_line} as all files leave it, over it the line as the base has it, over that
 * each variation's, so that {@code null} in any of them takes out what the line has by then. Shifts are merged in the same
 * way, over the shift system if one is named.
 */
public final class ScenarioTree {
    static final String SHIFTS = "shifts";
    private static final String EVERY_LINE = "every_line";

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
        Node.Mapping tree = new SharedKeys(EVERY_LINE, "lines", faults)
                .merge(
                        layers.stream()
                                .map(layer -> Keys.without(layer, SHIFTS))
                                .toList(),
                        shared -> set(shared, sets, ScenarioTree::isOfEveryLine));
        List<Node.Mapping> ofShifts =
                layers.stream().map(ScenarioTree::onlyShifts).toList();
        Node.Mapping shifts = new ShiftLayers(faults).merge(ofShifts, sets);
        Node part = shifts.entries().get(SHIFTS);
        Node.Mapping whole = part == null ? tree : Keys.with(tree, SHIFTS, part);
        return set(whole, sets, set -> !isOfEveryLine(set) && !ShiftLayers.comesFirst(set));
    }

    private static Node.Mapping onlyShifts(Node.Mapping layer) {
        Node shifts = layer.entries().get(SHIFTS);
        return new Node.Mapping(layer.origin(), shifts == null ? Map.of() : Map.of(SHIFTS, shifts));
    }

    private Node.Mapping set(Node.Mapping tree, List<String> sets, Predicate<String> isMeant) {
        Node.Mapping changed = tree;
        for (String set : sets.stream().filter(isMeant).toList()) {
            changed = SetValue.apply(set, changed, faults);
        }
        return changed;
    }

    private static boolean isOfEveryLine(String set) {
        return Pointer.isIn(set, "/" + EVERY_LINE);
    }
}
