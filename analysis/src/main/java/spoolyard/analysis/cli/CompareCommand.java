package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import spoolyard.analysis.experiment.CommonNumbers;
import spoolyard.analysis.experiment.Effort;
import spoolyard.analysis.experiment.Grown;
import spoolyard.analysis.experiment.SequentialExperiment;
import spoolyard.analysis.report.Alternative;
import spoolyard.analysis.report.Comparison;
import spoolyard.analysis.report.ComparisonFiles;
import spoolyard.analysis.report.ComparisonJson;
import spoolyard.analysis.report.ComparisonText;
import spoolyard.analysis.report.DifferenceChart;
import spoolyard.analysis.report.Measure;
import spoolyard.analysis.report.ResultsFolder;
import spoolyard.analysis.report.ResultsRefusedException;
import spoolyard.scenarios.fault.ScenarioException;

/** Compares alternatives with a base. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        header = "Say what alternatives gain and lose against a base, and how sure that is.",
        description = {
            "",
            "Runs the same replications of all, with the same luck wherever they agree, and gives the differences"
                    + " with intervals that all hold at once with 95 %% confidence. docs/answers.md explains how to"
                    + " read them.",
            ""
        },
        parameterListHeading = "Parameters:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard compare scenarios/orrenvale scenarios/orrenvale-two-by-twelve",
            "  spoolyard compare scenarios/orrenvale three=/shifts/pattern/N/crew/operator=3 \\",
            "      two=/shifts/pattern/N/crew/operator=2",
            "  spoolyard compare scenarios/orrenvale \"wide=/lines/L3/accumulator=80 m,/lines/L4/accumulator=80 m\"",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault."
        })
final class CompareCommand implements Callable<Integer> {
    private static final int FEWEST_REPLICATIONS = 2;

    private final Console console;
    private final Simulator simulator;

    @Parameters(
            index = "0",
            paramLabel = "BASE",
            description = "The scenario to compare with: a folder with a plant.yaml, or a YAML file that varies one.")
    private Path base;

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "ALT",
            description = {
                "What to compare with it: a scenario, or values set over the base, POINTER=VALUE by JSON Pointer,"
                        + " joined by commas. NAME= before either gives it a name."
            })
    private List<String> alternatives = new ArrayList<>();

    @Option(
            names = "--set",
            paramLabel = "POINTER=VALUE",
            description = "Set one value over the base and all alternatives; may be given again.")
    private List<String> settings = new ArrayList<>();

    @Mixin
    private EffortOptions efforts;

    @Mixin
    private SimulationOptions experiment;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "Results folder; an earlier one is replaced. Default: results/, the base's name and -compared.")
    private Path out;

    @Option(names = "--json", description = "Print summary.json in place of the report.")
    private boolean isJson;

    @Option(names = "--no-charts", description = "Draw no picture.")
    private boolean isWithoutCharts;

    CompareCommand(Console console, Simulator simulator) {
        this.console = console;
        this.simulator = simulator;
    }

    @Override
    public Integer call() throws InputException, ScenarioException, ResultsRefusedException, IOException {
        experiment.check();
        Effort effort = efforts.effort(FEWEST_REPLICATIONS, experiment.threads());
        Measure measure = efforts.measure();
        Requirements.require(
                measure.isCompared(), "--measure = " + measure.fileName(), "Is none that a comparison tells.");
        Contest contest = Contest.read(base, alternatives, settings, experiment.seed());
        ResultsFolder folder = ResultsFolder.at(out());
        print(ComparisonText.heading(contest.plants(), console.ink()));
        Grown<List<double[]>> grown = observed(contest.plants(), effort, measure);
        Comparison comparison = Comparison.of(contest.plants(), grown.observations());
        print(new ComparisonText(comparison, console.ink()).body());
        print(Precision.told(effort, grown, measure));
        write(comparison, folder);
        return ExitCode.OK;
    }

    private Grown<List<double[]>> observed(List<Alternative> plants, Effort effort, Measure measure) {
        CommonNumbers<double[]> numbers = new CommonNumbers<>(Contest.trial(plants, simulator), experiment.threads());
        return new SequentialExperiment<>(
                        (first, count, progress) -> numbers.run(plants.size(), first, count, progress),
                        effort,
                        taken -> Comparison.of(plants, taken).width(measure))
                .run(experiment.progress(console));
    }

    private void write(Comparison comparison, ResultsFolder folder) throws ResultsRefusedException, IOException {
        ComparisonFiles files = new ComparisonFiles(comparison, pictures(comparison));
        folder.replaceWith(files);
        if (isJson) {
            console.out()
                    .write(new ComparisonJson(comparison).text(files.names()).getBytes(StandardCharsets.UTF_8));
            console.out().flush();
        }
        print(List.of("Results in " + out()));
    }

    private Map<String, byte[]> pictures(Comparison comparison) {
        return isWithoutCharts
                ? Map.of()
                : Drawing.picture(DifferenceChart.FILE, new DifferenceChart(comparison)::png, console.err());
    }

    private Path out() {
        return out == null ? Path.of("results", ScenarioArgument.nameOf(base) + "-compared") : out;
    }

    private void print(List<String> lines) {
        if (!experiment.isQuiet() && !isJson) {
            lines.forEach(console.out()::println);
        }
    }
}
