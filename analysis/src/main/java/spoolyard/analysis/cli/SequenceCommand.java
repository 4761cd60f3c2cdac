package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spoolyard.analysis.report.LearnedReport;
import spoolyard.analysis.report.OrdersAtRisk;
import spoolyard.analysis.report.PlanTrial;
import spoolyard.analysis.report.PlantClock;
import spoolyard.analysis.report.RobustReport;
import spoolyard.analysis.report.SequenceReport;
import spoolyard.analysis.schedule.Candidate;
import spoolyard.analysis.schedule.PlanFigures;
import spoolyard.analysis.schedule.PlantBook;
import spoolyard.analysis.schedule.Weights;
import spoolyard.analysis.sequence.Solution;
import spoolyard.analysis.sequence.Stop;
import spoolyard.core.plant.Plant;
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
                    + " early with the best plan so far; a second one ends the program, with that plan written.",
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
            "  spoolyard sequence scenarios/orrenvale --robust 5",
            "  spoolyard sequence scenarios/orrenvale --from results/plan/plan.csv --rush SO-4130",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault."
        })
final class SequenceCommand implements Callable<Integer> {
    private static final double MOST_MONEY = 1e6;

    private final Console console;
    private final Simulator simulator;

    @Mixin
    private ScenarioArgument scenario;

    @Mixin
    private WhatIfOptions whatIf;

    @Mixin
    private SearchOptions search;

    @Mixin
    private BookOptions around;

