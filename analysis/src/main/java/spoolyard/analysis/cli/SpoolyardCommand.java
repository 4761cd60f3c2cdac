package spoolyard.analysis.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The command that all others belong to. */
@Command(
        name = "spoolyard",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        header = "Simulates a plant that extrudes filament: spools per shift, scrap, bottleneck.",
        synopsisSubcommandLabel = "COMMAND",
        commandListHeading = "%nCommands:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "Examples:",
            "  spoolyard run scenarios/orrenvale",
            "  spoolyard compare scenarios/orrenvale scenarios/orrenvale-two-by-twelve",
            "  spoolyard check scenarios/orrenvale",
            "  spoolyard new my-plant",
            "",
            "Exit codes: 0 all is well; 1 the program is at fault; 2 the input or the call is at fault.",
            "More: README.md and docs/."
        })
final class SpoolyardCommand {
    private static final int HELP_WIDTH = 98;

    @Option(
            names = "--debug",
            scope = ScopeType.INHERIT,
            description = "Print a stack trace when something goes wrong.")
    private boolean isDebugging;

    private SpoolyardCommand() {}

    /**
     * The whole command line.
     *
     * @param console where to write
     * @param simulator makes the replications
     * @return ready to execute
     */
    static CommandLine line(Console console, Simulator simulator) {
        CommandLine line = new CommandLine(new SpoolyardCommand());
        line.addSubcommand(new RunCommand(console, simulator));
        line.addSubcommand(new CompareCommand(console, simulator));
        line.addSubcommand(new SelectCommand(console, simulator));
        line.addSubcommand(new WarmupCommand(console, simulator));
        line.addSubcommand(new CheckCommand(console));
        line.addSubcommand(new GaugeCommand(console));
        line.addSubcommand(new BufferCommand(console, simulator));
        line.addSubcommand(new InvestCommand(console, simulator));
        line.addSubcommand(new SwapsCommand(console));
        line.addSubcommand(new CrewCommand(console, simulator));
        line.addSubcommand(new RelieveCommand(console, simulator));
        line.addSubcommand(new ScreenCommand(console, simulator));
        line.addSubcommand(new StudyCommand(console, simulator));
        line.addSubcommand(new ShiftsCommand(console));
        line.addSubcommand(new PurgeCommand(console));
        line.addSubcommand(new SequenceCommand(console, simulator));
        line.addSubcommand(new FrontierCommand(console, simulator));
        line.addSubcommand(new NewCommand(console));
        line.addSubcommand(new CompletionCommand(console));
        Failures failures = new Failures(console.err());
        line.setOut(new PrintWriter(console.out(), true));
        line.setErr(new PrintWriter(console.err(), true));
        line.setExecutionExceptionHandler(failures);
        line.setParameterExceptionHandler(failures);
        line.setExpandAtFiles(false);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setUsageHelpWidth(HELP_WIDTH);
        line.setColorScheme(Help.defaultColorScheme(console.ink().hasColour() ? Help.Ansi.ON : Help.Ansi.OFF));
        return line;
    }
}
