package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import spoolyard.analysis.report.ToleranceCase;
import spoolyard.analysis.report.ToleranceChart;
import spoolyard.analysis.report.ToleranceOverview;
import spoolyard.analysis.report.ToleranceReport;
import spoolyard.core.gauge.ToleranceStudy;
import spoolyard.core.plant.Plant;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.check.ToleranceKind;
import spoolyard.scenarios.fault.ScenarioException;

/** Tells what a tighter tolerance costs. */
@Command(
        name = "gauge",
        mixinStandardHelpOptions = true,
        header = "Show what a tolerance of the diameter costs: excursions, spools hit, scrap.",
        description = {
            "",
            "Works on lines whose gauge key has a diameter part: spread, drift, bath and gain. Simulates the filament"
                    + " sample by sample, on each line with what its orders ask for.",
            ""
        },
        parameterListHeading = "Parameters:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard gauge scenarios/orrenvale",
            "  spoolyard gauge scenarios/orrenvale --line L5 --tolerance \"0.02 mm\"",
            "  spoolyard gauge scenarios/orrenvale --line L5 --set /every_line/gauge/diameter/gain=0.3",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault."
        })
final class GaugeCommand implements Callable<Integer> {
    private static final List<Double> SHOWN_MM = List.of(0.015, 0.02, 0.025, 0.03, 0.04, 0.05);
    private static final int FIRST_UM = 10;
    private static final int LAST_UM = 60;
    private static final int STEP_UM = 2;
    private static final int SAMPLES = 2_000_000;
    private static final double S_PER_H = 3600;

    private final Console console;

    @Mixin
    private ScenarioArgument scenario;

    @Option(
            names = "--line",
            paramLabel = "LINE",
            description =
                    "One line in detail, with all that is ordered of it. All lines in short, each with the product ordered most, if not given.")
    private String line;

    @Option(
            names = "--tolerance",
            paramLabel = "T",
            description = "A tolerance to show beside the usual ones, such as \"0.02 mm\"; may be given again.")
    private List<String> tolerances = new ArrayList<>();

    @Option(
            names = "--seed",
            paramLabel = "S",
            defaultValue = "1",
            description = "Seed of the simulated filament, any whole number. Default: ${DEFAULT-VALUE}.")
    private long seed;

    @Option(names = "--picture", paramLabel = "FILE", description = "Draw the cost over the tolerance into a PNG file.")
    private Path picture;

    GaugeCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws InputException, ScenarioException, IOException {
        Scenario read = checked();
        List<Double> asked = asked();
        List<ToleranceCase> cases = cases(read.plant());
        console.out().println(console.ink().title(read.plant().name()) + ": what a tolerance costs");
        console.out().println();
        TreeSet<Double> shown = new TreeSet<>(SHOWN_MM);
        shown.addAll(asked);
        cases.forEach(study -> shown.add(study.presentMm()));
        List<ToleranceReport> curves =
                cases.stream().map(study -> study(study, shown)).toList();
        List<ToleranceReport> tables =
                curves.stream().map(curve -> curve.only(shown)).toList();
        if (line == null) {
            new ToleranceOverview(tables).lines(console.ink()).forEach(console.out()::println);
        } else {
            tables.forEach(table -> table.lines(console.ink(), asked).forEach(console.out()::println));
        }
        ToleranceReport.CAUTIONS.forEach(console.out()::println);
        draw(curves);
        return ExitCode.OK;
    }

    private Scenario checked() throws InputException, IOException {
        OptionFaults faults = new OptionFaults();
        for (String text : tolerances) {
            faults.check(() -> tolerance(text));
        }
        if (picture != null) {
            faults.check(() -> PictureFile.check(picture));
        }
        Optional<Scenario> read = faults.read(scenario::read);
        if (read.isPresent()) {
            faults.check(() -> cases(read.get().plant()));
        }
        faults.throwIfAny();
        return read.orElseThrow();
    }

    private List<Double> asked() throws InputException {
        List<Double> asked = new ArrayList<>();
        for (String text : tolerances) {
            asked.add(tolerance(text));
        }
        return asked;
    }

    private static double tolerance(String text) throws InputException {
        return ToleranceKind.parse(text)
                .orElseThrow(() -> new InputException(
                        "--tolerance = " + text,
                        "Must be a deviation from 0.001 mm to 1 mm, in mm or um.",
                        "write for example --tolerance \"0.02 mm\""));
    }

    private List<ToleranceCase> cases(Plant plant) throws InputException {
        if (line != null) {
            List<ToleranceCase> ofLine = ToleranceCase.of(plant, Requirements.line(plant, line));
            require(!ofLine.isEmpty(), "--line = " + line);
            return ofLine;
        }
        List<ToleranceCase> main = plant.lines().stream()
                .flatMap(each -> ToleranceCase.of(plant, each).stream().limit(1))
                .toList();
        require(!main.isEmpty(), scenario.path().toString());
        return main;
    }

    private static void require(boolean holds, String what) throws InputException {
        if (!holds) {
            throw new InputException(
                    what,
                    "Must have orders and a gauge with a diameter part.",
                    "add gauge: {out_of_tolerance: cut, diameter: {tolerance: ..., spread: ..., bath: ..., gain: ...}}");
        }
    }

    private ToleranceReport study(ToleranceCase study, SortedSet<Double> shown) {
        TreeSet<Double> all = new TreeSet<>(shown);
        for (int um = FIRST_UM; um <= LAST_UM; um += STEP_UM) {
            all.add(um / 1000.0);
        }
        ToleranceStudy simulation = new ToleranceStudy(study.loop(), study.joinS(), SAMPLES);
        double hours = SAMPLES * study.loop().sampleS() / S_PER_H;
        return new ToleranceReport(study, simulation.of(List.copyOf(all), seed), hours);
    }

    private void draw(List<ToleranceReport> curves) throws IOException, InputException {
        boolean isDrawn =
                picture != null && PictureFile.write(picture, () -> ToleranceChart.png(curves), console.err());
        if (isDrawn) {
            console.out().println("Picture in " + picture);
        }
    }
}
