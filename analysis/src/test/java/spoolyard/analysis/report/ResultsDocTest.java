package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import spoolyard.core.record.ScrapCause;

/** Holds docs/results.md to what a run writes. */
final class ResultsDocTest {
    private static final Path DOC = Path.of("..", "docs", "results.md");

    @ParameterizedTest
    @MethodSource("files")
    void explainsEveryColumnOfEveryFile(Sheet<?> sheet) throws IOException {
        String section = section(sheet.name() + ".csv");

        for (String key : sheet.keyNames()) {
            assertThat(section).containsPattern("\\b" + key + "\\b");
        }
        for (Column<?> column : sheet.columns()) {
            String name = column.kind() == Column.Kind.INSTANT ? column.name() + "_local" : column.name();
            assertThat(section).containsPattern("\\b" + name + "\\b");
        }
    }

    @Test
    void explainsEveryNumberOfThePlant() throws IOException {
        String section = section("summary.json");

        for (Column<?> column : PlantSheet.SHEET.columns()) {
            assertThat(section).containsPattern("\\b" + column.name() + "\\b");
        }
    }

    @Test
    void explainsEveryCauseOfScrap() throws IOException {
        String section = section("scrap.csv");

        for (ScrapCause cause : ScrapCause.values()) {
            assertThat(section).contains(cause.label());
        }
    }

    @Test
    void namesThePictures() throws IOException {
        String section = section("Pictures");

        assertThat(Pictures.of(SampleReports.of(2, 1, 2)).keySet()).allMatch(section::contains);
    }

    @Test
    void hasEveryCautionWhereTheReportSaysItIs() {
        assertThat(Cautions.LINES.get(1)).endsWith("docs/cautions.md");
        assertThat(Path.of("..", "docs", "cautions.md")).isRegularFile();
    }

    private static Stream<Sheet<?>> files() {
        return Sheets.FILES.stream();
    }

    private static String section(String title) throws IOException {
        List<String> parts = List.of(Files.readString(DOC).split("(?m)^##+ "));
        return parts.stream()
                .filter(part -> part.startsWith(title + "\n"))
                .findFirst()
                .orElseThrow();
    }
}
