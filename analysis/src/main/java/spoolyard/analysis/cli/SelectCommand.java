package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import spoolyard.analysis.experiment.CommonNumbers;
import spoolyard.analysis.experiment.KimNelson;
import spoolyard.analysis.experiment.Observations;
import spoolyard.analysis.experiment.Progress;
import spoolyard.analysis.experiment.Race;
import spoolyard.analysis.experiment.Rinott;
import spoolyard.analysis.experiment.Selection;
import spoolyard.analysis.experiment.Zone;
import spoolyard.analysis.report.Alternative;
import spoolyard.analysis.report.ComparisonText;
import spoolyard.analysis.report.Measure;
import spoolyard.analysis.report.RaceChart;
import spoolyard.analysis.report.ResultsFolder;
import spoolyard.analysis.report.ResultsRefusedException;
import spoolyard.analysis.report.SelectionFiles;
import spoolyard.analysis.report.SelectionReport;
import spoolyard.analysis.report.SelectionText;
import spoolyard.scenarios.fault.ScenarioException;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.format.Quantity;

/** Selects the best of several plants. */
@Command(
        name = "select",
        mixinStandardHelpOptions = true,
        header = "Select the best of several plants with a stated probability, in as few runs as that takes.",
        description = {
            "",
            "Runs all, drops the ones that are clearly beaten after each replication and stops as soon as one is left:"
                    + " Kim and Nelson 2001. docs/answers.md says what is promised.",
            ""
        },
        parameterListHeading = "Parameters:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard select scenarios/orrenvale scenarios/orrenvale-two-by-twelve --within 50",
            "  spoolyard select scenarios/orrenvale three=/shifts/pattern/N/crew/operator=3 \\",
            "      two=/shifts/pattern/N/crew/operator=2 --measure cost_per_good_spool --within 0.02",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault."
        })
final class SelectCommand implements Callable<Integer> {
    private static final int FEWEST_FIRST = 5;
    private static final int MOST_REPLICATIONS = 1_000_000;
    private static final double LEAST_CONFIDENCE = 0.6;
    private static final double MOST_CONFIDENCE = 0.9999;

    private final Console console;
    private final Simulator simulator;

