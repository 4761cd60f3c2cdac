package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spoolyard.analysis.experiment.Experiment;
import spoolyard.analysis.experiment.Replicator;
import spoolyard.analysis.report.PlantClock;
import spoolyard.analysis.report.Setting;
import spoolyard.analysis.report.ShiftSeries;
import spoolyard.analysis.report.WarmupReport;
import spoolyard.analysis.report.WelchChart;
import spoolyard.core.record.EventLog;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.fault.ScenarioException;

/** Looks for the warm-up of a plant. */
@Command(
        name = "warmup",
        mixinStandardHelpOptions = true,
        header = "Find how long a plant takes to settle, and what it makes in a shift once it has.",
        description = {
            "",
            "For studies of a steady state. An order book that runs from a declared start to its end has none: use run"
                    + " for it. The method is MSER-5 on the average of the replications; the picture is a Welch plot.",
            ""
        },
        parameterListHeading = "Parameters:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard warmup scenarios/orrenvale",
            "  spoolyard warmup my-plant --set \"/time/length=26 weeks\" --picture warmup.png",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault."
        })
final class WarmupCommand implements Callable<Integer> {
    private static final int FEWEST_REPLICATIONS = 2;
    private static final int USUAL_WINDOWS = 10;

    private final Console console;
    private final Simulator simulator;

    @Mixin
    private ScenarioArgument scenario;

    @Option(
            names = "--window",
            paramLabel = "N",
            description = "Shifts on each side of the moving average in the picture. Default: a tenth of them.")
    private Integer window;

    @Option(names = "--picture", paramLabel = "FILE", description = "Draw the Welch plot into a PNG file.")
    private Path picture;

    @Mixin
    private ExperimentOptions experiment;

    WarmupCommand(Console console, Simulator simulator) {
        this.console = console;
        this.simulator = simulator;
    }

    @Override
    public Integer call() throws InputException, ScenarioException, IOException {
        experiment.check(FEWEST_REPLICATIONS);
        if (picture != null) {
            PictureFile.check(picture);
        }
        Scenario read = scenario.read();
        Setting setting = new Setting(read.plant(), new PlantClock(read.info().start()));
        int shifts = shifts(setting);
        int chosen = window(shifts);
        WarmupReport report = new WarmupReport(setting, simulated(setting), chosen);
        if (!experiment.isQuiet()) {
            console.out()
                    .println(console.ink().title(read.plant().name()) + ": warm-up, " + experiment.replications()
                            + " replications, seed " + experiment.seed());
            report.lines(console.ink()).forEach(console.out()::println);
        }
        draw(report);
        return ExitCode.OK;
    }

    private List<double[]> simulated(Setting setting) {
        Replicator replicator = simulator.of(setting.plant(), experiment.seed(), EventLog.SILENT);
        return new Experiment(replicator, experiment.replications(), experiment.threads())
                .run(result -> ShiftSeries.of(setting, result), experiment.progress(console));
    }

    private int shifts(Setting setting) throws InputException {
        int shifts = ShiftSeries.length(setting);
        if (shifts < WarmupReport.FEWEST_SHIFTS) {
            throw new InputException(
                    scenario.path().toString(),
                    "Has " + shifts + " full shifts. Must have at least " + WarmupReport.FEWEST_SHIFTS
                            + " to look for a warm-up in.",
                    "run it longer, for example with --set \"/time/length=4 weeks\"");
        }
        return shifts;
    }

    private int window(int shifts) throws InputException {
        int chosen = window == null ? shifts / USUAL_WINDOWS : window;
        EffortOptions.require("--window", chosen, 0, (shifts - 1) / 2);
        return chosen;
    }

    private void draw(WarmupReport report) throws IOException, InputException {
        boolean isDrawn = picture != null && PictureFile.write(picture, () -> WelchChart.png(report), console.err());
        if (isDrawn && !experiment.isQuiet()) {
            console.out().println("Picture in " + picture);
        }
    }
}
