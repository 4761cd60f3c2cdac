package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import spoolyard.analysis.report.ResultsRefusedException;

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
    public Integer call() throws IOException, ResultsRefusedException {
        StarterFolder.write(folder);
        console.out().println("A plant of two lines is in " + folder + ": plant.yaml, orders.csv and colours.csv.");
        console.out().println("Edit them, then:");
        console.out().println("  spoolyard check " + folder);
        console.out().println("  spoolyard run " + folder);
        return ExitCode.OK;
    }
}
