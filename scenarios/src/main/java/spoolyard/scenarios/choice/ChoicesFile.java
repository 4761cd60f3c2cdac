package spoolyard.scenarios.choice;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.fault.ScenarioException;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.QuantityKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.read.Node;
import spoolyard.scenarios.read.SourceFiles;
import spoolyard.scenarios.read.YamlTree;

/**
 * A file of choices.
 *
 * <pre>{@code
 * interest: 8 %
 * choices:
 *   accumulator of L3:
 *     now: 60 m
 *     options:
 *       100 m: {set: {/lines/L3/accumulator: 100 m}, buy_per_metre: 120, life_years: 10}
 * }</pre>
 */
public final class ChoicesFile {
    private final Reading reading;

    private ChoicesFile(Reading reading) {
        this.reading = reading;
    }

    /**
     * Reads a file.
     *
     * @param path the file
     * @param most most mixes there may be
     * @return the choices in file order
     * @throws ScenarioException with every fault of the file
     */
    public static Choices read(Path path, int most) throws ScenarioException {
        return read(path, most, Reading.begin());
    }

    /** The same, noting in {@code reading} which keys are asked for. */
    static Choices read(Path path, int most, Reading reading) throws ScenarioException {
        SourceFiles files = new SourceFiles(reading.faults());
        Optional<Node> tree = files.open(path, new Origin("--choices", 0, "file"), SourceFiles.YAML_LIMIT_BYTES)
                .flatMap(source -> YamlTree.parse(source, reading.faults()));
        Optional<Choices> choices = tree.map(node -> new ChoicesFile(reading).choices(node, most));
        reading.faults().throwIfAny();
        return choices.orElseThrow();
    }

    private Choices choices(Node tree, int most) {
        Choices choices = new MappingKind<>(
                        "choices_file",
                        r -> new Choices(
                                r.optional("interest", QuantityKind.from(Dimension.SHARE, "0 %", "50 %"), 0.0),
                                List.copyOf(r.required(
                                                "choices",
                                                new NamedKind<>(
                                                        name -> new MappingKind<>("choice", c -> choice(name, c))))
                                        .values())))
                .read(tree, reading);
        if (reading.faults().isEmpty() && choices.all().isEmpty()) {
            reading.fault(FaultKind.OUT_OF_RANGE, tree, "Must have a choice.", "add one, as docs/invest.md shows");
        }
        if (reading.faults().isEmpty() && isMoreThan(most, choices)) {
            reading.fault(
                    FaultKind.OUT_OF_RANGE,
                    tree,
                    "Must make at most " + most + " mixes, the product over the choices of their options and what is.",
                    "leave out options, or write two files");
        }
        refuseOverlaps(choices.all());
        return choices;
    }

    private static boolean isMoreThan(int most, Choices choices) {
        try {
            return choices.mixCount() > most;
        } catch (ArithmeticException beyondAnyNumber) {
            return true;
        }
    }

    private static Choice choice(String name, MappingReader r) {
        String now = r.optional("now", Words.text(), "as it is");
        Map<String, Option> options = r.required(
                "options", new NamedKind<>(option -> new MappingKind<>("choice_option", o -> option(option, o))));
        if (options.isEmpty()) {
            r.raw("options").ifPresent(node -> r.reading()
                    .fault(FaultKind.OUT_OF_RANGE, node, "Must have an option.", "add what else there may be"));
        }
        return new Choice(name, now, List.copyOf(options.values()));
    }

    private static Option option(String name, MappingReader r) {
        return new Option(name, r.required("set", new ChosenValuesKind()), PriceReader.read(r), r.origin());
    }

    /** Two choices that set the same value would make mixes of which nobody could say what they are. */
    private void refuseOverlaps(List<Choice> all) {
        List<ChosenValue> before = new ArrayList<>();
        for (Choice choice : all) {
            List<ChosenValue> own =
                    choice.options().stream().flatMap(o -> o.values().stream()).toList();
            own.stream()
                    .filter(value -> before.stream().anyMatch(value::overlaps))
                    .forEach(value -> reading.faults()
                            .add(new Fault(
                                    FaultKind.DUPLICATE_NAME,
                                    value.origin(),
                                    value.shown(),
                                    "Must not be set by another choice too, nor within what that replaces.",
                                    "make both options of one choice, or leave one out")));
            before.addAll(own);
        }
    }
}
