package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ResultsFilesTest {
    @TempDir
    private Path folder;

    @Test
    void writesEveryFileThatTheSummaryNames() throws IOException {
        byte[] picture = "picture".getBytes(StandardCharsets.UTF_8);

        new ResultsFiles(SampleReports.of(2, 1, 2), Map.of("scrap.png", picture)).into(folder);

        JsonNode summary =
                new ObjectMapper().readTree(folder.resolve("summary.json").toFile());
        List<String> named = new ArrayList<>(List.of("summary.json"));
        summary.at("/files").forEach(name -> named.add(name.asText()));
        assertThat(named).contains("shifts.csv", "lines.csv", "orders.csv", "scrap.csv", "changeovers.csv");
        assertThat(named).contains("states.csv", "crew.csv", "scrap.png");
        assertThat(written()).containsExactlyInAnyOrderElementsOf(named);
    }

    @Test
    void writesTablesThatASpreadsheetReadsBack() throws IOException {
        RunReport report = SampleReports.of(2, 1, 3);

        new ResultsFiles(report, Map.of()).into(folder);

        List<CSVRecord> lines = records("lines.csv");
        assertThat(lines).hasSize(2);
        assertThat(Double.parseDouble(lines.get(1).get("good_spools")))
                .isEqualTo(Double.parseDouble(Figures.cell(report.table(LineSheets.LINES)
                        .at(List.of("L2"), LineSheets.LINES.columns().get(1))
                        .mean())));
        assertThat(records("orders.csv").get(0).get("due_local")).isEqualTo("2027-03-02 10:00");
        assertThat(records("shifts.csv")).hasSize(15);
    }

    @Test
    void writesTheSameBytesForTheSameRun() throws IOException {
        Path again = Files.createDirectory(folder.resolve("again"));

        new ResultsFiles(SampleReports.of(3, 1, 4), Map.of()).into(folder);
        new ResultsFiles(SampleReports.of(3, 1, 4), Map.of()).into(again);

        for (Sheet<?> sheet : Sheets.filesOf(SampleReports.of(3, 1, 4))) {
            assertThat(again.resolve(sheet.name() + ".csv"))
                    .hasSameBinaryContentAs(folder.resolve(sheet.name() + ".csv"));
        }
        assertThat(again.resolve("summary.json")).hasSameBinaryContentAs(folder.resolve("summary.json"));
    }

    private List<CSVRecord> records(String name) throws IOException {
        CSVFormat withHeader = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(folder.resolve(name), StandardCharsets.UTF_8, withHeader)) {
            return parser.getRecords();
        }
    }

    private List<String> written() throws IOException {
        try (Stream<Path> children = Files.list(folder)) {
            return children.map(child -> child.getFileName().toString()).toList();
        }
    }
}
