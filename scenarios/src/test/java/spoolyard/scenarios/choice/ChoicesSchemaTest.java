package spoolyard.scenarios.choice;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoolyard.scenarios.fault.ScenarioException;
import spoolyard.scenarios.field.Reading;

/** The schema of a file of choices says what the reader says. */
final class ChoicesSchemaTest {
    private static final YAMLMapper YAML = new YAMLMapper();
    private static final Path SCHEMA = Path.of("src/main/resources/spoolyard/scenarios/spoolyard-choices.schema.json");
    private static final String OPTION = "choices:\n  c:\n    options:\n      o: {%s}\n";
    private static final String EVERY_KEY =
            """
            interest: 8 %
            choices:
              c:
                now: 60 m
                options:
                  o:
                    set: {/lines/L3/accumulator: 90 m}
                    buy: 800
                    buy_per_metre: 60
                    buy_per_winder: 28000
                    life_years: 10
                    per_year: 25
                    per_hour: wages
            """;

    private final JsonNode tree;
    private final JsonSchema schema;

    @TempDir
    private Path folder;

    ChoicesSchemaTest() throws IOException {
        tree = YAML.readTree(Files.readString(SCHEMA));
        schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(tree);
    }

    static Stream<Path> shippedFiles() throws IOException {
        try (Stream<Path> shipped = Files.walk(Path.of("."), 2)) {
            return shipped.filter(path -> path.endsWith("choices.yaml")).toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("shippedFiles")
    void acceptsEveryShippedFileAndIsNamedInIt(Path file) throws IOException {
        String text = Files.readString(file);

        assertThat(schema.validate(YAML.readTree(text))).isEmpty();
        String editorLine = "# yaml-language-server: $schema=";
        assertThat(text).startsWith(editorLine);
        Path named = file.resolveSibling(text.lines().findFirst().orElseThrow().substring(editorLine.length()));
        assertThat(named).hasSameBinaryContentAs(SCHEMA);
    }

    @Test
    void hasJustTheKeysThatTheReaderAsksFor() throws ScenarioException, IOException {
        Path file = folder.resolve("choices.yaml");
        Files.writeString(file, EVERY_KEY);
        Reading reading = Reading.begin();

        ChoicesFile.read(file, 10, reading);

        Map<String, Set<String>> described = new TreeMap<>();
        described.put("choices_file", keys(tree));
        described.put("choice", keys(tree.get("$defs").get("choice")));
        described.put("choice_option", keys(tree.get("$defs").get("choice_option")));
        assertThat(described).isEqualTo(new TreeMap<>(reading.keys().keysByType()));
        assertThat(schema.validate(YAML.readTree(EVERY_KEY))).isEmpty();
    }

    private static Set<String> keys(JsonNode mapping) {
        Set<String> keys = new TreeSet<>();
        mapping.get("properties").fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "set: {/lines/L3/accumulator: 90 m}",
                "set: {/lines/L3/accumulator: 90 m}, buy: -5, life_years: 3",
                "set: {/lines/L3/accumulator: 90 m}, buy: 5 EUR, life_years: 3",
                "set: {/lines/L3/accumulator: 90 m}, buy: 5",
                "set: {/lines/L3/accumulator: 90 m}, buy_per_winder: 5",
                "set: {/lines/L3/accumulator: 90 m}, buy: 5, life_years: 0",
                "set: {/lines/L3/accumulator: 90 m}, per_hour: much",
                "set: {/lines/L3/accumulator: 90 m}, per_year: 2000000000",
                "set: {/lines/L3/accumulator: 90 m}, price: 5, per_year: 0",
                "set: {accumulator: 90 m}, per_year: 0",
                "set: {}, per_year: 0",
                "per_year: 0"
            })
    void rejectsWhatTheReaderRejects(String option) throws IOException {
        String text = OPTION.formatted(option);

        assertThat(schema.validate(YAML.readTree(text))).isNotEmpty();
        assertThat(isRead(text)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "set: {/lines/L3/accumulator: 90 m}, per_year: 0",
                "set: {/lines/L3/accumulator: 90 m}, per_hour: 31.5",
                "set: {/lines/L3/winder: {type: manual}, /lines/L3/overflow: waste}, per_hour: wages",
                "set: {/a~1b/c~0d: [1, 2]}, buy_per_metre: 1e3, life_years: 2.5"
            })
    void acceptsWhatTheReaderAccepts(String option) throws IOException {
        String text = OPTION.formatted(option);

        assertThat(schema.validate(YAML.readTree(text))).isEmpty();
        assertThat(isRead(text)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"interest: 51 %", "interest: 8", "interest: -1 %", "rate: 3 %", "choices: {}", "{}"})
    void rejectsWhatIsWrongWithTheWhole(String head) throws IOException {
        boolean isWhole = head.startsWith("choices") || head.equals("{}");
        String text = isWhole ? head : head + "\n" + OPTION.formatted("set: {/a: 1}, per_year: 0");

        assertThat(schema.validate(YAML.readTree(text))).isNotEmpty();
        assertThat(isRead(text)).isFalse();
    }

    private boolean isRead(String text) throws IOException {
        Path file = folder.resolve("choices.yaml");
        Files.writeString(file, text);
        try {
            return !ChoicesFile.read(file, 100).all().isEmpty();
        } catch (ScenarioException refused) {
            assertThat(refused.faults()).isNotEmpty();
            return false;
        }
    }
}
