package spoolyard.scenarios.read;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.fault.Origin;

/**
 * Builds a tree from YAML text. Scalars stay text; duplicate keys, anchors, aliases, tags, a second document and nesting
 * beyond {@value #DEEPEST} are faults. Aliases are never followed, so a file cannot grow while it is read.
 */
public final class YamlTree {
    /** Deepest nesting. */
    public static final int DEEPEST = 64;

    private static final YAMLFactory YAML = new YAMLFactory();

    private final Faults faults;
    private final YAMLParser parser;
    private final boolean hasLines;

    private YamlTree(YAMLParser parser, boolean hasLines, Faults faults) {
        this.parser = parser;
        this.hasLines = hasLines;
        this.faults = faults;
    }

    /**
     * Parses a file.
     *
     * @param source the text
     * @param faults takes what is wrong
     * @return the tree, with what could be read; empty if the text is not YAML or has no document
     */
    public static Optional<Node> parse(SourceText source, Faults faults) {
        return parse(source, new Origin(source.file(), 1, ""), faults);
    }

    /**
     * Parses a value that is not in a file.
     *
     * @param text the text
     * @param origin where it was given; its line is kept for all that is in it
     * @param faults takes what is wrong
     * @return the tree; empty if the text is not YAML; {@link Node.Nothing} if there is no text
     */
    public static Optional<Node> parseValue(String text, Origin origin, Faults faults) {
        if (text.isBlank()) {
            return Optional.of(new Node.Nothing(origin));
        }
        return parse(new SourceText(origin.file(), text), origin, faults);
    }

    private static Optional<Node> parse(SourceText source, Origin root, Faults faults) {
        try (YAMLParser parser = YAML.createParser(source.text())) {
            return new YamlTree(parser, root.line() > 0, faults).document(root);
        } catch (JsonProcessingException e) {
            faults.add(YamlSyntax.fault(root, e));
            return Optional.empty();
        } catch (IOException e) {
            throw new IllegalStateException("Reading from memory failed.", e);
        }
    }

    private Optional<Node> document(Origin root) throws IOException {
        if (parser.nextToken() == null) {
            faults.add(new Fault(
                    FaultKind.EMPTY_FILE,
                    Origin.ofFile(root.file()),
                    "(only comments)",
                    "Must have content.",
                    "fill it, or name another file"));
            return Optional.empty();
        }
        Node node = node(root, 0);
        if (parser.nextToken() != null) {
            faults.add(new Fault(
                    FaultKind.BAD_SYNTAX,
                    here(root),
                    "---",
                    "Must be one document.",
                    "put the second document into a file of its own"));
        }
        return Optional.of(node);
    }

    /** Reads the value at the current token. */
    private Node node(Origin origin, int depth) throws IOException {
        refuseAnchors(origin);
        JsonToken token = parser.currentToken();
        if (token.isStructStart() && depth == DEEPEST) {
            faults.add(new Fault(
                    FaultKind.TOO_DEEP,
                    origin,
                    parser.getText(),
                    "Must be nested at most " + DEEPEST + " deep.",
                    "take the extra brackets out"));
            parser.skipChildren();
            return new Node.Nothing(origin);
        }
        if (token == JsonToken.START_OBJECT) {
            return mapping(origin, depth);
        }
        if (token == JsonToken.START_ARRAY) {
            return sequence(origin, depth);
        }
        return token == JsonToken.VALUE_NULL ? new Node.Nothing(origin) : new Node.Text(origin, parser.getText());
    }

    private Node mapping(Origin origin, int depth) throws IOException {
        Map<String, Node> entries = new LinkedHashMap<>();
        Map<String, Integer> firstLines = new HashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String key = parser.currentName();
            Origin at = here(origin.child(key));
            refuseAnchors(at);
            parser.nextToken();
            Node value = node(at, depth + 1);
            Integer first = firstLines.putIfAbsent(key, at.line());
            if (first == null) {
                entries.put(key, value);
            } else {
                duplicate(value, first);
            }
        }
        return new Node.Mapping(origin, entries);
    }

    private Node sequence(Origin origin, int depth) throws IOException {
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(node(here(origin.child(Integer.toString(items.size()))), depth + 1));
        }
        return new Node.Sequence(origin, items);
    }

    private Origin here(Origin origin) {
        return hasLines ? origin.onLine(parser.currentTokenLocation().getLineNr()) : origin;
    }

    private void duplicate(Node value, int firstLine) {
        String where = hasLines ? " It already stands in line " + firstLine + "." : "";
        faults.add(new Fault(
                FaultKind.DUPLICATE_KEY,
                value.origin(),
                value.shown(),
                "Each key may be given once." + where,
                "delete one of the two, or rename it"));
    }

    private void refuseAnchors(Origin origin) throws IOException {
        String sign = parser.isCurrentAlias() ? "*" + parser.getText() : anchorOrTag();
        if (!sign.isEmpty()) {
            faults.add(new Fault(
                    FaultKind.ALIAS,
                    origin,
                    sign,
                    "YAML anchors (&), aliases (*) and tags (!) are not used in scenario files.",
                    "write the value out; what all lines share goes under every_line"));
        }
    }

    private String anchorOrTag() throws IOException {
        Object anchor = parser.getObjectId();
        Object tag = parser.getTypeId();
        return anchor != null ? "&" + anchor : tag != null ? "!" + tag : "";
    }
}