    @Mixin
    private TrialOptions trials;

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
            names = "--first",
            paramLabel = "WHAT",
            defaultValue = "neither",
            description = "late or purge: what comes before all else. Default: ${DEFAULT-VALUE}, money decides.")
    private Weights.First first;

    @Option(
            names = "--learn",
            paramLabel = "ROUNDS",
            defaultValue = "2",
            description = "How often the search learns from simulated runs what orders really take and when material is"
                    + " there; 0 for never. Default: ${DEFAULT-VALUE}.")
    private int learn;

    @Option(
            names = "--robust",
            paramLabel = "N",
            defaultValue = "0",
            description = "Simulate the cheapest N plans that are clearly different, and take the one that then costs"
                    + " least. Searches three times as long. 5 is a good number.")
    private int robust;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "Write plan.csv, plan.yaml (a scenario that runs it), plan.png, orders_at_risk.csv and pages for"
                            + " the floor into a folder.")
    private Path out;

    SequenceCommand(Console console, Simulator simulator) {
        this.console = console;
        this.simulator = simulator;
    }

    @Override
    public Integer call() throws InputException, ScenarioException, IOException {
        checkNumbers();
        Scenario read = scenario.readWith(whatIf.settings());
        if (out != null) {
            folder(read).check();
        }
        PlantBook book = around.book(read.plant(), weights(read.plant()), scenario);
        if (whatIf.isAsked()) {
            change(book, read);
            return ExitCode.OK;
        }
        try (Interruption ctrlC = Interruption.asks(new Stop())) {
            tell(book, read, ctrlC);
        }
        return ExitCode.OK;
    }

    private Weights weights(Plant plant) {
        return new Weights(
                plant.economy().prices(), optional(purgePerKg), optional(linePerH), late, around.reserveH(), first);
    }

    private void checkNumbers() throws InputException {
        search.check();
        around.check();
        Requirements.within("--purge-per-kg", purgePerKg == null ? 0 : purgePerKg, 0, MOST_MONEY);
        Requirements.within("--line-per-hour", linePerH == null ? 0 : linePerH, 0, MOST_MONEY);
        Requirements.within("--late", late, 0, MOST_MONEY);
        Requirements.range("--learn", learn, 0, LearningSearch.MOST_ROUNDS);
        trials.check(robust == 0 ? 0 : 2);
        if (robust != 0) {
            Requirements.range("--robust", robust, 2, RobustReport.MOST);
        }
        String searching = robust != 0 ? "--robust = " + robust : search.limit();
        if (whatIf.isAsked() && !searching.isEmpty()) {
            throw new InputException(
                    searching,
                    "Must not stand beside --from, --move and --rush, which search for nothing.",
                    "leave it out");
        }
    }

    private static OptionalDouble optional(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private void tell(PlantBook plain, Scenario read, Interruption ctrlC) throws InputException, IOException {
        PlantClock clock = new PlantClock(read.info().start());
        LearningSearch.Found learned = new LearningSearch(console, simulator, search, learn).run(plain, ctrlC.stop());
        PlantBook book = learned.book();
        Solution found = learned.solution();
        PlanSimulation simulation = new PlanSimulation(book, trials.effort(search), search.seed(), simulator, console);
        PlanFigures cheapest = PlanFigures.of("this plan", book, found.plan());
        PlanFigures plan = robust == 0 ? cheapest : robust(cheapest, read, simulation, ctrlC);
        Solution solution = plan == cheapest ? found : new Solution(plan.timed(), found.bound(), false);
        SequenceReport report = new SequenceReport(plan, learned.baselines(), solution, clock);
        print(report.perLine(console.ink()));
        print(report.summary(console.ink()));
        print(new LearnedReport(book.experience(), book.plant(), clock).lines());
        print(learned.learnedFrom().map(told -> List.of(told, "")).orElse(List.of()));
        keep(read, plan);
        ctrlC.close();
        if (ctrlC.stop().isAsked() && trials.isWanted()) {
            console.err().println("The search was ended early. Simulating its plan; Ctrl-C ends the program.");
        }
        simulate(read, plan, simulation, simulation::besideToday);
    }

    private void change(PlantBook book, Scenario read) throws InputException, IOException {
        WhatIf change = WhatIf.of(book, whatIf);
        change.tell(new PlantClock(read.info().start()), console);
        PlanSimulation simulation = new PlanSimulation(book, trials.effort(search), search.seed(), simulator, console);
        keep(read, change.after());
        simulate(read, change.after(), simulation, (plan, first) -> simulation.besideBefore(plan));
    }

    /** The cheapest is written before the candidates are simulated: that can take long, and may be ended. */
    private PlanFigures robust(PlanFigures cheapest, Scenario read, PlanSimulation simulation, Interruption ctrlC)
            throws IOException {
        List<Candidate> candidates =
                new RobustSearch(cheapest.book(), search, ctrlC.stop(), console).candidates(cheapest, robust);
        if (candidates.size() == 1) {
            print(List.of("Robust: no other plan found that is clearly different.", ""));
            return cheapest;
        }
        if (out != null) {
            folder(read).write(cheapest, console);
        }
        ctrlC.close();
        RobustReport report = new RobustReport(
                candidates,
                simulation.of(candidates.stream().map(Candidate::plan).toList()));
        print(report.lines(console.ink()));
        return candidates.get(report.best()).plan();
    }

    private PlanFolder folder(Scenario read) {
        return new PlanFolder(out, read, scenario.path());
    }

    /** Writes a plan before it is simulated. */
    private void keep(Scenario read, PlanFigures plan) throws IOException {
        if (out != null) {
            folder(read).write(plan, console);
            folder(read).tell(console);
        }
    }

    /** A plan that was chosen by simulation is shown in replications of its own: those that chose it flatter it. */
    private void simulate(Scenario read, PlanFigures plan, PlanSimulation simulation, Trying trying)
            throws IOException {
        if (!trials.isWanted()) {
            return;
        }
        PlanTrial trial = trying.of(plan, robust == 0 ? 0 : trials.most());
        OrdersAtRisk risks = simulation.atRisk(trial, new PlantClock(read.info().start()));
        print(trials.told(trial.contenders().get(0).outcomes().size()));
        print(trial.lines(console.ink()));
        print(risks.lines(console.ink()));
        if (out != null) {
            folder(read).add(risks);
        }
    }

    /** How a plan is tried. */
    @FunctionalInterface
    private interface Trying {
        PlanTrial of(PlanFigures plan, int firstReplication);
    }

    private void print(List<String> lines) {
        lines.forEach(console.out()::println);
    }
}
