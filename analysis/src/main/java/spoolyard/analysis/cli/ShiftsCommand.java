package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import spoolyard.analysis.report.RosterChart;
import spoolyard.analysis.report.RosterText;
import spoolyard.scenarios.ShiftRoster;
import spoolyard.scenarios.fault.ScenarioException;
import spoolyard.scenarios.shiftsystem.ShiftSystem;

/** Lists the shift systems, or draws a roster. */
@Command(
        name = "shifts",
        mixinStandardHelpOptions = true,
        header = "List common shift systems, or draw the roster of one or of a scenario.",
        description = {
            "",
            "A scenario names a system in one line: shifts: {system: 2x12-2-2-3, every_shift: {crew: {operator: 4}}}.",
            ""
        },
        parameterListHeading = "Parameters:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard shifts",
            "  spoolyard shifts 2x12-2-2-3 --picture roster.png",
            "  spoolyard shifts scenarios/orrenvale",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault."
        })
final class ShiftsCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(
            arity = "0..1",
            paramLabel = "ROSTER",
            description = "Name of a shift system, or a scenario. A list of the systems, if not given.")
    private String what;

    @Option(
            names = "--set",
            paramLabel = "POINTER=VALUE",
            description = "Set one value over those of the scenario, by JSON Pointer; may be given again.")
    private List<String> settings = new ArrayList<>();

    @Option(names = "--picture", paramLabel = "FILE", description = "Draw the roster into a PNG file.")
    private Path picture;

    ShiftsCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws InputException, ScenarioException, IOException {
        if (picture != null) {
            PictureFile.check(picture);
        }
        if (what == null) {
            require(picture == null, "--picture = " + picture, "Must go with a roster to draw.", "name a system");
            new RosterText(console.ink()).systems().forEach(console.out()::println);
            return ExitCode.OK;
        }
        Optional<ShiftSystem> system = ShiftSystem.of(what);
        ShiftRoster roster = system.isPresent() ? ShiftRoster.of(system.get()) : ofScenario();
        String title = system.map(known -> known.label() + ": " + known.title()).orElse(what);
        console.out().println(console.ink().title(title));
        console.out().println();
        new RosterText(console.ink()).drawn(roster).forEach(console.out()::println);
        system.ifPresent(this::printText);
        draw(title, roster);
        return ExitCode.OK;
    }

    private ShiftRoster ofScenario() throws InputException, ScenarioException {
        Path path = Path.of(what);
        require(
                Files.exists(path),
                "ROSTER = " + what,
                "Must be a shift system (" + String.join(", ", ShiftSystem.labels()) + ") or a scenario.",
                "name one of these");
        Optional<ShiftRoster> roster = ShiftRoster.read(path, settings);
        require(roster.isPresent(), "ROSTER = " + what, "Must be a scenario with shifts.", "add the key shifts");
        return roster.orElseThrow();
    }

    private static void require(boolean holds, String option, String allowed, String mend) throws InputException {
        if (!holds) {
            throw new InputException(option, allowed, mend);
        }
    }

    private void printText(ShiftSystem system) {
        console.out().println();
        console.out().println("The keys it stands for, to copy and change:");
        console.out().println();
        console.out().print(system.text());
    }

    private void draw(String title, ShiftRoster roster) throws IOException, InputException {
        boolean isDrawn =
                picture != null && PictureFile.write(picture, () -> RosterChart.png(title, roster), console.err());
        if (isDrawn) {
            console.out().println();
            console.out().println("Picture in " + picture);
        }
    }
}
