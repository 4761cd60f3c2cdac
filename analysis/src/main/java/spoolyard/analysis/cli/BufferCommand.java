package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spoolyard.analysis.buffer.Capacities;
import spoolyard.analysis.buffer.CapacityCurve;
import spoolyard.analysis.buffer.CapacitySearch;
import spoolyard.analysis.buffer.Finding;
import spoolyard.analysis.buffer.Limits;
import spoolyard.analysis.buffer.LossTarget;
import spoolyard.analysis.buffer.RareGain;
import spoolyard.analysis.buffer.RareView;
import spoolyard.analysis.buffer.SearchPlan;
import spoolyard.analysis.buffer.SeenLosses;
import spoolyard.analysis.report.BufferChart;
import spoolyard.analysis.report.BufferFiles;
import spoolyard.analysis.report.BufferReport;
import spoolyard.analysis.report.BufferText;
import spoolyard.analysis.report.Provenance;
import spoolyard.analysis.report.ResultsFolder;
import spoolyard.analysis.report.ResultsRefusedException;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.fault.ScenarioException;

/** Sizes the accumulator of a line. */
@Command(
        name = "buffer",
        mixinStandardHelpOptions = true,
        header = "Find the smallest accumulator of a line that meets a target, and what each size loses.",
        description = {
            "",
            "Runs the scenario with accumulators of many sizes and the same luck: overflows, waste, lost minutes and"
                    + " money over the capacity, and the smallest capacity that is sure to meet the target."
                    + " docs/buffer.md says how sure and how it is found.",
            ""
        },
        parameterListHeading = "Parameters:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard buffer scenarios/orrenvale --line L3 --target \"overflow <= 2 %% of swaps\"",
            "  spoolyard buffer scenarios/orrenvale --line L8 --target \"waste <= 5 kg per shift\" --to \"300 m\"",
            "  spoolyard buffer scenarios/orrenvale --line L4 --metre-price 150 --years 5",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault, or no capacity",
            "meets the target."
        })
final class BufferCommand implements Callable<Integer> {
    private static final int FIRST_LOOK = 10;
    private static final int MOST_REPLICATIONS = 100_000;
    private static final int MOST_POINTS = 13;
    private static final int TIMED_PAIRS = 3;

    private final Console console;
    private final Simulator simulator;

    @Mixin
    private ScenarioArgument scenario;

    @Mixin
    private CapacityOptions capacities;

    @Mixin
    private PayBackOptions payBack;

    @Option(names = "--line", paramLabel = "LINE", required = true, description = "The line whose accumulator it is.")
    private String lineName;

    @Option(
            names = "--target",
            paramLabel = "TARGET",
            description = {
                "What is to be met, the mean over many runs:",
                "\"overflow <= 0.5 %% of swaps\", \"waste <= 2 kg per shift\", \"lost <= 5 min per shift\" or"
                        + " \"cost <= 20 per shift\". Without it only the curve is shown."
            })
    private String target;

    @Option(
            names = "--rare",
            description =
                    "Expect overflows rather than count them: each swap by the chance that its work outlasts the room"
                            + " left. By itself for targets below 0.01 %% of swaps.")
    private boolean isRare;

    @Option(
            names = "--confidence",
            paramLabel = "PERCENT",
            defaultValue = "95",
            description = "Confidence in the answer, %%. Default: ${DEFAULT-VALUE}.")
    private double confidencePct;

    @Mixin
    private ExperimentOptions experiment;

