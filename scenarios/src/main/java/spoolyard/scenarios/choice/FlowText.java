package spoolyard.scenarios.choice;

import java.util.stream.Collectors;
import spoolyard.scenarios.read.Node;

/** Writes a value back as YAML on one line. */
final class FlowText {
    private FlowText() {}

    static String of(Node node) {
        if (node instanceof Node.Mapping mapping) {
            return mapping.entries().entrySet().stream()
                    .map(entry -> quoted(entry.getKey()) + ": " + of(entry.getValue()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (node instanceof Node.Sequence sequence) {
            return sequence.items().stream().map(FlowText::of).collect(Collectors.joining(", ", "[", "]"));
        }
        return node instanceof Node.Text text ? quoted(text.text()) : "null";
    }

    /** In single quotes nothing has a meaning but the quote itself. Source: YAML 1.2.2, section 7.3.2. */
    private static String quoted(String text) {
        return "'" + text.replace("'", "''") + "'";
    }
}
