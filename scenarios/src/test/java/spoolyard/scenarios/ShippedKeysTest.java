package spoolyard.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import spoolyard.scenarios.format.ScenarioSchema;

/**
 * The reference plant and its variations use the whole format: every key of the schema, which {@link SchemaTest} holds
 * against the reader, and every word, but for the alternatives to what they use.
 */
final class ShippedKeysTest {
    private static final YAMLMapper YAML = new YAMLMapper();
    private static final Map<String, String> ALTERNATIVES = new LinkedHashMap<>();

    static {
        ALTERNATIVES.put(
                "duration\\.(fixed|gamma|weibull|observed)|(gamma|weibull)_time_quantity\\..*",
                "any law may stand wherever one stands; Orrenvale has the four that its sources give");
        ALTERNATIVES.put(
                "amount\\..*|.*_mass\\..*|(line|station)_stoppage\\.clock=(mass|calendar time)",
                "a stoppage has one clock; all of Orrenvale's go by running time");
        ALTERNATIVES.put("gauge\\.excursions|excursions\\..*", "in place of diameter, from which they are derived");
        ALTERNATIVES.put(
                "energy\\.(heat_up|hot_standby|lines)|line_energy\\..*", "in place of zones, from which they follow");
        ALTERNATIVES.put(
                "purge_estimate\\.surface|surface\\..*", "the colours were measured without the light of the surface");
        ALTERNATIVES.put(
                "purge_estimate\\.(measured_under=D(50|65) .*|washout=single screw)"
                        + "|washout\\.(laminar_pipe|tanks_in_series)",
                "one light and one washout hold for a plant");
        ALTERNATIVES.put(
                "exposure\\.(beyond=(scrap|seal)|order=first come)|lab\\.hold=before sealing|materials\\.when_short=wait"
                        + "|orders\\.rule=least purge next|sampling\\.level=(S-.|I|III)|line\\.overflow=waste",
                "one policy holds at a time; another is used");
        ALTERNATIVES.put("shifts\\.system=.*", "a roster follows one system");
        ALTERNATIVES.put(
                "role\\.priorities=.*",
                "kinds of work that a role does not name follow in the usual order, which they do");
        ALTERNATIVES.put(
                "shift\\.breaks=none|station\\.open=always|test\\.each=lot", "says what holds if nothing is said");
        ALTERNATIVES.put("yes_or_no=(yes|no)", "this test's reader of YAML takes them for true and false");
    }

    private final JsonNode schema;

    ShippedKeysTest() throws IOException {
        try (InputStream in = ScenarioSchema.open()) {
            schema = YAML.readTree(in);
        }
    }

    private static List<JsonNode> orrenvale() throws IOException {
        try (Stream<Path> folders = Files.list(Path.of("."))) {
            return folders.filter(folder -> folder.getFileName().toString().startsWith("orrenvale"))
                    .map(folder -> read(folder.resolve("plant.yaml")))
                    .toList();
        }
    }

    private static JsonNode read(Path file) {
        try {
            return YAML.readTree(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private SortedSet<String> unused(List<JsonNode> files) {
        SchemaWalk walk = new SchemaWalk(schema);
        files.forEach(walk::use);
        SortedSet<String> all = walk.all();
        assertThat(all).hasSizeGreaterThan(450).containsAll(walk.used());
        SortedSet<String> unused = new TreeSet<>(all);
        unused.removeAll(walk.used());
        return unused;
    }

    private static boolean isAlternative(String key) {
        return ALTERNATIVES.keySet().stream().anyMatch(key::matches);
    }

    @Test
    void usesEveryKeyAndWordOfTheFormat() throws IOException {
        assertThat(unused(orrenvale())).filteredOn(key -> !isAlternative(key)).isEmpty();
    }

    @Test
    void namesNoAlternativeThatIsUsed() throws IOException {
        SortedSet<String> unused = unused(orrenvale());

        assertThat(ALTERNATIVES.keySet()).allMatch(kind -> unused.stream().anyMatch(key -> key.matches(kind)));
    }

    @Test
    void findsAKeyThatIsTakenOutOfTheScenarios() throws IOException {
        List<JsonNode> files = orrenvale();
        for (JsonNode file : files) {
            ((ObjectNode) file).remove("exposure");
            file.path("lines").forEach(line -> ((ObjectNode) line).remove("end_of_period"));
        }

        assertThat(unused(files)).filteredOn(key -> !isAlternative(key)).contains("oven.batch", "scenario.exposure");
        assertThat(unused(files)).contains("line.end_of_period=hot standby", "line.end_of_period=run on");
    }

    /** By hand: one key of the scenario, two of the first polymer, none of the second, a word, and a law. */
    @Test
    void walksALittleFileAsByHand() throws IOException {
        SchemaWalk walk = new SchemaWalk(schema);

        walk.use(YAML.readTree("polymers: {PLA: {density: 1 g/cm3, drying: 4 h}, PETG: {density: null}}\n"
                + "every_line: {end_of_period: run on, soak: {gamma: {mean: 30 min, cv: 1}}}\n"));

        assertThat(walk.used())
                .containsExactly(
                        "duration.gamma",
                        "gamma_time_quantity.cv",
                        "gamma_time_quantity.mean",
                        "line.end_of_period",
                        "line.end_of_period=run on",
                        "line.soak",
                        "polymer.density",
                        "polymer.drying",
                        "scenario.every_line",
                        "scenario.polymers");
    }
}
