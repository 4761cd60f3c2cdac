package spoolyard.analysis.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spoolyard.analysis.bottleneck.Gain;
import spoolyard.analysis.bottleneck.Relief;
import spoolyard.analysis.bottleneck.ReliefStudy;
import spoolyard.analysis.bottleneck.Reliefs;
import spoolyard.analysis.report.GainTable;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Prices;
import spoolyard.core.record.EventLog;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.fault.ScenarioException;

/** Measures what relieving each part of a plant brings. */
@Command(
        name = "relieve",
        mixinStandardHelpOptions = true,
        header = "Measure what relieving one thing at a time brings: a person, a place, room, time.",
        description = {
            "",
            "Runs the plant as it is and with one thing relieved at a time, on the same random numbers, and ranks them by"
                    + " extra good spools, with intervals that all hold at once with 95 %% confidence. docs/bottleneck.md",
            ""
        },
        parameterListHeading = "Parameters:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard relieve scenarios/orrenvale",
            "  spoolyard relieve scenarios/orrenvale --only crew --by-shift --replications 40",
            "  spoolyard relieve scenarios/orrenvale --set \"/time/length=2 weeks\" --csv reliefs.csv",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault."
        })
final class RelieveCommand implements Callable<Integer> {
    private static final int FEWEST_REPLICATIONS = 2;

    private final Console console;
    private final Simulator simulator;

    @Mixin
    private ScenarioArgument scenario;

    @Mixin
    private ExperimentOptions experiment;

    @Option(
            names = "--only",
            paramLabel = "KIND",
            description =
                    "Relieve only crew, line, buffer, swap, finishing, rack, lab, dryer or oven; may be given again.")
    private List<String> only = new ArrayList<>();

    @Option(names = "--by-shift", description = "One person more in each shift by itself, not in all together.")
    private boolean isByShift;

    @Mixin
    private TableOptions files;

    RelieveCommand(Console console, Simulator simulator) {
        this.console = console;
        this.simulator = simulator;
    }

    @Override
    public Integer call() throws InputException, ScenarioException, IOException {
        Scenario read = checked();
        List<Relief> reliefs = reliefs(read.plant(), kinds());
        print(List.of(
                console.ink().title(read.plant().name()) + ": what relieving one thing at a time brings",
                experiment.replications() + " replications each of " + (reliefs.size() + 1) + " plants, seed "
                        + experiment.seed() + "; all intervals hold at once with 95 % confidence.",
                ""));
        List<Gain> gains = new ReliefStudy(
                        plant -> simulator.of(plant, experiment.seed(), EventLog.SILENT),
                        experiment.replications(),
                        experiment.threads())
                .run(read.plant(), reliefs, experiment.progress(console));
        GainTable table = new GainTable(gains, read.plant().economy().prices().map(Prices::currency));
        print(table.lines(console.ink()));
        print(files.write(table.csv(), table::png, console.err()));
        return ExitCode.OK;
    }

    private Scenario checked() throws InputException, IOException {
        OptionFaults faults = new OptionFaults();
        faults.check(() -> experiment.check(FEWEST_REPLICATIONS));
        files.check(faults);
        Optional<List<Relief.Kind>> kinds = faults.read(this::kinds);
        Optional<Scenario> read = faults.read(scenario::read);
        if (read.isPresent() && kinds.isPresent()) {
            faults.check(() -> reliefs(read.get().plant(), kinds.get()));
        }
        faults.throwIfAny();
        return read.orElseThrow();
    }

    private List<Relief> reliefs(Plant plant, List<Relief.Kind> kinds) throws InputException {
        List<Relief> reliefs = Reliefs.of(plant, isByShift).stream()
                .filter(relief -> kinds.isEmpty() || kinds.contains(relief.kind()))
                .toList();
        if (reliefs.isEmpty()) {
            throw new InputException(
                    kinds.isEmpty() ? scenario.path().toString() : "--only = " + String.join(", ", only),
                    "Must leave something to relieve: this plant has none of it.",
                    "name another kind, or none for all");
        }
        return reliefs;
    }

    private List<Relief.Kind> kinds() throws InputException {
        List<Relief.Kind> kinds = new ArrayList<>();
        for (String word : only) {
            kinds.add(List.of(Relief.Kind.values()).stream()
                    .filter(kind -> kind.label().equals(word.toLowerCase(Locale.ROOT)))
                    .findFirst()
                    .orElseThrow(() -> new InputException(
                            "--only = " + word,
                            "Must be one of: "
                                    + String.join(
                                            ", ",
                                            List.of(Relief.Kind.values()).stream()
                                                    .map(Relief.Kind::label)
                                                    .toList())
                                    + ".",
                            "give one of these")));
        }
        return kinds;
    }

    private void print(List<String> lines) {
        if (!experiment.isQuiet()) {
            lines.forEach(console.out()::println);
        }
    }
}
