package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ComparisonFilesTest {
    private static final JsonSchema SCHEMA =
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(ComparisonFiles.schema());

    @TempDir
    private Path folder;

    private final Comparison comparison = SampleComparisons.of(SampleComparisons.shift(20), SampleComparisons.shift(0));

    @Test
    void writesASummaryThatKeepsToItsSchema() throws JsonProcessingException {
        JsonNode summary = new ObjectMapper().readTree(new ComparisonJson(comparison).text(List.of("a.csv")));

        assertThat(SCHEMA.validate(summary)).isEmpty();
        assertThat(summary.at("/answers/0/differences/orders_late/verdict").asText())
                .isEqualTo("more");
        assertThat(summary.at("/answers/1/differences/orders_late/verdict").asText())
                .isEqualTo("open");
        assertThat(summary.at("/run/statements").asInt()).isEqualTo(18);
    }

    @Test
    void writesTheFilesItNames() throws IOException {
        ComparisonFiles files = new ComparisonFiles(comparison, Map.of("x.png", new byte[] {1}));

        files.into(folder);

        for (String name : files.names()) {
            assertThat(folder.resolve(name)).isRegularFile();
        }
        assertThat(folder.resolve("summary.json")).isRegularFile();
    }

    /** Two alternatives by nine measures, three plants, six replications of each; a header row each. */
    @Test
    void hasARowForEachThingCompared() throws IOException {
        new ComparisonFiles(comparison, Map.of()).into(folder);

        assertThat(Files.readAllLines(folder.resolve("differences.csv"))).hasSize(19);
        assertThat(Files.readAllLines(folder.resolve("alternatives.csv"))).hasSize(4);
        assertThat(Files.readAllLines(folder.resolve("replications.csv"))).hasSize(19);
    }

    @Test
    void explainsEveryColumnAndMeasureInTheDocumentation() throws IOException {
        String section = section("Comparisons");

        for (String header : new ComparisonCsv(comparison).differences().get(0)) {
            assertThat(section).containsPattern("\\b" + header + "\\b");
        }
        for (Measure measure : Measure.values()) {
            assertThat(section).containsPattern("\\b" + measure.fileName() + "\\b");
        }
        assertThat(section).contains("alternatives.csv", "replications.csv", DifferenceChart.FILE);
    }

    /** The interval of B lies right of the line at zero: ink of its colour, and grey for C whose interval holds zero. */
    @Test
    void drawsWhatIsSettledInAnotherColourThanWhatIsOpen() throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(new DifferenceChart(comparison).png()));

        assertThat(image.getWidth()).isEqualTo(ChartLook.WIDTH);
        assertThat(pixels(image, Palette.PETROL)).isGreaterThan(200);
        assertThat(pixels(image, Palette.STONE)).isGreaterThan(200);
        assertThat(image.getRGB(1, 1)).isEqualTo(Color.WHITE.getRGB());
    }

    private static long pixels(BufferedImage image, Color colour) {
        return IntStream.range(0, image.getWidth() * image.getHeight())
                .filter(i -> image.getRGB(i % image.getWidth(), i / image.getWidth()) == colour.getRGB())
                .count();
    }

    private static String section(String title) throws IOException {
        return List.of(Files.readString(Path.of("..", "docs", "results.md")).split("(?m)^## ")).stream()
                .filter(part -> part.startsWith(title + "\n"))
                .findFirst()
                .orElseThrow();
    }
}
