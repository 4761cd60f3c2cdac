package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spoolyard.analysis.purge.Calibration;
import spoolyard.analysis.purge.PurgeMatrix;
import spoolyard.analysis.purge.TooLittleMeasuredException;
import spoolyard.analysis.report.CalibrationText;
import spoolyard.analysis.report.PurgeCsv;
import spoolyard.analysis.report.PurgeHeatMap;
import spoolyard.analysis.report.PurgeOverview;
import spoolyard.analysis.report.PurgeTableText;
import spoolyard.analysis.report.PurgeUnit;
import spoolyard.core.colour.Viewing;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.check.ChangeoverLog;
import spoolyard.scenarios.check.PurgeInputs;
import spoolyard.scenarios.fault.ScenarioException;

/** Shows what every change of colour purges. */
@Command(
        name = "purge",
        mixinStandardHelpOptions = true,
        header = "Show what every change of colour runs to waste, and calibrate the estimate of it.",
        description = {
            "",
            "Tells for each pair of colours whether the figure was measured, estimated, extrapolated beyond what was"
                    + " measured, or comes from the shade-class formula. docs/purge.md explains the estimate.",
            ""
        },
        parameterListHeading = "Parameters:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard purge scenarios/orrenvale",
            "  spoolyard purge scenarios/orrenvale --line L5 --in minutes --picture purge.png",
            "  spoolyard purge scenarios/orrenvale --calibrate --log last-year.csv",
            "  spoolyard purge scenarios/orrenvale --csv changeovers.csv",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault."
        })
final class PurgeCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private ScenarioArgument scenario;

    @Mixin
    private PurgeChoice choice;

    @Option(
            names = "--in",
            paramLabel = "UNIT",
            defaultValue = "kg",
            description = "kg, minutes, or metres of each strand. Default: ${DEFAULT-VALUE}.")
    private String unit;

    @Option(
            names = "--picture",
            paramLabel = "FILE",
            description = "Draw the table as a map with swatches of the colours into a PNG file.")
    private Path picture;

    @Option(
            names = "--csv",
            paramLabel = "FILE",
            description =
                    "Write the purges of all lines and polymers, or those given, in the form of a changeovers file.")
    private Path csv;

    @Option(
            names = "--calibrate",
            description =
                    "Find volume and mixing exponent of the estimate from the measured rows, and which rows fit badly.")
    private boolean isCalibrating;

    @Option(
            names = "--log",
            paramLabel = "FILE",
            description =
                    "Calibrate on this log in place of the changeovers file: a CSV file with its columns, in which a"
                            + " pair may come again.")
    private Path log;

    PurgeCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws InputException, ScenarioException, IOException {
        Scenario read = checked();
        PurgeUnit shown = unit();
        List<PurgeMatrix> matrices = choice.matrices(read);
        List<String> calibration = isCalibrating ? calibration(read) : List.of();
        console.out().println(console.ink().title(read.plant().name()) + ": what a change of colour purges");
        console.out().println();
        print(calibration);
        if (choice.isOpen() && !isCalibrating) {
            print(new PurgeOverview(matrices).lines(console.ink()));
        }
        PurgeMatrix one = PurgeChoice.shown(read, matrices);
        if (!isCalibrating) {
            print(new PurgeTableText(one, shown).lines(console.ink()));
        }
        write(matrices);
        draw(one, shown, read.purge());
        return ExitCode.OK;
    }

    private Scenario checked() throws InputException, IOException {
        OptionFaults faults = new OptionFaults();
        faults.check(this::unit);
        if (picture != null) {
            faults.check(() -> PictureFile.check(picture));
        }
        faults.check(() -> require(
                csv == null || !Files.isDirectory(csv), "--csv = " + csv, "Must be the name of a file.", "write one"));
        faults.check(() -> require(
                log == null || isCalibrating, "--log = " + log, "Must go with --calibrate.", "add --calibrate"));
        Optional<Scenario> read = faults.read(scenario::read);
        if (read.isPresent()) {
            faults.check(() -> choice.matrices(read.get()));
        }
        faults.throwIfAny();
        return read.orElseThrow();
    }

    private PurgeUnit unit() throws InputException {
        for (PurgeUnit each : PurgeUnit.values()) {
            if (each.name().toLowerCase(Locale.ROOT).equals(unit)) {
                return each;
            }
        }
        throw new InputException("--in = " + unit, "Must be kg, minutes or metres.", "give one of these");
    }

    private List<String> calibration(Scenario read) throws InputException, ScenarioException {
        PurgeInputs inputs =
                log == null ? read.purge() : read.purge().with(ChangeoverLog.read(log, read.plant(), read.purge()));
        try {
            Optional<PurgeInputs.Estimate> own = inputs.estimate();
            Calibration calibration = Calibration.of(read.plant(), inputs, own.orElse(Calibration.USUAL));
            return new CalibrationText(calibration, own.isEmpty()).lines(console.ink());
        } catch (TooLittleMeasuredException tooLittle) {
            throw new InputException(
                    "--calibrate: " + tooLittle.getMessage(),
                    "Must have at least " + Calibration.FEWEST
                            + " measured rows for a line each, of different pairs of colours.",
                    "measure more changeovers and add them to the changeovers file");
        }
    }

    private void write(List<PurgeMatrix> matrices) throws IOException {
        if (csv != null) {
            OutputFile.write(csv, PurgeCsv.text(matrices));
            console.out().println("Table in " + csv);
        }
    }

    private void draw(PurgeMatrix chosen, PurgeUnit shown, PurgeInputs inputs) throws IOException, InputException {
        Viewing viewing =
                inputs.estimate().orElse(Calibration.USUAL).model().looks().viewing();
        boolean isDrawn = picture != null
                && PictureFile.write(picture, () -> PurgeHeatMap.png(chosen, shown, viewing), console.err());
        if (isDrawn) {
            console.out().println("Picture in " + picture);
        }
    }

    private void print(List<String> lines) {
        lines.forEach(console.out()::println);
    }

    private static void require(boolean holds, String option, String allowed, String mend) throws InputException {
        if (!holds) {
            throw new InputException(option, allowed, mend);
        }
    }
}
