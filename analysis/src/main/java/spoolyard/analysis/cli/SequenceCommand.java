package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spoolyard.analysis.experiment.Experiment;
import spoolyard.analysis.experiment.Progress;
import spoolyard.analysis.report.PlanTrial;
import spoolyard.analysis.report.PlantClock;
import spoolyard.analysis.report.SequenceReport;
import spoolyard.analysis.schedule.Baselines;
import spoolyard.analysis.schedule.PlanFigures;
import spoolyard.analysis.schedule.PlantBook;
import spoolyard.analysis.schedule.Weights;
import spoolyard.analysis.sequence.InfeasibleBookException;
import spoolyard.analysis.sequence.SearchLimit;
import spoolyard.analysis.sequence.SearchSettings;
import spoolyard.analysis.sequence.Sequencer;
import spoolyard.analysis.sequence.Solution;
import spoolyard.analysis.sequence.Stop;
import spoolyard.core.plant.DispatchRule;
import spoolyard.core.plant.OrderBook;
import spoolyard.core.plant.Plant;
import spoolyard.core.record.EventLog;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.fault.ScenarioException;

/** Assigns all orders to lines and puts them in order. */
@Command(
        name = "sequence",
        mixinStandardHelpOptions = true,
        header = "Put the orders in the sequence that costs least in purge, line time and lateness.",
        description = {
            "",
            "Searches for a plan of all lines together, says how far it can be from the best at most, simulates it beside"
                    + " today's order and writes it as a table and as a scenario that can be run. Ctrl-C ends the search"
                    + " early with the best plan so far.",
            ""
        },
        parameterListHeading = "Parameters:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard sequence scenarios/orrenvale",
            "  spoolyard sequence scenarios/orrenvale --iterations 2000000 --seed 7 --out results/plan",
            "  spoolyard sequence scenarios/orrenvale --late 2 --freeze L3=SO-4113,SO-4119",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault."
        })
final class SequenceCommand implements Callable<Integer> {
    private static final double LONGEST_S = 86_400;
    private static final double MOST_ITERATIONS = 1e12;
    private static final double MOST_MONEY = 1e6;
    private static final int MOST_REPLICATIONS = 10_000;
    private static final double MOST_RESERVE_H = 10_000;
    private static final int MOST_CHAINS = 256;

    private final Console console;
    private final Simulator simulator;

    @Mixin
    private ScenarioArgument scenario;

    @Option(
            names = "--seconds",
            paramLabel = "S",
            description = "Time to search. Default: 20, unless --iterations is given.")
    private Double seconds;

    @Option(
            names = "--iterations",
            paramLabel = "N",
            description = "Changes tried by each chain; with the same seed and number the plan is the same every time.")
    private Double iterations;

    @Option(
            names = "--seed",
            paramLabel = "S",
            defaultValue = "1",
            description = "Seed of search and simulation, any whole number. Default: ${DEFAULT-VALUE}.")
    private long seed;

    @Option(
            names = "--chains",
            paramLabel = "N",
            defaultValue = "2",
            description = "Independent searches, side by side. Default: ${DEFAULT-VALUE}.")
    private int chains;

    @Option(
            names = "--purge-per-kg",
            paramLabel = "MONEY",
            description = "A kilogram purged. Default: by the plant's prices.")
    private Double purgePerKg;

    @Option(
            names = "--line-per-hour",
            paramLabel = "MONEY",
            description = "An hour of changeover. Default: the contribution lost.")
    private Double linePerH;

    @Option(
            names = "--late",
            paramLabel = "MONEY",
            defaultValue = "0.5",
            description = "A spool one day late, times the weight of its order. Default: ${DEFAULT-VALUE}.")
    private double late;

    @Option(
            names = "--reserve",
            paramLabel = "HOURS",
            defaultValue = "24",
            description = "Time kept between made and due, for stops, sealing and packing. Default: ${DEFAULT-VALUE}.")
    private double reserveH;

    @Option(
            names = "--first",
            paramLabel = "WHAT",
            defaultValue = "neither",
            description = "late or purge: what comes before all else. Default: ${DEFAULT-VALUE}, money decides.")
    private Weights.First first;

    @Option(
            names = "--freeze",
            paramLabel = "LINE=ORDER,...",
            description = "Orders that a line makes first, as they stand; may be given again for another line.")
    private List<String> freezes = new ArrayList<>();

    @Option(
            names = "--replications",
            paramLabel = "N",
            defaultValue = "20",
            description =
                    "Simulated replications of the plan and of today's order; 0 for none. Default: ${DEFAULT-VALUE}.")
    private int replications;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Write plan.csv, plan.png and plan.yaml, a scenario with this sequence, into a folder.")
    private Path out;

    SequenceCommand(Console console, Simulator simulator) {
        this.console = console;
        this.simulator = simulator;
    }

