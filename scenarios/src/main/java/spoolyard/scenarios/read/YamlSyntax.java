package spoolyard.scenarios.read;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Origin;

/** Turns the parser's account of broken YAML into a fault. */
final class YamlSyntax {
    private static final Pattern MARK = Pattern.compile("line (\\d+), column \\d+");

    private YamlSyntax() {}

    static Fault fault(Origin root, JsonProcessingException e) {
        String message = String.valueOf(e.getOriginalMessage());
        Origin origin = root.line() == 0 ? root : root.onLine(line(message, e));
        return new Fault(
                FaultKind.BAD_SYNTAX,
                origin,
                "not YAML",
                "The parser says: " + reason(message) + ".",
                "check indentation (spaces, no tabs), a missing quote, bracket or space after a colon near this line");
    }

    /** The last place in the message is where reading failed; earlier ones tell where the construct began. */
    private static int line(String message, JsonProcessingException e) {
        int line = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNr());
        Matcher mark = MARK.matcher(message);
        while (mark.find()) {
            line = Integer.parseInt(mark.group(1));
        }
        return line;
    }

    /** The last sentence that is neither a place nor an excerpt. */
    private static String reason(String message) {
        String reason = Arrays.stream(message.split("\n"))
                .filter(line -> !line.startsWith(" ") && !line.isBlank())
                .reduce((first, second) -> second)
                .orElse("it cannot be read");
        return reason.replaceAll("<org\\.yaml.*", "a list or a mapping").replaceAll("\\.$", "");
    }
}
