package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spoolyard.analysis.report.Measure;
import spoolyard.analysis.report.ResultsFolder;
import spoolyard.analysis.report.ResultsRefusedException;
import spoolyard.analysis.report.StudyChart;
import spoolyard.analysis.report.StudyFiles;
import spoolyard.analysis.report.StudyJournal;
import spoolyard.analysis.report.StudyReport;
import spoolyard.analysis.report.StudyText;
import spoolyard.analysis.study.Design;
import spoolyard.scenarios.PointScenarios;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.factor.Level;
import spoolyard.scenarios.factor.Levels;
import spoolyard.scenarios.factor.Variation;
import spoolyard.scenarios.factor.VariationText;
import spoolyard.scenarios.fault.ScenarioException;

/** Runs a plant at many points. */
@Command(
        name = "study",
        mixinStandardHelpOptions = true,
        header = "Vary one to four values of a scenario together, and show what each combination does.",
        description = {
            "",
            "Every point sees the same luck. Finished points are kept in the results folder: the same command goes on"
                    + " where a stopped study was. docs/study.md says how to read it.",
            ""
        },
        parameterListHeading = "Parameters:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard study scenarios/orrenvale --vary \"/lines/L3/accumulator=40 m..200 m:9\" \\",
            "    --vary /shifts/pattern/N/crew/operator=3..5",
            "  spoolyard study scenarios/orrenvale --vary /lines/L3/overflow=stop,waste",
            "  spoolyard study scenarios/orrenvale --design sobol --points 64 \\",
            "    --vary \"/lines/L3/accumulator=40 m..200 m\" --vary \"/lines/L3/winder/max_speed=120..200 m/min\"",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault."
        })
final class StudyCommand implements Callable<Integer> {
    private static final int MOST_FACTORS = 4;
    private static final int MANY_POINTS = 400;
    private static final int MOST_POINTS = 10_000;

    private final Console console;
    private final Simulator simulator;

    @Mixin
    private ScenarioArgument scenario;

    @Option(
            names = "--vary",
            paramLabel = "POINTER=VALUES",
            required = true,
            description = {
                "A value by JSON Pointer and what it shall be: a list A,B,C, a range LOW..HIGH, or LOW..HIGH:N for N"
                        + " values. May be given up to four times."
            })
    private List<String> varied = new ArrayList<>();

    @Option(
            names = "--design",
            paramLabel = "NAME",
            defaultValue = "grid",
            description = "grid (all with all), latin-hypercube or sobol. Default: ${DEFAULT-VALUE}.")
    private String designName;

    @Option(names = "--points", paramLabel = "N", description = "How many points, where the design is no grid.")
    private Integer count;

    @Option(
            names = "--measure",
            paramLabel = "NAME",
            defaultValue = "good_spools_per_week",
            description = "By which the best point is sought, as in docs/results.md. Default: ${DEFAULT-VALUE}.")
    private String measureName;

    @Mixin
    private StudyOptions experiment;

    @Option(names = "--yes", description = "Run more than " + MANY_POINTS + " points without further question.")
    private boolean isSure;

