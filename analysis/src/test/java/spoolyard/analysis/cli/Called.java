package spoolyard.analysis.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * What a call of the program gave back.
 *
 * @param code exit code
 * @param out standard output
 * @param err standard error
 */
record Called(int code, String out, String err) {
    static Called with(String... arguments) {
        return with(Simulator.REAL, false, arguments);
    }

    static Called with(Simulator simulator, boolean isTerminal, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = new Console(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                StandardCharsets.UTF_8,
                isTerminal,
                isTerminal,
                true);
        int code = SpoolyardCommand.line(console, simulator).execute(arguments);
        return new Called(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
