package spoolyard.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.format.ScenarioSchema;

/** The examples of the format's description are read, and it leaves no key out. */
final class FormatDocumentTest {
    private static final Path DOCUMENT = Path.of("../docs/scenario-format.md");
    private static final Pattern FENCE = Pattern.compile("(?m)^```(\\w+) (\\w+)\\n(.*?)^```$", Pattern.DOTALL);

    @TempDir
    private Path parent;

    /** A fenced example: language, tag and text. */
    record Example(String tag, String text) {}

    static Stream<Example> examples() throws IOException {
        Matcher fence = FENCE.matcher(Files.readString(DOCUMENT));
        List<Example> examples = new ArrayList<>();
        while (fence.find()) {
            examples.add(new Example(fence.group(2), fence.group(3)));
        }
        return examples.stream();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void readsEveryExample(Example example) {
        ScenarioFolder small = ScenarioFolder.copy(Path.of("two-lines"), parent);
        ScenarioFolder folder = ScenarioFolder.copy(Path.of("two-lines"), parent.resolve("example"));
        switch (example.tag()) {
            case "complete" -> folder.write("plant.yaml", example.text());
            case "variation" -> folder.write("plant.yaml", example.text().replace("../two-lines", shown(small)));
            case "part" -> folder.write("plant.yaml", "base: " + shown(small) + "\n" + example.text());
            default -> folder.write(example.tag() + ".csv", example.text());
        }

        Scenario scenario = folder.read(sets(folder, example));

        assertThat(scenario.plant().finishing().stations()).isNotEmpty();
    }

    private static String shown(ScenarioFolder folder) {
        return folder.path().toString();
    }

    private static String[] sets(ScenarioFolder folder, Example example) {
        String changeovers = "/files/changeovers=" + changeovers(folder, example);
        return example.tag().equals("plan")
                ? new String[] {
                    changeovers, "/orders={rule: given sequence, sequence: " + folder.shown("plan.csv") + "}"
                }
                : new String[] {changeovers};
    }

    private static String changeovers(ScenarioFolder folder, Example example) {
        return example.tag().equals("changeovers") ? folder.shown("changeovers.csv") : "null";
    }

    @Test
    void hasExamplesOfEverySort() throws IOException {
        assertThat(examples().map(Example::tag).distinct())
                .containsExactlyInAnyOrder("part", "variation", "complete", "orders", "colours", "changeovers", "plan");
    }

    @Test
    void explainsEveryKeyOfTheSchema() throws IOException {
        Set<String> keys = new TreeSet<>();
        try (InputStream in = ScenarioSchema.open()) {
            JsonNode schema = new ObjectMapper().readTree(in);
            schema.get("properties").fieldNames().forEachRemaining(keys::add);
            schema.get("$defs").forEach(def -> {
                if (def.has("additionalProperties") && def.has("properties")) {
                    def.get("properties").fieldNames().forEachRemaining(keys::add);
                }
            });
        }
        String text = Files.readString(DOCUMENT);

        assertThat(keys).hasSizeGreaterThan(100);
        assertThat(keys).filteredOn(key -> !text.contains("`" + key + "`")).isEmpty();
    }

    @Test
    void namesEveryUnit() throws IOException {
        String text = Files.readString(DOCUMENT);

        for (Dimension dimension : Dimension.values()) {
            String units = dimension.offeredUnits().replace(", ", "`, `");
            assertThat(text).contains("| " + dimension.label() + " | `" + units + "`");
            assertThat(text).contains("| `" + dimension.example() + "` |");
        }
    }
}