    @Option(names = "--fresh", description = "Throw away finished points of an earlier study and begin again.")
    private boolean isFresh;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "Results folder; an earlier one is replaced. Default: results/, the scenario's name and -study.")
    private Path out;

    @Option(names = "--no-charts", description = "Draw no picture.")
    private boolean isWithoutCharts;

    StudyCommand(Console console, Simulator simulator) {
        this.console = console;
        this.simulator = simulator;
    }

    @Override
    public Integer call() throws InputException, ScenarioException, ResultsRefusedException, IOException {
        Scenario base = checked();
        Measure measure = EffortOptions.measure(measureName);
        List<Variation> factors = VariationText.read(varied, MOST_FACTORS);
        Design design = design(factors);
        List<List<Level>> points = design.points(factors, count == null ? 0 : count, experiment.seed());
        ResultsFolder folder = ResultsFolder.ofStudy(out());
        List<double[][]> values =
                values(base, design, new PointScenarios(scenario.path(), scenario.settings(), factors), points);
        StudyReport report = new StudyReport(
                scenario.provenance(base, experiment.seed()),
                base.plant().name(),
                design,
                factors,
                points,
                values,
                measure);
        print(new StudyText(report, console.ink()).lines());
        folder.replaceWith(new StudyFiles(report, out().resolve(StudyJournal.FILE), pictures(report)));
        print(List.of("Results in " + out()));
        return ExitCode.OK;
    }

    private Scenario checked() throws InputException, IOException {
        OptionFaults faults = new OptionFaults();
        faults.check(experiment::check);
        faults.check(() -> EffortOptions.measure(measureName));
        Optional<List<Variation>> factors = faults.read(() -> VariationText.read(varied, MOST_FACTORS));
        if (factors.isPresent()) {
            faults.check(() -> checkCount(design(factors.get()), factors.get()));
        }
        faults.check(() -> ResultsFolder.ofStudy(out()));
        Optional<Scenario> base = faults.read(scenario::read);
        if (base.isPresent()) {
            faults.check(() -> Requirements.require(
                    !measureName.equals(Measure.COST_PER_GOOD_SPOOL.fileName())
                            || base.get().plant().economy().prices().isPresent(),
                    "--measure = " + measureName,
                    "Must not be a cost: the scenario has no costs."));
        }
        faults.throwIfAny();
        return base.orElseThrow();
    }

    private Design design(List<Variation> factors) throws InputException {
        Design design = Design.named(designName)
                .orElseThrow(() -> new InputException(
                        "--design = " + designName, "Must be grid, latin-hypercube or sobol.", "give one of these"));
        boolean isGrid = design == Design.GRID;
        if (isGrid && count != null) {
            throw new InputException(
                    "--points = " + count,
                    "A grid has as many points as its factors make.",
                    "leave it out, or give --design sobol");
        }
        if (!isGrid && count == null) {
            throw new InputException(
                    "--design = " + designName, "Must come with a number of points.", "add for example --points 64");
        }
        for (Variation factor : factors) {
            if (isGrid && !(factor.levels() instanceof Levels.Listed)) {
                throw new InputException(
                        "--vary " + factor.pointer() + " = " + factor.levels().described(),
                        "A grid must be told how many values of the range it takes.",
                        "add for example :5 behind the range, or give --design sobol --points 64");
            }
        }
        return design;
    }

    private void checkCount(Design design, List<Variation> factors) throws InputException {
        if (count != null) {
            Requirements.range("--points", count, 2, MOST_POINTS);
        }
        long size = count == null ? Design.gridSize(factors) : count;
        if (size > MOST_POINTS || (size > MANY_POINTS && !isSure)) {
            throw new InputException(
                    design.label() + " of " + size + " points",
                    size > MOST_POINTS ? "Must be at most " + MOST_POINTS + "." : "That may take long.",
                    size > MOST_POINTS ? "give fewer values" : "give fewer values, or --yes if you mean it");
        }
    }

    private List<String> heading(Scenario base, Design design, int points) {
        return List.of(
                console.ink().title(base.plant().name()) + ": what " + varied.size()
                        + (varied.size() == 1 ? " factor does" : " factors do"),
                points + " points (" + design.label() + "), " + experiment.replications(points)
                        + " replications each with the same luck, seed " + experiment.seed() + ";",
                console.ink().hasSigns()
                        ? "\u00b1 is the 95 % confidence interval of each mean by itself."
                        : "+/- is the 95 % confidence interval of each mean by itself.");
    }

    private List<double[][]> values(Scenario base, Design design, PointScenarios scenarios, List<List<Level>> points)
            throws ScenarioException, InputException, ResultsRefusedException, IOException {
        List<String> hashes = scenarios.check(points);
        print(heading(base, design, points.size()));
        StudyRun run = new StudyRun(scenarios, points, hashes, simulator, experiment);
        try (StudyJournal journal = StudyJournal.open(out(), out().toString(), identity(points, hashes), isFresh)) {
            int finished = journal.finished().size();
            if (finished > 0) {
                print(List.of(finished + " of " + points.size() + " points were finished before."));
            }
            return run.run(journal, experiment.progress(console));
        }
    }

    /** All in which two studies may differ. */
    private Map<String, String> identity(List<List<Level>> points, List<String> hashes) {
        Map<String, String> identity = new LinkedHashMap<>();
        identity.put("program version", Version.number());
        identity.put("scenario and factors", sha256(String.join("\n", hashes)));
        identity.put(StudyJournal.POINTS, Integer.toString(points.size()));
        identity.put("seed", Long.toString(experiment.seed()));
        identity.put("replications", Integer.toString(experiment.replications(points.size())));
        identity.put("measures", Measure.names());
        return identity;
    }

    private static String sha256(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    private Map<String, byte[]> pictures(StudyReport report) {
        return isWithoutCharts
                ? Map.of()
                : Drawing.picture(StudyChart.FILE, new StudyChart(report)::png, console.err());
    }

    private void print(List<String> lines) {
        if (!experiment.isQuiet()) {
            lines.forEach(console.out()::println);
        }
    }

    private Path out() {
        return out == null ? Path.of("results", scenario.name() + "-study") : out;
    }
}
