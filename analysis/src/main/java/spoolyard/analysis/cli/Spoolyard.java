package spoolyard.analysis.cli;

/** Starts the program. */
public final class Spoolyard {
    private Spoolyard() {}

    /**
     * Runs a command and ends the process with its exit code.
     *
     * @param arguments the command line
     */
    public static void main(String[] arguments) {
        int code = SpoolyardCommand.line(Console.ofProcess(), Simulator.REAL).execute(arguments);
        System.exit(code);
    }
}
