package spoolyard.analysis.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints a script that teaches a shell to complete commands and options. */
@Command(
        name = "completion",
        mixinStandardHelpOptions = true,
        header = "Print a completion script for bash or zsh.",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  source <(./spoolyard completion)",
            "  ./spoolyard completion > ~/.local/share/bash-completion/completions/spoolyard"
        })
final class CompletionCommand implements Callable<Integer> {
    private final Console console;

    @Spec
    private CommandSpec spec;

    CompletionCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        console.out().print(AutoComplete.bash("spoolyard", spec.root().commandLine()));
        return ExitCode.OK;
    }
}
