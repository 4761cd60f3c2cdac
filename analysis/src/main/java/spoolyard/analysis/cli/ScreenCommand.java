package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spoolyard.analysis.bottleneck.Screening;
import spoolyard.analysis.experiment.TwoLevelDesign;
import spoolyard.analysis.report.EffectTable;
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
        header = "Tell which of many inputs matter, by a two-level design on declared ranges.",
        description = {
            "",
            "The file of factors names each value by its JSON Pointer with a low and a high level. Up to 15 factors take"
                    + " at most 16 plants. docs/bottleneck.md explains how to read the effects.",
            ""
        },
        parameterListHeading = "Parameters:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard screen scenarios/orrenvale --factors factors.yaml",
            "  spoolyard screen scenarios/orrenvale --factors factors.yaml --replications 40 --csv effects.csv",
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

    ScreenCommand(Console console, Simulator simulator) {
        this.console = console;
        this.simulator = simulator;
    }

    @Override
    public Integer call() throws InputException, ScenarioException, IOException {
        experiment.check(FEWEST_REPLICATIONS);
        OutputFile.check("--csv", csv, ".csv");
        List<Factor> factors = FactorFile.read(file, TwoLevelDesign.MOST_FACTORS);
        FactorScenarios scenarios = new FactorScenarios(scenario.path(), scenario.settings(), factors);
        scenarios.check();
        TwoLevelDesign design = TwoLevelDesign.of(factors.size());
        List<Plant> plants = plants(scenarios, design);
        print(List.of(
                console.ink().title(plants.get(0).name()) + ": which inputs matter",
                experiment.replications() + " replications each of " + design.runs() + " plants, seed "
                        + experiment.seed() + "; all intervals of a column hold at once with 95 % confidence.",
                ""));
        List<Screening.Effects> effects = new Screening(design, plants)
                .run(
                        plant -> simulator.of(plant, experiment.seed(), EventLog.SILENT),
                        experiment.replications(),
                        experiment.threads(),
                        experiment.progress(console));
        EffectTable table = new EffectTable(
                design, factors, effects, plants.get(0).economy().prices().map(Prices::currency));
        print(table.lines(console.ink()));
        if (csv != null) {
            OutputFile.write(csv, table.csv());
            print(List.of("Table in " + csv));
        }
        return ExitCode.OK;
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
}
