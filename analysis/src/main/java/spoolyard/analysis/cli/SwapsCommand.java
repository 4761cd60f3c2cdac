package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spoolyard.analysis.buffer.SwapStudy;
import spoolyard.analysis.buffer.SwapStudy.SeenSwap;
import spoolyard.analysis.report.PlantClock;
import spoolyard.analysis.report.Provenance;
import spoolyard.analysis.report.ResultsFolder;
import spoolyard.analysis.report.ResultsRefusedException;
import spoolyard.analysis.report.Setting;
import spoolyard.analysis.report.SwapChart;
import spoolyard.analysis.report.SwapFiles;
import spoolyard.analysis.report.SwapReport;
import spoolyard.analysis.report.SwapText;
import spoolyard.analysis.report.WaitChart;
import spoolyard.core.plant.Line;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.fault.ScenarioException;

/** Explains the overflows of a line. */
@Command(
        name = "swaps",
        mixinStandardHelpOptions = true,
        header = "Explain the overflows of a line: waits for the crew, losses by cause, one overflow moment by moment.",
        description = {
            "",
            "Follows every spool swap of a line. Shows how long full spools wait, why metres are lost, and for one"
                    + " overflow the level of the accumulator and what everybody did meanwhile. docs/buffer.md",
            ""
        },
        parameterListHeading = "Parameters:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard swaps scenarios/orrenvale --line L3",
            "  spoolyard swaps scenarios/orrenvale --line L3 --rank 5 --set /lines/L3/accumulator=\"80 m\"",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault."
        })
final class SwapsCommand implements Callable<Integer> {
    private static final int MOST_RANK = 1_000_000;

    private final Console console;

    @Mixin
    private ScenarioArgument scenario;

    @Mixin
    private ExperimentOptions experiment;

    @Option(names = "--line", paramLabel = "LINE", required = true, description = "The line whose swaps they are.")
    private String lineName;

    @Option(
            names = "--rank",
            paramLabel = "N",
            defaultValue = "1",
            description =
                    "Which overflow to tell moment by moment, by metres lost. Default: ${DEFAULT-VALUE}, the worst.")
    private int rank;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description =
                    "Results folder; an earlier one is replaced. Default: results/, the scenario's name, -swaps- and"
                            + " the line.")
    private Path out;

    @Option(names = "--no-charts", description = "Draw no pictures.")
    private boolean isWithoutCharts;

    SwapsCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws InputException, ScenarioException, ResultsRefusedException, IOException {
        Scenario read = checked();
        Line line = Requirements.line(read.plant(), lineName);
        ResultsFolder folder = ResultsFolder.at(out());
        SwapReport report = report(read, line);
        if (!experiment.isQuiet()) {
            new SwapText(report, console.ink()).lines().forEach(console.out()::println);
        }
        folder.replaceWith(new SwapFiles(report, pictures(report)));
        if (!experiment.isQuiet()) {
            console.out().println("\nResults in " + out());
        }
        return ExitCode.OK;
    }

    private Scenario checked() throws InputException, IOException {
        OptionFaults faults = new OptionFaults();
        faults.check(() -> Requirements.range("--rank", rank, 1, MOST_RANK));
        faults.check(() -> experiment.check(1));
        faults.check(() -> ResultsFolder.at(out()));
        Optional<Scenario> read = faults.read(scenario::read);
        if (read.isPresent()) {
            faults.check(() -> Requirements.line(read.get().plant(), lineName));
        }
        faults.throwIfAny();
        return read.orElseThrow();
    }

    private SwapReport report(Scenario read, Line line) throws InputException {
        SwapStudy study = new SwapStudy(read.plant(), lineName, experiment.seed());
        List<SeenSwap> swaps = study.run(experiment.replications(), experiment.threads(), experiment.progress(console));
        List<SeenSwap> worst = SwapStudy.worstFirst(swaps);
        Requirements.require(
                rank == 1 || rank <= worst.size(),
                "--rank = " + rank,
                "Must be at most " + worst.size() + ", the overflows seen.");
        Provenance provenance = scenario.provenance(read, experiment.seed());
        Setting setting = new Setting(read.plant(), new PlantClock(read.info().start()), List.of());
        return new SwapReport(
                provenance,
                setting,
                line,
                swaps,
                worst.isEmpty() ? Optional.empty() : Optional.of(study.explain(worst.get(rank - 1))),
                rank,
                experiment.replications());
    }

    private Map<String, byte[]> pictures(SwapReport report) {
        Map<String, byte[]> pictures = new LinkedHashMap<>();
        if (isWithoutCharts || report.swaps().isEmpty()) {
            return pictures;
        }
        put(pictures, WaitChart.FILE, Drawing.bytes(() -> WaitChart.png(report), console.err()));
        if (report.story().isPresent()) {
            put(pictures, SwapChart.FILE, Drawing.bytes(() -> new SwapChart(report).png(), console.err()));
        }
        return pictures;
    }

    private static void put(Map<String, byte[]> pictures, String name, byte[] png) {
        if (png.length > 0) {
            pictures.put(name, png);
        }
    }

    private Path out() {
        return out == null ? Path.of("results", scenario.name() + "-swaps-" + lineName) : out;
    }
}
