package spoolyard.scenarios;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import spoolyard.scenarios.choice.ChosenValue;
import spoolyard.scenarios.choice.Mix;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.fault.Nearest;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.fault.ScenarioException;
import spoolyard.scenarios.format.Pointer;
import spoolyard.scenarios.format.ScenarioTree;
import spoolyard.scenarios.read.Node;
import spoolyard.scenarios.read.SourceFiles;

/** A scenario with each mix of choices set over it. Immutable. */
public final class MixScenarios {
    private static final List<String> LAYERED = List.of("every_line", "shifts");

    private final Path scenario;
    private final List<String> sets;

    /**
     * For a scenario.
     *
     * @param scenario folder or file
     * @param sets values that are set in any case
     */
    public MixScenarios(Path scenario, List<String> sets) {
        this.scenario = scenario;
        this.sets = List.copyOf(sets);
    }

    /**
     * Reads the scenario with every mix: as it is, with each option by itself, and, where all of these are sound, the rest.
     *
     * @param mixes the mixes
     * @return the scenario of each, in order
     * @throws ScenarioException with the faults of the scenario itself, or of the options, each where it is written, or of
     *     mixes whose options contradict each other
     */
    public List<Scenario> read(List<Mix> mixes) throws ScenarioException {
        ScenarioReader.read(scenario, sets);
        List<Mix> alone = mixes.stream().filter(mix -> mix.taken().size() == 1).toList();
        refuseLeadingNowhere(alone);
        check(alone);
        return check(mixes);
    }

    private List<Scenario> check(List<Mix> mixes) throws ScenarioException {
        Set<Fault> faults = new LinkedHashSet<>();
        List<Scenario> read = new ArrayList<>();
        for (Mix mix : mixes) {
            List<String> all = new ArrayList<>(sets);
            all.addAll(mix.settings());
            try {
                read.add(ScenarioReader.read(scenario, all));
            } catch (ScenarioException wrong) {
                wrong.faults().forEach(fault -> faults.add(of(mix, fault)));
            }
        }
        ScenarioException.throwIfAny(faults);
        return read;
    }

    /**
     * A fault stands where the value is written that it is about, or else where the first option is. One below a plain text
     * is a fault of the pointer, which made anew what it did not find.
     */
    private static Fault of(Mix mix, Fault fault) {
        Optional<ChosenValue> cause =
                values(mix).filter(value -> value.covers(fault.field())).findFirst();
        boolean isLost = cause.filter(
                        value -> value.isText() && !value.pointer().equals(fault.field()))
                .isPresent();
        if (isLost) {
            return nowhere(cause.get(), "there is nothing on the way to it", "look for a misspelt name in the pointer");
        }
        Origin origin = cause.map(ChosenValue::origin)
                .orElseGet(() -> mix.taken().get(0).option().origin());
        boolean isPlain =
                cause.filter(value -> value.pointer().equals(fault.field())).isPresent();
        String where = "With " + mix.label() + (isPlain ? ": " : ", at " + fault.field() + ": ");
        return new Fault(fault.kind(), origin, fault.value(), where + fault.allowed(), fault.mend());
    }

    private static Stream<ChosenValue> values(Mix mix) {
        return mix.taken().stream().flatMap(each -> each.option().values().stream());
    }

    private void refuseLeadingNowhere(List<Mix> alone) throws ScenarioException {
        Faults faults = new Faults();
        Node tree = new ScenarioTree(new SourceFiles(faults), faults)
                .load(scenario, sets)
                .orElseThrow();
        alone.stream().flatMap(MixScenarios::values).forEach(value -> broken(value, tree)
                .ifPresent(faults::add));
        faults.throwIfAny();
    }

    /** The first token of a pointer, but for its last, that is not in the tree. */
    private static Optional<Fault> broken(ChosenValue value, Node tree) {
        List<String> tokens = Pointer.parse(value.pointer()).orElseThrow().tokens();
        if (LAYERED.contains(tokens.get(0))) {
            return Optional.empty();
        }
        Node at = tree;
        for (String token : tokens.subList(0, tokens.size() - 1)) {
            Optional<Node> next = part(at, token);
            if (next.isEmpty()) {
                return Optional.of(nowhere(value, at, token));
            }
            at = next.get();
        }
        return Optional.empty();
    }

    private static Optional<Node> part(Node node, String token) {
        if (node instanceof Node.Mapping mapping) {
            return Optional.ofNullable(mapping.entries().get(token));
        }
        if (node instanceof Node.Sequence sequence && token.matches("\\d{1,6}")) {
            return sequence.items().stream().skip(Integer.parseInt(token)).findFirst();
        }
        return Optional.empty();
    }

    private static Fault nowhere(ChosenValue value, Node at, String token) {
        Optional<String> meant = at instanceof Node.Mapping mapping
                ? Nearest.to(token, mapping.entries().keySet())
                : Optional.empty();
        return nowhere(
                value,
                "there is no " + token + " on the way",
                meant.map(name -> "write " + name + " in place of " + token)
                        .orElse("look for a misspelt name in the pointer"));
    }

    /** What a pointer into nothing makes anew lacks much; that is told as one fault, of the pointer. */
    private static Fault nowhere(ChosenValue value, String why, String mend) {
        return new Fault(
                FaultKind.BAD_POINTER,
                value.origin(),
                value.shown(),
                "The pointer must lead to a value of the scenario, and " + why + ".",
                mend);
    }
}
