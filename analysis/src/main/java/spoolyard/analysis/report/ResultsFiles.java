package spoolyard.analysis.report;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The files of a results folder. */
public final class ResultsFiles implements ResultsFolder.Filling {
    /** The headline numbers; marks the folder as ours. */
    public static final String SUMMARY = "summary.json";

    /** The JSON Schema of {@link #SUMMARY}. */
    public static final String SCHEMA = "summary.schema.json";

    private final RunReport report;
    private final Map<String, byte[]> pictures;

    /**
     * Prepares to write.
     *
     * @param report what
     * @param pictures pictures by file name; may be empty
     */
    public ResultsFiles(RunReport report, Map<String, byte[]> pictures) {
        this.report = report;
        this.pictures = pictures;
    }

    /**
     * The schema.
     *
     * @return JSON Schema (2020-12) of the summary
     */
    public static String schema() {
        try (InputStream in = ResultsFiles.class.getResourceAsStream(SCHEMA)) {
            return new String(Objects.requireNonNull(in, SCHEMA).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /**
     * Names of all files but the summary.
     *
     * @return schema, tables, pictures
     */
    public List<String> names() {
        List<String> names = new ArrayList<>();
        names.add(SCHEMA);
        Sheets.filesOf(report).forEach(sheet -> names.add(fileName(sheet)));
        names.add(BottleneckTrace.FILE);
        names.addAll(pictures.keySet());
        return names;
    }

    @Override
    public void into(Path folder) throws IOException {
        CsvTable csv = new CsvTable(report.setting().clock());
        for (Sheet<?> sheet : Sheets.filesOf(report)) {
            try (BufferedWriter out = Files.newBufferedWriter(folder.resolve(fileName(sheet)))) {
                csv.write(report.table(sheet), out);
            }
        }
        BottleneckTrace trace = BottleneckTrace.of(report.firstActivity());
        CsvTable.write(
                folder.resolve(BottleneckTrace.FILE),
                trace.table(report.setting().clock()));
        for (Map.Entry<String, byte[]> picture : pictures.entrySet()) {
            Files.write(folder.resolve(picture.getKey()), picture.getValue());
        }
        Files.writeString(folder.resolve(SCHEMA), schema());
        Files.writeString(folder.resolve(SUMMARY), new SummaryJson(report).text(names()));
    }

    private static String fileName(Sheet<?> sheet) {
        return sheet.name() + ".csv";
    }
}
