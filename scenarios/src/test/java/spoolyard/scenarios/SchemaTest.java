package spoolyard.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.format.ScenarioSchema;
import spoolyard.scenarios.format.Unit;

final class SchemaTest {
    private static final YAMLMapper YAML = new YAMLMapper();

    private final JsonNode schemaTree;
    private final JsonSchema schema;

    SchemaTest() throws IOException {
        try (InputStream in = ScenarioSchema.open()) {
            schemaTree = YAML.readTree(in);
        }
        schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schemaTree);
    }

    static Stream<Path> soundFiles() throws IOException {
        try (Stream<Path> shipped = Files.walk(Path.of("."), 2)) {
            Stream<Path> own = Stream.of(
                    Path.of("src/main/resources/spoolyard/scenarios/starter/plant.yaml"),
                    ScenarioFolder.EVERYTHING.resolve("plant.yaml"));
            return Stream.concat(shipped.filter(p -> p.endsWith("plant.yaml")), own).toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("soundFiles")
    void acceptsEveryShippedFile(Path file) throws IOException {
        assertThat(schema.validate(YAML.readTree(Files.readString(file)))).isEmpty();
    }

    @Test
    void hasJustTheKeysThatTheReaderAsksFor() throws Exception {
        Reading reading = Reading.begin();

        ScenarioReader.read(ScenarioFolder.EVERYTHING, List.of(), reading);

        Map<String, Set<String>> asked = new TreeMap<>(reading.keys().keysByType());
        Set<String> onDate = asked.remove("shift_on_date");
        asked.get("extra_shift").addAll(onDate);
        asked.get("changed_shift").addAll(onDate);
        asked.get("scenario").add("base");
        asked.remove("heads");
        assertThat(asked).hasSizeGreaterThanOrEqualTo(38);
        asked.forEach((type, keys) -> assertThat(keysInSchema(type)).as(type).isEqualTo(keys));
    }

    @Test
    void describesNoMappingThatTheReaderDoesNotKnow() throws Exception {
        Reading reading = Reading.begin();
        ScenarioReader.read(ScenarioFolder.EVERYTHING, List.of(), reading);

        Set<String> described = new TreeSet<>();
        schemaTree.get("$defs").properties().forEach(def -> {
            if (def.getValue().has("additionalProperties") && def.getValue().has("properties")) {
                described.add(def.getKey().replaceAll("_(time_quantity|mass)$", ""));
            }
        });

        Set<String> asked = new TreeSet<>(reading.keys().keysByType().keySet());
        asked.removeAll(Set.of("scenario", "heads", "shift_on_date"));
        assertThat(described).isEqualTo(asked);
    }

    private Set<String> keysInSchema(String type) {
        JsonNode holder = type.equals("scenario")
                ? schemaTree
                : schemaTree.get("$defs").has(type)
                        ? schemaTree.get("$defs").get(type)
                        : schemaTree.get("$defs").get(type + "_time_quantity");
        Set<String> keys = new TreeSet<>();
        holder.get("properties").fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void acceptsTheUnitsOfADimensionAndNoOthers(Dimension dimension) {
        String pattern = schemaTree
                .get("$defs")
                .get(definition(dimension))
                .get("pattern")
                .asText();

        for (Dimension other : Dimension.values()) {
            for (Unit unit : other.units()) {
                boolean isOwn = dimension.unit(unit.symbol()).isPresent();
                assertThat("1.5 " + unit.symbol())
                        .satisfies(text -> assertThat(text.matches(pattern)).isEqualTo(isOwn));
            }
        }
    }

    private static String definition(Dimension dimension) {
        return dimension == Dimension.TIME ? "time_quantity" : dimension.name().toLowerCase(Locale.ROOT);
    }

    static Stream<Map<String, String>> faultsThatNeedNoOtherFile() throws IOException {
        Set<String> kinds = Set.of("WRONG_UNIT", "WRONG_SHAPE", "UNKNOWN_KEY");
        return PlantFaultsTest.plantedFaults()
                .filter(planted -> kinds.contains(planted.get("kind")))
                .filter(planted -> !planted.get("says").startsWith("/shifts/pattern/N/crew/"));
    }

    @ParameterizedTest
    @MethodSource("faultsThatNeedNoOtherFile")
    void rejectsPlantedFaults(Map<String, String> planted) throws IOException {
        String sound = Files.readString(ScenarioFolder.EVERYTHING.resolve("plant.yaml"));

        Set<ValidationMessage> found =
                schema.validate(YAML.readTree(sound.replace(planted.get("old"), planted.get("new"))));

        assertThat(found).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"spoolyard", "name", "time", "finishing"})
    void rejectsAScenarioWithoutAPartThatMustBeThere(String part) throws IOException {
        ObjectNode tree = (ObjectNode) YAML.readTree(Files.readString(ScenarioFolder.EVERYTHING.resolve("plant.yaml")));
        tree.remove(part);

        assertThat(schema.validate(tree))
                .extracting(ValidationMessage::getMessage)
                .anyMatch(m -> m.contains(part));
    }

    @Test
    void acceptsAVariationThatTakesThingsOut() throws IOException {
        String variation =
                "base: ../x\nlines: {L1: {soak: null, stoppages: {strand break: null}}}\nshifts: {pattern: {N: null}}\n";

        assertThat(schema.validate(YAML.readTree(variation))).isEmpty();
        assertThat(schema.validate(YAML.readTree(variation.replace("soak", "soka"))))
                .isNotEmpty();
    }
}
