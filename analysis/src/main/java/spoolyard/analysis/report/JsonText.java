package spoolyard.analysis.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import spoolyard.analysis.experiment.Interval;

/** How all our JSON is written: numbers as in the CSV files, two spaces to a level, a final line break. */
final class JsonText {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();

    private JsonText() {}

    /**
     * A number.
     *
     * @param value any value
     * @return the number; null if it is not a number
     */
    static JsonNode number(double value) {
        return Figures.exact(value).<JsonNode>map(NODES::numberNode).orElse(NODES.nullNode());
    }

    /**
     * Mean and half-width.
     *
     * @param interval an interval
     * @return both, null where there is none
     */
    static ObjectNode interval(Interval interval) {
        ObjectNode node = NODES.objectNode();
        node.set("mean", number(interval.mean()));
        node.set("half_width", number(interval.halfWidth().orElse(Double.NaN)));
        return node;
    }

    /**
     * The text.
     *
     * @param root the whole
     * @return JSON
     */
    static String written(ObjectNode root) {
        DefaultIndenter twoSpaces = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(twoSpaces).withArrayIndenter(twoSpaces);
        try {
            return MAPPER.writer(printer).writeValueAsString(root) + "\n";
        } catch (JsonProcessingException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** The opening of a summary: its format, and where the results come from. */
    static ObjectNode opening(String format, Provenance from) {
        ObjectNode root = headed(format, from);
        scenario(root, from);
        root.put("master_seed", from.masterSeed());
        return root;
    }

    /** A summary with its format and the version of the program. */
    static ObjectNode headed(String format, Provenance from) {
        ObjectNode root = NODES.objectNode();
        root.put("format", format);
        root.put("version", from.version());
        return root;
    }

    /** Puts in which scenario it is. */
    static void scenario(ObjectNode node, Provenance from) {
        node.put("scenario", from.scenario());
        node.put("hash", from.scenarioHash());
        from.settings().forEach(node.putArray("settings")::add);
    }
}