    @Option(
            names = "--most",
            paramLabel = "N",
            defaultValue = "160",
            description = "Replications at most at a capacity that the search tests. Default: ${DEFAULT-VALUE}.")
    private int most;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Results folder; an earlier one is replaced. Default: results/, the scenario's name, -buffer-"
                    + " and the line.")
    private Path out;

    @Option(names = "--no-charts", description = "Draw no picture.")
    private boolean isWithoutCharts;

    BufferCommand(Console console, Simulator simulator) {
        this.console = console;
        this.simulator = simulator;
    }

    @Override
    public Integer call() throws InputException, ScenarioException, ResultsRefusedException, IOException {
        Scenario read = checked();
        Line line = Requirements.line(read.plant(), lineName);
        Optional<LossTarget> wanted = wanted(read.plant());
        SearchPlan plan = new SearchPlan(capacities.of(line), confidencePct / 100, FIRST_LOOK, most);
        ResultsFolder folder = ResultsFolder.at(out());
        BufferReport report = report(read, line, plan, wanted);
        print(new BufferText(report, console.ink()).lines());
        failIfNoneMeets(report);
        folder.replaceWith(new BufferFiles(report, pictures(report)));
        print(List.of("Results in " + out()));
        return ExitCode.OK;
    }

    private Scenario checked() throws InputException, IOException {
        OptionFaults faults = new OptionFaults();
        faults.check(() -> experiment.check(2));
        faults.check(() -> Requirements.range("--most", most, FIRST_LOOK, MOST_REPLICATIONS));
        faults.check(() -> Requirements.confidence(confidencePct));
        if (target != null) {
            faults.check(() -> Requirements.target(target));
        }
        capacities.check(faults);
        faults.check(() -> ResultsFolder.at(out()));
        Optional<Scenario> read = faults.read(scenario::read);
        if (read.isPresent()) {
            Plant plant = read.get().plant();
            faults.check(() -> capacities.of(Requirements.line(plant, lineName)));
            faults.check(() -> wanted(plant));
            faults.check(() -> payBack.check(plant));
        }
        faults.throwIfAny();
        return read.orElseThrow();
    }

    private Optional<LossTarget> wanted(Plant plant) throws InputException {
        return target == null ? Optional.empty() : Optional.of(Requirements.target(target, plant));
    }

    private BufferReport report(Scenario read, Line line, SearchPlan plan, Optional<LossTarget> wanted)
            throws ScenarioException, InputException {
        Plant plant = read.plant();
        TreeSet<Double> shown = new TreeSet<>(Capacities.thinned(plan.capacitiesM(), MOST_POINTS));
        shown.add(line.accumulator().capacityM());
        LossObserver observer =
                new LossObserver(simulator, experiment.seed(), plant.lines().indexOf(line), isRare(wanted));
        BufferTrial trial = new BufferTrial(observer, experiment.threads(), experiment.progress(console));
        trial.read(scenario, lineName, plan.capacitiesM());
        trial.read(scenario, lineName, List.copyOf(shown));
        SeenLosses losses = new SeenLosses(trial);
        Optional<Finding> finding = wanted.map(target -> new CapacitySearch(plan, target, losses).run());
        finding.ifPresent(found -> found.meetsM().ifPresent(shown::add));
        CapacityCurve curve = CapacityCurve.of(shown, losses, experiment.replications());
        Provenance provenance = scenario.provenance(read, experiment.seed());
        return new BufferReport(
                provenance,
                plant,
                line,
                curve,
                finding,
                experiment.replications(),
                payBack.worth(plant, line, shown, losses, experiment.replications()),
                observer.isRare() ? Optional.of(gained(observer, plant, shown, losses)) : Optional.empty());
    }

    private boolean isRare(Optional<LossTarget> wanted) {
        return isRare || wanted.filter(LossTarget::isRare).isPresent();
    }

    private RareView gained(LossObserver observer, Plant plant, Set<Double> capacitiesM, SeenLosses losses) {
        Map<Double, RareGain> gains = new TreeMap<>();
        for (double capacityM : capacitiesM) {
            gains.put(capacityM, RareGain.of(losses.at(capacityM, experiment.replications())));
        }
        return new RareView(gains, observer.timeRatio(plant, TIMED_PAIRS));
    }

    private void failIfNoneMeets(BufferReport report) throws InputException {
        boolean isHopeless = report.finding()
                .filter(found -> found.answer() == Finding.Answer.NONE_MEETS)
                .isPresent();
        if (isHopeless) {
            List<CapacityCurve.Point> points = report.curve().points();
            throw new InputException(
                    "--target = " + target,
                    "No capacity asked about meets it. " + Limits.of(points.get(points.size() - 1), report.line()),
                    "mend what limits it, ask about more with --to, or for less");
        }
    }

    private Map<String, byte[]> pictures(BufferReport report) {
        return isWithoutCharts
                ? Map.of()
                : Drawing.picture(BufferChart.FILE, new BufferChart(report)::png, console.err());
    }

    private void print(List<String> lines) {
        if (!experiment.isQuiet()) {
            lines.forEach(console.out()::println);
        }
    }

    private Path out() {
        return out == null ? Path.of("results", scenario.name() + "-buffer-" + lineName) : out;
    }
}