    @Override
    public Integer call() throws InputException, ScenarioException, IOException {
        checkNumbers();
        Scenario read = scenario.read();
        if (out != null) {
            new PlanFolder(out, read, scenario.path()).check();
        }
        PlantBook book = book(read.plant());
        try (Interruption ctrlC = Interruption.asks(new Stop())) {
            tell(read, book, ctrlC.stop());
        }
        return ExitCode.OK;
    }

    private void tell(Scenario read, PlantBook book, Stop stop) throws IOException {
        List<PlanFigures> others = Baselines.of(book);
        Solution solution = search(book, others, stop);
        PlanFigures plan = PlanFigures.of("this plan", book, solution.plan());
        SequenceReport report = new SequenceReport(
                plan, others, solution, new PlantClock(read.info().start()));
        report.perLine(console.ink()).forEach(console.out()::println);
        report.summary(console.ink()).forEach(console.out()::println);
        simulate(plan);
        if (out != null) {
            new PlanFolder(out, read, scenario.path()).write(plan, console);
        }
    }

    private void checkNumbers() throws InputException {
        within("--seconds", seconds == null ? 1 : seconds, 0.001, LONGEST_S);
        within("--iterations", iterations == null ? 1 : iterations, 1, MOST_ITERATIONS);
        within("--chains", chains, 1, MOST_CHAINS);
        within("--purge-per-kg", purgePerKg == null ? 0 : purgePerKg, 0, MOST_MONEY);
        within("--line-per-hour", linePerH == null ? 0 : linePerH, 0, MOST_MONEY);
        within("--late", late, 0, MOST_MONEY);
        within("--reserve", reserveH, 0, MOST_RESERVE_H);
        within("--replications", replications, 0, MOST_REPLICATIONS);
    }

    private static void within(String option, double value, double least, double most) throws InputException {
        if (!(value >= least && value <= most)) {
            throw new InputException(
                    option + " = " + value, "Must be from " + least + " to " + most + ".", "give such a number");
        }
    }

    private PlantBook book(Plant plant) throws InputException {
        if (plant.book().orders().isEmpty()) {
            throw new InputException(
                    scenario.path().toString(),
                    "Has no orders. Must have at least one.",
                    "add orders to its orders file");
        }
        Weights weights =
                new Weights(plant.economy().prices(), optional(purgePerKg), optional(linePerH), late, reserveH, first);
        try {
            return PlantBook.of(plant, weights, frozen(plant));
        } catch (InfeasibleBookException conflict) {
            throw new InputException(
                    "No plan is possible", conflict.getMessage(), "change the order, the line or what is frozen");
        }
    }

    private static OptionalDouble optional(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private Map<String, List<String>> frozen(Plant plant) throws InputException {
        Map<String, List<String>> frozen = new LinkedHashMap<>();
        for (String freeze : freezes) {
            String[] parts = freeze.split("=", 2);
            boolean isKnown =
                    plant.lines().stream().anyMatch(line -> line.name().equals(parts[0]));
            if (parts.length < 2 || !isKnown) {
                throw new InputException(
                        "--freeze = " + freeze,
                        "Must be a line of this plant, an equals sign and orders.",
                        "write for example --freeze L3=SO-1,SO-2");
            }
            frozen.computeIfAbsent(parts[0], line -> new ArrayList<>()).addAll(List.of(parts[1].split(",")));
        }
        return frozen;
    }

    private Solution search(PlantBook book, List<PlanFigures> others, Stop stop) {
        boolean isBounded = iterations != null;
        double usual = isBounded ? Double.POSITIVE_INFINITY : 20;
        SearchLimit limit =
                new SearchLimit(isBounded ? iterations : Double.POSITIVE_INFINITY, seconds == null ? usual : seconds);
        int threads = Math.min(chains, Runtime.getRuntime().availableProcessors());
        SearchSettings settings = new SearchSettings(limit, seed, chains, threads);
        SearchLine line = new SearchLine(console);
        Solution solution = new Sequencer(book.problem(), settings, stop, line::show)
                .solve(others.stream().map(other -> other.timed().plan()).toList());
        line.clear();
        return solution;
    }

    private void simulate(PlanFigures plan) {
        if (replications == 0) {
            return;
        }
        Plant now = plan.book().plant();
        OrderBook given = new OrderBook(now.book().orders(), DispatchRule.GIVEN_SEQUENCE, plan.sequence());
        Plant planned = now.with(given);
        List<String> ids = now.book().orders().stream().map(order -> order.id()).toList();
        new PlanTrial(outcomes(planned), outcomes(now), ids)
                .lines(console.ink())
                .forEach(console.out()::println);
    }

    private List<PlanTrial.Outcome> outcomes(Plant plant) {
        Progress progress = ProgressBar.on(console);
        int threads = Runtime.getRuntime().availableProcessors();
        return new Experiment(simulator.of(plant, seed, EventLog.SILENT), replications, threads)
                .run(result -> PlanTrial.Outcome.of(plant, result), progress);
    }
}
