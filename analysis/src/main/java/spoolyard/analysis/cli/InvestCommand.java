package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spoolyard.analysis.buffer.LossTarget;
import spoolyard.analysis.buffer.PayBack;
import spoolyard.analysis.invest.Counting;
import spoolyard.analysis.invest.InvestFinding;
import spoolyard.analysis.invest.InvestPlan;
import spoolyard.analysis.invest.InvestStudy;
import spoolyard.analysis.invest.MixPrices;
import spoolyard.analysis.report.InvestAnswer;
import spoolyard.analysis.report.InvestChart;
import spoolyard.analysis.report.InvestFiles;
import spoolyard.analysis.report.InvestReport;
import spoolyard.analysis.report.InvestText;
import spoolyard.analysis.report.ResultsFolder;
import spoolyard.analysis.report.ResultsRefusedException;
import spoolyard.core.plant.Plant;
import spoolyard.scenarios.MixScenarios;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.choice.Choices;
import spoolyard.scenarios.choice.ChoicesFile;
import spoolyard.scenarios.fault.ScenarioException;

/** Weighs what may be bought against what full accumulators lose. */
@Command(
        name = "invest",
        mixinStandardHelpOptions = true,
        header = "Find the cheapest mix of metres, winders, people and rules that meets a target, and its pay-back.",
        description = {
            "",
            "Runs every mix of the options of a file of choices with the same luck: what each costs a year, what full"
                    + " accumulators lose less, which mixes meet the target and which is worth most, with stated"
                    + " confidence. docs/invest.md says how sure and how the file is written.",
            ""
        },
        parameterListHeading = "Parameters:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard invest scenarios/orrenvale --choices scenarios/orrenvale/choices.yaml --line L3 \\",
            "      --target \"overflow <= 2 %% of swaps\"",
            "  spoolyard invest scenarios/orrenvale --choices scenarios/orrenvale/choices.yaml \\",
            "      --target \"cost <= 300 per shift\" --within 2000",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault, or no",
            "mix meets the target."
        })
final class InvestCommand implements Callable<Integer> {
    private static final int MOST_MIXES = 256;
    private static final int FIRST_LOOK = 10;
    private static final int MOST_REPLICATIONS = 100_000;

    private final Console console;
    private final Simulator simulator;

    @Mixin
    private ScenarioArgument scenario;

    @Option(
            names = "--choices",
            paramLabel = "FILE",
            required = true,
            description = "YAML file of the choices, their options and prices.")
    private Path file;

    @Option(
            names = "--target",
            paramLabel = "TARGET",
            description = {
                "What is to be met, the mean over many runs:",
                "\"overflow <= 0.5 %% of swaps\", \"waste <= 2 kg per shift\", \"lost <= 5 min per shift\" or"
                        + " \"cost <= 20 per shift\". Without it only the worth is told."
            })
    private String target;

    @Option(
            names = "--line",
            paramLabel = "LINE",
            description = "The line that is held against the target. Default: all lines together.")
    private String lineName;

    @Option(
            names = "--rare",
            description =
                    "Expect overflows rather than count them, as buffer does. By itself for targets below 0.01 %% of swaps.")
    private boolean isRare;

    @Option(
            names = "--within",
            paramLabel = "MONEY",
            description =
                    "Money a year that the mix told may be worth less than the best. Default: a twentieth of what sets"
                            + " mixes apart.")
    private Double within;

