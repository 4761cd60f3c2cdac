package spoolyard.analysis.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import spoolyard.scenarios.fault.ScenarioException;
import spoolyard.scenarios.format.StarterScenario;

/** Writes a starter scenario. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        header = "Write a small commented scenario that runs, to start your own from.",
        parameterListHeading = "%nParameters:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard new my-plant",
            "  spoolyard check my-plant",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault."
        })
final class NewCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "FOLDER", description = "Where to write it; must not be there yet, or be empty.")
    private Path folder;

    NewCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws ScenarioException {
        String files = StarterScenario.write(folder).stream()
                .map(file -> file.getFileName().toString())
                .collect(Collectors.joining(", "));
        console.out().println("A plant of two lines is in " + folder + ": " + files + ".");
        console.out().println("Edit it, then:");
        console.out().println("  spoolyard check " + typed(folder));
        console.out().println("  spoolyard run " + typed(folder));
        return ExitCode.OK;
    }

    /** A path as a person would type it. */
    static String typed(Path path) {
        return path.toString().contains(" ") ? "\"" + path + "\"" : path.toString();
    }
}
