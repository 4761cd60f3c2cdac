package spoolyard.analysis.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import spoolyard.analysis.experiment.Difference;
import spoolyard.core.quantity.Ticks;

/** Writes a comparison as JSON, in the form that {@code comparison.schema.json} lays down. */
public final class ComparisonJson {
    /** Marks a file as ours and says which form it has. */
    public static final String FORMAT = "spoolyard-results/comparison/1";

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Comparison comparison;

    /**
     * Prepares to write.
     *
     * @param comparison what
     */
    public ComparisonJson(Comparison comparison) {
        this.comparison = comparison;
    }

    /**
     * The comparison as text.
     *
     * @param files names of the other files of the results folder
     * @return JSON, two spaces to a level, with a final line break
     */
    public String text(List<String> files) {
        ObjectNode root = NODES.objectNode();
        root.put("$schema", ComparisonFiles.SCHEMA);
        root.put("format", FORMAT);
        root.put("version", comparison.plants().get(0).provenance().version());
        root.set("run", run());
        ArrayNode plants = root.putArray("plants");
        ArrayNode answers = root.putArray("answers");
        for (int plant = 0; plant < comparison.plants().size(); plant++) {
            plants.add(plant(plant));
            if (plant > 0) {
                answers.add(answer(plant));
            }
        }
        ArrayNode names = root.putArray("files");
        files.forEach(names::add);
        return JsonText.written(root);
    }

    private ObjectNode run() {
        ObjectNode node = NODES.objectNode();
        Setting base = comparison.plants().get(0).setting();
        long horizon = base.plant().horizonTicks();
        node.put("start", base.clock().start().toOffsetDateTime().toString());
        node.put("end", base.clock().at(horizon).toOffsetDateTime().toString());
        node.put("zone", base.clock().start().getZone().getId());
        node.set("horizon_h", JsonText.number(Ticks.toHours(horizon)));
        node.put("master_seed", comparison.plants().get(0).provenance().masterSeed());
        node.put("replications", comparison.replications());
        node.set(
                "simultaneous_confidence_level",
                JsonText.number(comparison.confidence().level()));
        node.put("statements", comparison.confidence().statements());
        node.set(
                "each_confidence_level", JsonText.number(comparison.confidence().eachLevel()));
        return node;
    }

    private ObjectNode plant(int plant) {
        Alternative alternative = comparison.plants().get(plant);
        ObjectNode node = NODES.objectNode();
        node.put("letter", Comparison.letter(plant));
        node.put("name", alternative.name());
        node.put("scenario", alternative.provenance().scenario());
        node.put("plant", alternative.setting().plant().name());
        node.put("hash", alternative.provenance().scenarioHash());
        ArrayNode settings = node.putArray("settings");
        alternative.provenance().settings().forEach(settings::add);
        ObjectNode means = node.putObject("means");
        comparison
                .measures()
                .forEach(measure -> means.set(measure.fileName(), JsonText.interval(comparison.mean(plant, measure))));
        return node;
    }

    private ObjectNode answer(int plant) {
        ObjectNode node = NODES.objectNode();
        node.put("letter", Comparison.letter(plant));
        node.put("name", comparison.plants().get(plant).name());
        node.put("sentence", new Answer(comparison, plant).text());
        ObjectNode differences = node.putObject("differences");
        for (Measure measure : comparison.measures()) {
            differences.set(measure.fileName(), difference(comparison.difference(plant, measure)));
        }
        return node;
    }

    private static ObjectNode difference(Difference difference) {
        ObjectNode node = NODES.objectNode();
        node.set("mean", JsonText.number(difference.interval().mean()));
        node.set("low", JsonText.number(difference.low()));
        node.set("high", JsonText.number(difference.high()));
        node.put("verdict", difference.verdict().name().toLowerCase(Locale.ROOT));
        node.set("variance_ratio", JsonText.number(difference.varianceRatio()));
        return node;
    }
}