    @Option(
            names = "--count",
            paramLabel = "LINES",
            defaultValue = "usual",
            description = "Whose losses count in money. usual: all lines where an option changes people or their work,"
                    + " else the lines that it changes; changed: only these, which is sharp and leaves out what freed"
                    + " people bring elsewhere; all. Default: ${DEFAULT-VALUE}.")
    private Counting.Rule rule;

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
            defaultValue = "320",
            description = "Replications of a mix after which it stays open. Default: ${DEFAULT-VALUE}.")
    private int most;

    @Option(
            names = "--runs",
            paramLabel = "N",
            defaultValue = "1200",
            description = "Replications of all mixes together beyond which no look begins, but for the fewest that give"
                    + " an answer. Half of them may go into the target. Default: ${DEFAULT-VALUE}.")
    private int runs;

    @Option(
            names = "--budget",
            paramLabel = "TIME",
            description =
                    "Begin no more replications after so long, such as 60s, but for the fewest that give an answer.")
    private String budget;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "Results folder; an earlier one is replaced. Default: results/, the scenario's name and -invest.")
    private Path out;

    @Option(names = "--no-charts", description = "Draw no picture.")
    private boolean isWithoutCharts;

    InvestCommand(Console console, Simulator simulator) {
        this.console = console;
        this.simulator = simulator;
    }

    @Override
    public Integer call() throws InputException, ScenarioException, ResultsRefusedException, IOException {
        Asked asked = checked();
        ResultsFolder folder = ResultsFolder.at(out());
        print(heading(asked));
        MixPrices prices = asked.prices();
        Plant now = prices.plants().get(0);
        MixTrial trial = new MixTrial(simulator, experiment, lines(now), asked.isRare());
        InvestFinding finding = new InvestStudy(
                        plan(),
                        prices.runsPerYear(),
                        Counting.of(rule, prices.mixes(), now),
                        trial.numbers(prices.plants()),
                        experiment.progress(console),
                        mayGoOn())
                .run(asked.wanted(), prices, prices.alone());
        InvestReport report = report(asked, finding);
        failIfNoneMeets(report);
        print(new InvestText(report, console.ink()).lines());
        folder.replaceWith(new InvestFiles(report, pictures(report)));
        print(List.of("Results in " + out()));
        return ExitCode.OK;
    }

    /** What was asked for, when nothing is wrong with it. */
    private record Asked(
            Choices choices, List<Scenario> scenarios, MixPrices prices, Optional<LossTarget> wanted, boolean isRare) {}

    private Asked checked() throws InputException, ScenarioException, IOException {
        OptionFaults faults = new OptionFaults();
        faults.check(() -> experiment.check(2));
        faults.check(() -> Requirements.range("--most", most, FIRST_LOOK, MOST_REPLICATIONS));
        faults.check(() -> Requirements.range("--runs", runs, 1, EffortOptions.MOST_REPLICATIONS));
        faults.check(() -> Requirements.confidence(confidencePct));
        faults.check(() -> Requirements.require(
                within == null || within > 0 && within < Double.POSITIVE_INFINITY,
                "--within = " + within,
                "Must be above 0.",
                "give the money a year that does not matter, or leave it out"));
        faults.check(() -> EffortOptions.time(budget));
        if (target != null) {
            faults.check(() -> Requirements.target(target));
        }
        faults.check(() -> ResultsFolder.at(out()));
        Optional<Choices> choices = faults.read(() -> ChoicesFile.read(file, MOST_MIXES));
        Optional<Scenario> read = faults.read(scenario::read);
        if (read.isPresent()) {
            Plant plant = read.get().plant();
            faults.check(() -> lines(plant));
            faults.check(() -> wanted(plant));
            faults.check(() -> requireCosts(plant));
        }
        faults.throwIfAny();
        List<Scenario> scenarios = new MixScenarios(scenario.path(), scenario.settings())
                .read(choices.orElseThrow().mixes());
        Optional<LossTarget> wanted = wanted(scenarios.get(0).plant());
        return new Asked(
                choices.orElseThrow(),
                scenarios,
                prices(choices.orElseThrow(), scenarios),
                wanted,
                isRare || wanted.filter(LossTarget::isRare).isPresent());
    }

    private Optional<LossTarget> wanted(Plant plant) throws InputException {
        return target == null ? Optional.empty() : Optional.of(Requirements.target(target, plant));
    }

    private void requireCosts(Plant plant) throws InputException {
        Requirements.require(
                plant.economy().prices().isPresent(),
                scenario.path().toString(),
                "Must have costs, for this weighs money against money.",
                "add costs to the scenario: docs/scenario-format.md");
    }

    private static MixPrices prices(Choices choices, List<Scenario> scenarios) throws ScenarioException {
        MixPrices prices = new MixPrices(
                choices.mixes(),
                scenarios.stream().map(Scenario::plant).toList(),
                choices.interest(),
                PayBack.runsPerYear(scenarios.get(0).plant().horizonTicks()));
        MixCheck.check(prices);
        return prices;
    }

    private List<String> heading(Asked asked) {
        Choices choices = asked.choices();
        return List.of(
                console.ink().title(asked.prices().plants().get(0).name()) + ": " + choices.mixCount() + " mixes of "
                        + choices.all().size() + (choices.all().size() == 1 ? " choice" : " choices"),
                "At least " + FIRST_LOOK + " replications of each with the same luck, seed " + experiment.seed() + ".",
                "");
    }

    private BooleanSupplier mayGoOn() throws InputException {
        long startedNs = System.nanoTime();
        return EffortOptions.time(budget)
                .<BooleanSupplier>map(time -> () -> System.nanoTime() - startedNs < time.toNanos())
                .orElse(() -> true);
    }

    private InvestReport report(Asked asked, InvestFinding finding) {
        MixPrices prices = asked.prices();
        return new InvestReport(
                scenario.provenance(asked.scenarios().get(0), experiment.seed()),
                prices.plants().get(0),
                asked.choices(),
                file.toString(),
                Optional.ofNullable(lineName),
                prices.mixes(),
                finding.mixes().stream()
                        .map(mix -> prices.extent(mix.number(), mix.price()))
                        .toList(),
                rule,
                asked.isRare(),
                finding,
                new MixWarnings(prices.mixes(), asked.scenarios(), finding).lines());
    }

    private InvestPlan plan() {
        return new InvestPlan(
                confidencePct / 100,
                FIRST_LOOK,
                most,
                runs,
                experiment.replications(),
                within == null ? OptionalDouble.empty() : OptionalDouble.of(within));
    }

    private List<Integer> lines(Plant plant) throws InputException {
        return lineName == null
                ? IntStream.range(0, plant.lines().size()).boxed().toList()
                : List.of(plant.lines().indexOf(Requirements.line(plant, lineName)));
    }

    private void failIfNoneMeets(InvestReport report) throws InputException {
        if (report.finding().isHopeless()) {
            throw new InputException(
                    "--target = " + target,
                    InvestAnswer.limits(report),
                    "mend what limits it, add options to " + file + ", or ask for less");
        }
    }

    private Map<String, byte[]> pictures(InvestReport report) {
        return isWithoutCharts
                ? Map.of()
                : Drawing.picture(InvestChart.FILE, new InvestChart(report)::png, console.err());
    }

    private void print(List<String> lines) {
        if (!experiment.isQuiet()) {
            lines.forEach(console.out()::println);
        }
    }

    private Path out() {
        return out == null ? Path.of("results", scenario.name() + "-invest") : out;
    }
}
