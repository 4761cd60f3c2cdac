package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spoolyard.analysis.bottleneck.MorrisScreening;
import spoolyard.analysis.bottleneck.Screening;
import spoolyard.analysis.experiment.MorrisDesign;
import spoolyard.analysis.experiment.Replicator;
import spoolyard.analysis.experiment.TwoLevelDesign;
import spoolyard.analysis.report.EffectTable;
import spoolyard.analysis.report.MorrisTable;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Prices;
import spoolyard.core.record.EventLog;
import spoolyard.scenarios.FactorScenarios;
import spoolyard.scenarios.factor.Factor;
import spoolyard.scenarios.factor.FactorFile;
import spoolyard.scenarios.fault.ScenarioException;

/** Tells which inputs matter. */
@Command(
        name = "screen",
        mixinStandardHelpOptions = true,
        header = "Tell which of many inputs matter, on declared ranges.",
        description = {
            "",
            "The file of factors names each value by its JSON Pointer with a low and a high level. Up to 15 factors take"
                    + " at most 16 plants; --design morris looks for bends as well, in more of them. docs/bottleneck.md explains how to read the effects.",
            ""
        },
        parameterListHeading = "Parameters:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard screen scenarios/orrenvale --factors factors.yaml",
            "  spoolyard screen scenarios/orrenvale --factors factors.yaml --replications 40 --csv effects.csv",
            "  spoolyard screen scenarios/orrenvale --factors factors.yaml --design morris --replications 5",
            "",
            "A file of factors:",
            "  factors:",
            "    room of L3: {pointer: /lines/L3/accumulator, low: 40 m, high: 80 m}",
            "    operators at night: {pointer: /shifts/pattern/N/crew/operator, low: 3, high: 5}",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault."
        })
final class ScreenCommand implements Callable<Integer> {
    private static final int FEWEST_REPLICATIONS = 2;
    private static final int FEWEST_TRAJECTORIES = 4;
    private static final int MOST_TRAJECTORIES = 1000;
    private static final int MOST_WALKED = 60;

    private final Console console;
    private final Simulator simulator;

    @Mixin
    private ScenarioArgument scenario;

    @Option(names = "--factors", paramLabel = "FILE", required = true, description = "YAML file of factors.")
    private Path file;

    @Mixin
    private ExperimentOptions experiment;

    @Option(names = "--csv", paramLabel = "FILE", description = "Write all effects into a CSV file.")
    private Path csv;

    @Option(
            names = "--design",
            paramLabel = "NAME",
            defaultValue = "two-level",
            description = "two-level: main effects from at most 16 plants; morris: elementary effects along random"
                    + " trajectories, which also show bends and what depends on others. Default: ${DEFAULT-VALUE}.")
    private Design design;

    @Option(
            names = "--trajectories",
            paramLabel = "N",
            defaultValue = "10",
            description = "Trajectories of the design morris, each of one more plants than factors. Default:"
                    + " ${DEFAULT-VALUE}.")
    private int trajectories;

    ScreenCommand(Console console, Simulator simulator) {
        this.console = console;
        this.simulator = simulator;
    }

    @Override
    public Integer call() throws InputException, ScenarioException, IOException {
        experiment.check(FEWEST_REPLICATIONS);
        Requirements.range("--trajectories", trajectories, FEWEST_TRAJECTORIES, MOST_TRAJECTORIES);
        OutputFile.check("--csv", csv, ".csv");
        List<Factor> factors = FactorFile.read(
                file, design == Design.MORRIS ? MOST_WALKED : TwoLevelDesign.MOST_FACTORS);
        FactorScenarios scenarios = new FactorScenarios(scenario.path(), scenario.settings(), factors);
        scenarios.check();
        Shown shown = design == Design.MORRIS ? morris(factors, scenarios) : twoLevel(factors, scenarios);
        print(shown.lines());
        if (csv != null) {
            OutputFile.write(csv, shown.csv());
            print(List.of("Table in " + csv));
        }
        return ExitCode.OK;
    }

    private Shown twoLevel(List<Factor> factors, FactorScenarios scenarios) throws ScenarioException {
        TwoLevelDesign runs = TwoLevelDesign.of(factors.size());
        List<Plant> plants = plants(scenarios, runs);
        head(plants, "all intervals of a column hold at once with 95 % confidence.");
        List<Screening.Effects> effects = new Screening(runs, plants)
                .run(
                        this::replicator,
                        experiment.replications(),
                        experiment.threads(),
                        experiment.progress(console));
        EffectTable table = new EffectTable(runs, factors, effects, currency(plants));
        return new Shown(table.lines(console.ink()), table.csv());
    }

    private Shown morris(List<Factor> factors, FactorScenarios scenarios) throws ScenarioException {
        MorrisDesign walks = MorrisDesign.of(factors.size(), trajectories, experiment.seed());
        List<List<Factor.Level>> points = walks.points().stream()
                .map(point -> levels(factors, point))
                .toList();
        List<Plant> plants = new ArrayList<>();
        for (List<Factor.Level> point : points) {
            plants.add(scenarios.read(point).plant());
        }
        head(plants, trajectories + " trajectories; each interval holds by itself with 95 %.");
        List<List<Double>> shares = points.stream()
                .map(point -> point.stream().map(Factor.Level::share).toList())
                .toList();
        List<MorrisScreening.Effects> effects = new MorrisScreening(walks, plants, shares, experiment.seed())
                .run(
                        this::replicator,
                        experiment.replications(),
                        experiment.threads(),
                        experiment.progress(console));
        MorrisTable table = new MorrisTable(factors, effects, currency(plants));
        return new Shown(table.lines(console.ink()), table.csv());
    }

    private static List<Factor.Level> levels(List<Factor> factors, List<Double> point) {
        return IntStream.range(0, factors.size())
                .mapToObj(factor -> factors.get(factor).level(point.get(factor)))
                .toList();
    }

    private Replicator replicator(Plant plant) {
        return simulator.of(plant, experiment.seed(), EventLog.SILENT);
    }

    private static Optional<String> currency(List<Plant> plants) {
        return plants.get(0).economy().prices().map(Prices::currency);
    }

    private void head(List<Plant> plants, String confidence) {
        print(List.of(
                console.ink().title(plants.get(0).name()) + ": which inputs matter",
                experiment.replications() + " replications each of " + plants.size() + " plants, seed "
                        + experiment.seed() + "; " + confidence,
                ""));
    }

    private static List<Plant> plants(FactorScenarios scenarios, TwoLevelDesign design) throws ScenarioException {
        List<Plant> plants = new ArrayList<>();
        for (int number = 0; number < design.runs(); number++) {
            int run = number;
            plants.add(scenarios.read(factor -> design.isHigh(run, factor)).plant());
        }
        return plants;
    }

    private void print(List<String> lines) {
        if (!experiment.isQuiet()) {
            lines.forEach(console.out()::println);
        }
    }

    /** How the levels are chosen. */
    private enum Design {
        TWO_LEVEL,
        MORRIS;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** What comes out. */
    private record Shown(List<String> lines, String csv) {}
}
