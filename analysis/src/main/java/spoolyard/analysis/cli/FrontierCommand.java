package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spoolyard.analysis.experiment.Effort;
import spoolyard.analysis.report.FrontierChart;
import spoolyard.analysis.report.FrontierFiles;
import spoolyard.analysis.report.FrontierReport;
import spoolyard.analysis.report.PlanFiles;
import spoolyard.analysis.report.PlantClock;
import spoolyard.analysis.schedule.Baselines;
import spoolyard.analysis.schedule.Frontier;
import spoolyard.analysis.schedule.FrontierPoint;
import spoolyard.analysis.schedule.PlanFigures;
import spoolyard.analysis.schedule.PlantBook;
import spoolyard.analysis.schedule.TradeOffBook;
import spoolyard.analysis.schedule.Weights;
import spoolyard.analysis.sequence.Plan;
import spoolyard.analysis.sequence.SequencingProblem;
import spoolyard.analysis.sequence.Stop;
import spoolyard.analysis.sequence.TimedPlan;
import spoolyard.analysis.sequence.TradeOff;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.fault.ScenarioException;

/** Shows what promptness costs in purge. */
@Command(
        name = "frontier",
        mixinStandardHelpOptions = true,
        header = "Show what promptness costs: plans from the least purge to the least lateness.",
        description = {
            "",
            "Searches for all plans of which none is at least as good as another both in purge and in lateness, as table,"
                    + " picture and scenarios that can be run. Ctrl-C ends the search early with the plans so far; a second"
                    + " one ends the program, with those plans written.",
            ""
        },
        parameterListHeading = "Parameters:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard frontier scenarios/orrenvale",
            "  spoolyard frontier scenarios/orrenvale --seconds 60 --out results/frontier",
            "  spoolyard frontier scenarios/orrenvale --points 5 --replications 20",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault."
        })
final class FrontierCommand implements Callable<Integer> {
    private static final int FEWEST_STEPS = 10;

    private final Console console;
    private final Simulator simulator;

    @Mixin
    private ScenarioArgument scenario;

    @Mixin
    private SearchOptions search;

    @Mixin
    private BookOptions around;

    @Option(
            names = "--points",
            paramLabel = "N",
            defaultValue = "8",
            description = "Plans shown and written, at most. Default: ${DEFAULT-VALUE}.")
    private int points;

    @Option(
            names = "--replications",
            paramLabel = "N",
            defaultValue = "0",
            description = "Simulated replications of each plan shown. Default: ${DEFAULT-VALUE}.")
    private int replications;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Write frontier.csv, frontier.json, frontier.png, and of each plan shown plan.csv and"
                    + " plan.yaml (a scenario that runs it) into a folder.")
    private Path out;

    FrontierCommand(Console console, Simulator simulator) {
        this.console = console;
        this.simulator = simulator;
    }

    @Override
    public Integer call() throws InputException, ScenarioException, IOException {
        search.check();
        around.check();
        Requirements.range("--points", points, 2, FrontierReport.MOST);
        Requirements.range("--replications", replications, 0, EffortOptions.MOST_REPLICATIONS);
        if (out != null && Files.exists(out) && !Files.isDirectory(out)) {
            throw new InputException("--out = " + out, "Must be a folder.", "give the name of a folder");
        }
        Scenario read = scenario.read();
        Weights weights = new Weights(
                read.plant().economy().prices(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Weights.LATE_PER_SPOOL_DAY,
                around.reserveH(),
                Weights.First.NEITHER);
        PlantBook book = around.book(read.plant(), weights, scenario);
        try (Interruption ctrlC = Interruption.asks(new Stop())) {
            tell(read, report(book, ctrlC.stop()), ctrlC);
        }
        return ExitCode.OK;
    }

    private FrontierReport report(PlantBook book, Stop stop) {
        SequencingProblem problem = TradeOffBook.of(book);
        List<PlanFigures> others = Baselines.of(book);
        List<FrontierPoint> beside =
                others.stream().map(other -> beside(other, problem)).toList();
        double mostLate =
                beside.stream().mapToDouble(FrontierPoint::lateSpoolDays).max().orElse(Double.POSITIVE_INFINITY);
        List<Plan> starts = others.stream().map(other -> other.timed().plan()).toList();
        int steps = Math.max(FEWEST_STEPS, 2 * points);
        TradeOff tradeOff = new TradeOff(
                problem, search.settings(search.limit(problem.jobs().size()), 0), steps, mostLate, stop);
        SearchLine line = new SearchLine(console);
        List<FrontierPoint> found = tradeOff.solve(starts, line::plans).stream()
                .map(timed -> FrontierPoint.of("", book, timed))
                .toList();
        line.clear();
        return new FrontierReport(new Frontier(found, tradeOff.isExact()), beside, points);
    }

    private static FrontierPoint beside(PlanFigures other, SequencingProblem problem) {
        String name = other.name().endsWith("(today)") ? "today's order" : other.name();
        return FrontierPoint.of(
                name, other.book(), TimedPlan.of(problem, other.timed().plan()));
    }

    private void tell(Scenario read, FrontierReport report, Interruption ctrlC) throws IOException {
        report.lines(console.ink()).forEach(console.out()::println);
        List<PlanFigures> plans =
                report.shown().stream().map(FrontierPoint::plan).toList();
        if (out != null) {
            write(report, plans, new PlantClock(read.info().start()));
        }
        ctrlC.close();
        if (replications > 0) {
            PlanSimulation simulation =
                    new PlanSimulation(plans.get(0).book(), Effort.of(replications), search.seed(), simulator, console);
            report.simulated(console.ink(), simulation.of(plans)).forEach(console.out()::println);
        }
    }

    private void write(FrontierReport report, List<PlanFigures> plans, PlantClock clock) throws IOException {
        FrontierFiles files = new FrontierFiles(report);
        OutputFile.write(out.resolve("frontier.csv"), files.csv());
        OutputFile.write(out.resolve("frontier.json"), files.json(search.seed()));
        byte[] picture = Drawing.bytes(new FrontierChart(report)::png, console.err());
        if (picture.length > 0) {
            OutputFile.write(out.resolve(FrontierChart.FILE), picture);
        }
        List<String> letters = new ArrayList<>();
        for (PlanFigures plan : plans) {
            letters.add(FrontierReport.letter(letters.size()));
            Path folder = out.resolve(letters.get(letters.size() - 1));
            OutputFile.write(folder.resolve("plan.csv"), new PlanFiles(plan, clock).table());
            OutputFile.write(folder.resolve("plan.yaml"), PlanFiles.variation(folder, scenario.path(), "plan.csv"));
        }
        console.out()
                .println("Frontier in " + out.resolve("frontier.csv") + "; run plan A with: spoolyard run "
                        + NewCommand.typed(out.resolve("A").resolve("plan.yaml")));
    }
}
