package spoolyard.scenarios.read;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spoolyard.scenarios.fault.Origin;

/** A value as written, with the place where it was written. Immutable. */
public sealed interface Node {
    /**
     * Where it was written.
     *
     * @return file, line and pointer
     */
    Origin origin();

    /**
     * The value in a message.
     *
     * @return text on one line
     */
    String shown();

    /**
     * A text. Numbers, dates and yes or no are text here, exactly as written.
     *
     * @param origin where
     * @param text the text
     */
    record Text(Origin origin, String text) implements Node {
        @Override
        public String shown() {
            return text.isEmpty() ? "\"\"" : text;
        }
    }

    /**
     * A key with nothing after it, or {@code null}.
     *
     * @param origin where
     */
    record Nothing(Origin origin) implements Node {
        @Override
        public String shown() {
            return "(empty)";
        }
    }

    /**
     * A list.
     *
     * @param origin where
     * @param items what it holds
     */
    record Sequence(Origin origin, List<Node> items) implements Node {
        /** Copies the items. */
        public Sequence {
            items = List.copyOf(items);
        }

        @Override
        public String shown() {
            return "(a list of " + items.size() + ")";
        }
    }

    /**
     * Keys with values.
     *
     * @param origin where
     * @param entries values by key, in file order
     */
    record Mapping(Origin origin, Map<String, Node> entries) implements Node {
        /** Copies the entries, keeping their order. */
        public Mapping {
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }

        @Override
        public String shown() {
            return "{" + String.join(", ", entries.keySet()) + "}";
        }
    }
}
