package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spoolyard.analysis.purge.Calibration;
import spoolyard.analysis.purge.PurgeMatrix;
import spoolyard.analysis.purge.PurgeSurvey;
import spoolyard.analysis.purge.TooLittleMeasuredException;
import spoolyard.analysis.report.CalibrationText;
import spoolyard.analysis.report.PurgeCsv;
import spoolyard.analysis.report.PurgeHeatMap;
import spoolyard.analysis.report.PurgeOverview;
import spoolyard.analysis.report.PurgeTableText;
import spoolyard.analysis.report.PurgeUnit;
import spoolyard.core.colour.Saunderson;
import spoolyard.core.colour.Viewing;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Polymer;
import spoolyard.core.purge.PurgeModel;
import spoolyard.core.washout.PlugAndTank;
import spoolyard.scenarios.Scenario;
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
            "  spoolyard purge scenarios/orrenvale --calibrate",
            "  spoolyard purge scenarios/orrenvale --csv changeovers.csv",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault."
        })
final class PurgeCommand implements Callable<Integer> {
    /** Where a calibration begins for a plant without an estimate; the usual values of the format. */
    private static final PurgeInputs.Estimate USUAL = new PurgeInputs.Estimate(
            new PurgeModel(new PurgeModel.Looks(Viewing.D65_10, Saunderson.NONE, 1), new PlugAndTank(0.4), 1, 1, 0.002),
            List.of());

    private final Console console;

    @Mixin
    private ScenarioArgument scenario;

    @Option(
            names = "--line",
            paramLabel = "LINE",
            description = "The line to show. The first that makes the polymer, if not given.")
    private String line;

    @Option(
            names = "--polymer",
            paramLabel = "POLYMER",
            description = "The polymer to show. The one ordered most, if not given.")
    private String polymer;

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

    PurgeCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws InputException, ScenarioException, IOException {
        PurgeUnit shown = unit();
        if (picture != null) {
            PictureFile.check(picture);
        }
        require(csv == null || !Files.isDirectory(csv), "--csv = " + csv, "Must be the name of a file.", "write one");
        Scenario read = scenario.read();
        console.out().println(console.ink().title(read.plant().name()) + ": what a change of colour purges");
        console.out().println();
        if (isCalibrating) {
            calibrate(read);
        }
        List<PurgeMatrix> matrices = matrices(read);
        if (line == null && polymer == null && !isCalibrating) {
            print(new PurgeOverview(matrices).lines(console.ink()));
        }
        PurgeMatrix chosen = chosen(read, matrices);
        if (!isCalibrating) {
            print(new PurgeTableText(chosen, shown).lines(console.ink()));
        }
        write(matrices);
        draw(chosen, shown, read.purge());
        return ExitCode.OK;
    }

    private PurgeUnit unit() throws InputException {
        for (PurgeUnit each : PurgeUnit.values()) {
            if (each.name().toLowerCase(Locale.ROOT).equals(unit)) {
                return each;
            }
        }
        throw new InputException("--in = " + unit, "Must be kg, minutes or metres.", "give one of these");
    }

    private void calibrate(Scenario read) throws InputException {
        try {
            Calibration calibration = Calibration.of(
                    read.plant(), read.purge(), read.purge().estimate().orElse(USUAL));
            print(new CalibrationText(calibration).lines(console.ink()));
        } catch (TooLittleMeasuredException tooLittle) {
            throw new InputException(
                    "--calibrate: " + tooLittle.getMessage(),
                    "Must have at least " + Calibration.FEWEST
                            + " measured rows for a line each, of different pairs of colours.",
                    "measure more changeovers and add them to the changeovers file");
        }
    }

    /** Of the line and polymer asked for, or of all. */
    private List<PurgeMatrix> matrices(Scenario read) throws InputException {
        requireName(
                "--line",
                line,
                "line",
                read.plant().lines().stream().map(Line::name).toList());
        requireName(
                "--polymer",
                polymer,
                "polymer",
                read.purge().polymers().stream().map(Polymer::code).toList());
        PurgeSurvey survey = new PurgeSurvey(read.plant(), read.purge());
        List<PurgeMatrix> matrices = new ArrayList<>();
        for (Line each : read.plant().lines()) {
            if (line == null || each.name().equals(line)) {
                survey.polymersOn(each).stream()
                        .filter(on -> polymer == null || on.code().equals(polymer))
                        .forEach(on -> matrices.add(survey.matrix(each, on)));
            }
        }
        require(
                !matrices.isEmpty(),
                "--line = " + line + ", --polymer = " + polymer,
                "Must be a line and a polymer that it makes, with colours.",
                "give another line or polymer");
        return matrices;
    }

    /** What is ordered most, on the first line that makes it. */
    private static PurgeMatrix chosen(Scenario read, List<PurgeMatrix> matrices) {
        return matrices.stream()
                .max(Comparator.comparingDouble((PurgeMatrix matrix) -> orderedKg(read, matrix.polymer()))
                        .thenComparingInt(matrix -> -matrices.indexOf(matrix)))
                .orElseThrow();
    }

    private static double orderedKg(Scenario read, Polymer polymer) {
        return read.plant().book().orders().stream()
                .filter(order -> order.product().polymer().code().equals(polymer.code()))
                .mapToDouble(PurgeCommand::massKg)
                .sum();
    }

    private static double massKg(Order order) {
        return order.spools() * order.product().spoolKg();
    }

    private void write(List<PurgeMatrix> matrices) throws IOException {
        if (csv != null) {
            WholeFile.write(csv, PurgeCsv.text(matrices).getBytes(StandardCharsets.UTF_8));
            console.out().println("Table in " + csv);
        }
    }

    private void draw(PurgeMatrix chosen, PurgeUnit shown, PurgeInputs inputs) throws IOException, InputException {
        Viewing viewing = inputs.estimate().orElse(USUAL).model().looks().viewing();
        boolean isDrawn = picture != null
                && PictureFile.write(picture, () -> PurgeHeatMap.png(chosen, shown, viewing), console.err());
        if (isDrawn) {
            console.out().println("Picture in " + picture);
        }
    }

    private void print(List<String> lines) {
        lines.forEach(console.out()::println);
    }

    private static void requireName(String option, String given, String what, Collection<String> known)
            throws InputException {
        require(
                given == null || known.contains(given),
                option + " = " + given,
                "Must be a " + what + " of this plant: " + String.join(", ", known) + ".",
                "give one of these");
    }

    private static void require(boolean holds, String option, String allowed, String mend) throws InputException {
        if (!holds) {
            throw new InputException(option, allowed, mend);
        }
    }
}
