package spoolyard.scenarios.factor;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.fault.ScenarioException;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.format.Pointer;
import spoolyard.scenarios.read.Node;
import spoolyard.scenarios.read.SourceFiles;
import spoolyard.scenarios.read.YamlTree;

/**
 * A file of factors: {@code factors:} and below it, by name, {@code pointer}, {@code low} and {@code high}.
 *
 * <pre>{@code
 * factors:
 *   room of L3: {pointer: /lines/L3/accumulator, low: 40 m, high: 80 m}
 * }</pre>
 */
public final class FactorFile {
    private final Reading reading;

    private FactorFile(Reading reading) {
        this.reading = reading;
    }

    /**
     * Reads a file.
     *
     * @param path the file
     * @param most most factors it may have
     * @return the factors, 2 or more, in file order
     * @throws ScenarioException with every fault of the file
     */
    public static List<Factor> read(Path path, int most) throws ScenarioException {
        Reading reading = Reading.begin();
        SourceFiles files = new SourceFiles(reading.faults());
        Optional<Node> tree = files.open(path, new Origin("--factors", 0, "file"), SourceFiles.YAML_LIMIT_BYTES)
                .flatMap(source -> YamlTree.parse(source, reading.faults()));
        List<Factor> factors =
                tree.map(node -> new FactorFile(reading).factors(node, most)).orElse(List.of());
        reading.faults().throwIfAny();
        return factors;
    }

    private List<Factor> factors(Node tree, int most) {
        Map<String, Factor> byName = new MappingKind<>(
                        "factor_file",
                        r -> r.required(
                                "factors", new NamedKind<>(name -> new MappingKind<>("factor", f -> one(name, f)))))
                .read(tree, reading);
        if (reading.faults().isEmpty() && (byName.size() < 2 || byName.size() > most)) {
            reading.fault(
                    FaultKind.OUT_OF_RANGE,
                    tree,
                    "Must have 2 to " + most + " factors; these are " + byName.size() + ".",
                    "add or leave out some");
        }
        List<Factor> factors = new ArrayList<>(byName.values());
        refuseTwice(factors);
        return factors;
    }

    private Factor one(String name, MappingReader r) {
        String pointer = r.required("pointer", Words.text());
        String low = r.required("low", Words.text());
        String high = r.required("high", Words.text());
        if (!Pointer.isOfValue(pointer)) {
            r.raw("pointer")
                    .ifPresent(node -> reading.fault(
                            FaultKind.BAD_POINTER,
                            node,
                            "Must be the JSON Pointer of a value.",
                            "write for example /lines/L3/accumulator"));
        }
        if (low.equals(high)) {
            r.raw("high")
                    .ifPresent(node ->
                            reading.fault(FaultKind.CONTRADICTION, node, "Must differ from low.", "give two levels"));
        }
        return new Factor(name, pointer, low, high, r.origin());
    }

    private void refuseTwice(List<Factor> factors) {
        Faults faults = reading.faults();
        for (int i = 0; i < factors.size(); i++) {
            Factor factor = factors.get(i);
            boolean isTwice = factors.subList(0, i).stream()
                    .anyMatch(before -> before.pointer().equals(factor.pointer()));
            if (isTwice) {
                faults.add(new Fault(
                        FaultKind.DUPLICATE_NAME,
                        factor.origin().child("pointer"),
                        factor.pointer(),
                        "Must not be the pointer of another factor.",
                        "leave out one of them"));
            }
        }
    }
}
