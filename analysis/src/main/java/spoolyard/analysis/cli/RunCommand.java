package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spoolyard.analysis.experiment.Effort;
import spoolyard.analysis.experiment.Grown;
import spoolyard.analysis.experiment.Replicator;
import spoolyard.analysis.experiment.SequentialExperiment;
import spoolyard.analysis.experiment.Source;
import spoolyard.analysis.report.Measure;
import spoolyard.analysis.report.PlantClock;
import spoolyard.analysis.report.Provenance;
import spoolyard.analysis.report.ReplicationSummary;
import spoolyard.analysis.report.ReportHeading;
import spoolyard.analysis.report.ResultsFiles;
import spoolyard.analysis.report.ResultsFolder;
import spoolyard.analysis.report.ResultsRefusedException;
import spoolyard.analysis.report.RunReport;
import spoolyard.analysis.report.Setting;
import spoolyard.analysis.report.Summariser;
import spoolyard.analysis.report.SummaryJson;
import spoolyard.analysis.report.TextReport;
import spoolyard.core.record.EventLog;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.fault.ScenarioException;
import spoolyard.scenarios.fault.Warning;

/** Simulates a scenario and reports. */
@Command(
        name = "run",
        mixinStandardHelpOptions = true,
        header = "Simulate a scenario and report spools per shift, scrap, OEE, orders, crew and bottleneck.",
        description = {
            "",
            "Runs independent replications on all cores, prints one screen and writes tables, pictures and a"
                    + " summary into a results folder. The same scenario, seed and version give the same results.",
            ""
        },
        parameterListHeading = "Parameters:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard run scenarios/orrenvale",
            "  spoolyard run scenarios/orrenvale --replications 100 --seed 7 --out results/long",
            "  spoolyard run scenarios/orrenvale --set /lines/L3/accumulator=\"80 m\" --out results/l3-80m",
            "  spoolyard run scenarios/orrenvale --json | jq .good_spools_per_shift.all",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault."
        })
final class RunCommand implements Callable<Integer> {
    private final Console console;
    private final Simulator simulator;

    @Mixin
    private ScenarioArgument scenario;

    @Mixin
    private EffortOptions efforts;

    @Mixin
    private SimulationOptions experiment;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Results folder; an earlier run's is replaced. Default: results/ and the scenario's name.")
    private Path out;

    @Option(
            names = "--log",
            paramLabel = "FILE",
            description = "Write every event of the first replication to a CSV file.")
    private Path log;

    @Option(names = "--json", description = "Print summary.json in place of the report.")
    private boolean isJson;

    @Option(names = "--no-charts", description = "Draw no pictures.")
    private boolean isWithoutCharts;

    RunCommand(Console console, Simulator simulator) {
        this.console = console;
        this.simulator = simulator;
    }

    @Override
    public Integer call() throws InputException, ScenarioException, ResultsRefusedException, IOException {
        experiment.check();
        Effort effort = efforts.effort(1, experiment.threads());
        Measure measure = efforts.measure();
        Scenario read = scenario.read();
        ResultsFolder folder = ResultsFolder.at(out());
        Setting setting = new Setting(read.plant(), new PlantClock(read.info().start()), labourFlags(read.warnings()));
        Provenance provenance = scenario.provenance(read, experiment.seed());
        try (RunLog events = RunLog.begin(log, setting.clock())) {
            warn(read.warnings().size());
            if (effort.isFixed()) {
                print(new ReportHeading(provenance, setting, effort.most()).lines(console.ink()));
            }
            Grown<Measured> grown = simulated(setting, events.log(), effort, measure);
            List<ReplicationSummary> summaries =
                    grown.observations().stream().map(Measured::summary).toList();
            if (!effort.isFixed()) {
                print(new ReportHeading(provenance, setting, summaries.size()).lines(console.ink()));
            }
            RunReport report = RunReport.of(provenance, setting, summaries);
            print(new TextReport(report, console.ink()).body());
            print(Precision.told(effort, grown, measure));
            write(report, folder);
            events.complete();
        }
        return ExitCode.OK;
    }

    private Grown<Measured> simulated(Setting setting, EventLog firstLog, Effort effort, Measure measure) {
        Replicator replicator = simulator.of(setting.plant(), experiment.seed(), firstLog);
        Summariser summariser = new Summariser(setting);
        Source<Measured> source = Source.of(
                replication -> Measured.of(setting, summariser, replicator.replicate(replication)),
                experiment.threads());
        return new SequentialExperiment<>(source, effort, taken -> Measured.width(taken, measure))
                .run(experiment.progress(console));
    }

    private void write(RunReport report, ResultsFolder folder) throws ResultsRefusedException, IOException {
        Map<String, byte[]> pictures = isWithoutCharts ? Map.of() : Drawing.pictures(report, console.err());
        ResultsFiles files = new ResultsFiles(report, pictures);
        folder.replaceWith(files);
        if (isJson) {
            printJson(new SummaryJson(report).text(files.names()));
        }
        print(List.of("Results in " + out()));
    }

    private void printJson(String json) throws IOException {
        console.out().write(json.getBytes(StandardCharsets.UTF_8));
        if (console.out().checkError()) {
            throw new IOException("the summary cannot be written to standard output");
        }
    }

    private Path out() {
        return out == null ? Path.of("results", scenario.name()) : out;
    }

    private void print(List<String> lines) {
        if (!experiment.isQuiet() && !isJson) {
            lines.forEach(console.out()::println);
        }
    }

    /**
     * What labour law may not allow.
     *
     * @param warnings of a scenario
     * @return a sentence or two each
     */
    static List<String> labourFlags(List<Warning> warnings) {
        return warnings.stream()
                .filter(warning -> warning.kind() == Warning.Kind.LABOUR_LAW)
                .map(Warning::message)
                .toList();
    }

    private void warn(int warnings) {
        if (warnings > 0 && !experiment.isQuiet()) {
            console.err()
                    .println(warnings + (warnings == 1 ? " warning" : " warnings")
                            + " about this scenario: spoolyard check " + NewCommand.typed(scenario.path()));
        }
    }
}