    @Parameters(
            index = "0",
            paramLabel = "PLANT",
            description = "A scenario: a folder with a plant.yaml, or a YAML file.")
    private Path base;

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "ALT",
            description = "Others, as for compare: a scenario, or values set over the first, POINTER=VALUE, with NAME="
                    + " before it or not.")
    private List<String> alternatives = new ArrayList<>();

    @Option(
            names = "--within",
            required = true,
            paramLabel = "AMOUNT",
            description = "Indifference: the least difference that matters, in the unit of the measure.")
    private double within;

    @Option(
            names = "--measure",
            paramLabel = "NAME",
            defaultValue = "good_spools_per_week",
            description = "What the best is best in, as in docs/results.md. Default: ${DEFAULT-VALUE}.")
    private String measure;

    @Option(
            names = "--confidence",
            paramLabel = "P",
            defaultValue = "95%",
            description = "Probability that the best is selected. Default: ${DEFAULT-VALUE}.")
    private String confidence;

    @Option(
            names = "--first",
            paramLabel = "N",
            defaultValue = "10",
            description = "Replications of each before any is dropped. Default: ${DEFAULT-VALUE}.")
    private int first;

    @Option(
            names = "--most",
            paramLabel = "N",
            defaultValue = "1000",
            description = "Replications of a plant after which it stops without an answer. Default: ${DEFAULT-VALUE}.")
    private int most;

    @Option(
            names = "--two-stage",
            description = "Rinott's procedure of 1978 on independent runs, as a check: needs more runs.")
    private boolean isTwoStage;

    @Option(
            names = "--set",
            paramLabel = "POINTER=VALUE",
            description = "Set one value over all plants; may be given again.")
    private List<String> settings = new ArrayList<>();

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "Results folder; an earlier one is replaced. Default: results/, the first plant's name and -selected.")
    private Path out;

    @Option(names = "--no-charts", description = "Draw no picture.")
    private boolean isWithoutCharts;

    @Mixin
    private SimulationOptions experiment;

    SelectCommand(Console console, Simulator simulator) {
        this.console = console;
        this.simulator = simulator;
    }

    @Override
    public Integer call() throws InputException, ScenarioException, ResultsRefusedException, IOException {
        List<Alternative> plants = checked();
        Zone zone = new Zone(probability(), within, first);
        Measure wanted = EffortOptions.measure(measure);
        ResultsFolder folder = ResultsFolder.at(out());
        print(ComparisonText.heading(plants, console.ink()));
        Progress progress = experiment.progress(console);
        Selection selection = select(zone, race(plants, wanted, progress), plants.size());
        progress.reached(1, 1);
        SelectionReport report = new SelectionReport(plants, wanted, zone, isTwoStage, selection);
        print(new SelectionText(report).lines(console.ink()));
        folder.replaceWith(new SelectionFiles(report, pictures(report)));
        print(List.of("Results in " + out()));
        return ExitCode.OK;
    }

    private Map<String, byte[]> pictures(SelectionReport report) {
        return isWithoutCharts ? Map.of() : Drawing.picture(RaceChart.FILE, () -> RaceChart.png(report), console.err());
    }

    private Path out() {
        return out == null ? Path.of("results", ScenarioArgument.nameOf(base) + "-selected") : out;
    }

    private Selection select(Zone zone, Observations race, int plants) throws InputException {
        if (isTwoStage) {
            return new Rinott(zone, plants).select(race, most);
        }
        KimNelson procedure = new KimNelson(zone);
        if (procedure.eta(plants) <= 0) {
            throw new InputException(
                    "--confidence = " + confidence,
                    "Is no more than guessing among " + plants + " gives.",
                    "give a higher one, such as 95%");
        }
        return procedure.select(race, most);
    }

    private Race<double[]> race(List<Alternative> plants, Measure wanted, Progress progress) {
        CommonNumbers<double[]> numbers = new CommonNumbers<>(
                isTwoStage ? Contest.independentTrial(plants, simulator) : Contest.trial(plants, simulator),
                experiment.threads());
        int sign = wanted.isMoreBetter() ? 1 : -1;
        return new Race<>(numbers, plants.size(), all -> sign * all[wanted.ordinal()], first, progress);
    }

    private List<Alternative> checked() throws InputException, IOException {
        OptionFaults faults = new OptionFaults();
        faults.check(experiment::check);
        faults.check(this::checkWithin);
        faults.check(() -> EffortOptions.require("--first", first, FEWEST_FIRST, MOST_REPLICATIONS));
        faults.check(() -> EffortOptions.require("--most", most, Math.max(FEWEST_FIRST, first), MOST_REPLICATIONS));
        faults.check(this::probability);
        faults.check(() -> EffortOptions.measure(measure));
        faults.check(() -> ResultsFolder.at(out()));
        Optional<List<Alternative>> plants = faults.read(() ->
                Contest.read(base, alternatives, settings, experiment.seed()).plants());
        faults.throwIfAny();
        return plants.orElseThrow();
    }

    private void checkWithin() throws InputException {
        if (!(within > 0) || Double.isInfinite(within)) {
            throw new InputException(
                    "--within = " + within, "Must be above 0.", "give the least difference that matters");
        }
    }

    private double probability() throws InputException {
        Optional<Double> share = Quantity.parse(confidence)
                .flatMap(quantity -> quantity.in(Dimension.SHARE))
                .filter(value -> value >= LEAST_CONFIDENCE && value <= MOST_CONFIDENCE);
        return share.orElseThrow(() -> new InputException(
                "--confidence = " + confidence, "Must be from 60 % to 99.99 %.", "write for example --confidence 95%"));
    }

    private void print(List<String> lines) {
        if (!experiment.isQuiet()) {
            lines.forEach(console.out()::println);
        }
    }
}
