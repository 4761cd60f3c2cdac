package spoolyard.analysis.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.analysis.report.Ink;

/**
 * Where the program writes. Immutable.
 *
 * @param out standard output: results
 * @param err standard error: progress, warnings, faults
 * @param charset character set of both
 * @param isOutTerminal whether somebody watches the output, rather than a file or another program
 * @param isErrTerminal the same for errors
 * @param wantsColour whether a terminal may be written to in colour
 */
record Console(
        PrintStream out,
        PrintStream err,
        Charset charset,
        boolean isOutTerminal,
        boolean isErrTerminal,
        boolean wantsColour) {
    /**
     * The console of this process.
     *
     * @return output, errors and what is known of them
     */
    static Console ofProcess() {
        Charset charset = Optional.ofNullable(System.getProperty("native.encoding"))
                .filter(Charset::isSupported)
                .map(Charset::forName)
                .orElse(StandardCharsets.US_ASCII);
        return new Console(
                stream(FileDescriptor.out, charset),
                stream(FileDescriptor.err, charset),
                charset,
                isTerminal("out"),
                isTerminal("err"),
                wantsColour(System.getenv(), System.getProperty("os.name", "")));
    }

    /**
     * What the output can show.
     *
     * @return signs and emphasis
     */
    Ink ink() {
        return Ink.of(isOutTerminal && wantsColour, charset);
    }

    /**
     * Whether to write in colour to a terminal. Source of the first rule: no-color.org.
     *
     * @param environment the environment
     * @param system name of the operating system
     * @return false if NO_COLOR is set and not empty, the terminal is dumb, or it is an old Windows console
     */
    static boolean wantsColour(Map<String, String> environment, String system) {
        boolean isOldWindows = system.startsWith("Windows") && !environment.containsKey("WT_SESSION");
        return environment.getOrDefault("NO_COLOR", "").isEmpty()
                && !"dumb".equals(environment.get("TERM"))
                && !isOldWindows;
    }

    /** The launcher knows which streams are terminals; Java alone knows only whether all of them are. */
    private static boolean isTerminal(String stream) {
        String told = System.getProperty("spoolyard.terminals");
        return told == null
                ? System.console() != null
                : List.of(told.split(" ")).contains(stream);
    }

    private static PrintStream stream(FileDescriptor descriptor, Charset charset) {
        return new PrintStream(new FileOutputStream(descriptor), true, charset);
    }
}
