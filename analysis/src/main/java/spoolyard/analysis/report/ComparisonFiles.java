package spoolyard.analysis.report;

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

/** The files of the results folder of a comparison. */
public final class ComparisonFiles implements ResultsFolder.Filling {
    /** The JSON Schema of its summary. */
    public static final String SCHEMA = "comparison.schema.json";

    static final String DIFFERENCES = "differences.csv";
    static final String ALTERNATIVES = "alternatives.csv";
    static final String REPLICATIONS = "replications.csv";

    private final Comparison comparison;
    private final Map<String, byte[]> pictures;

    /**
     * Prepares to write.
     *
     * @param comparison what
     * @param pictures pictures by file name; may be empty
     */
    public ComparisonFiles(Comparison comparison, Map<String, byte[]> pictures) {
        this.comparison = comparison;
        this.pictures = pictures;
    }

    /**
     * The schema.
     *
     * @return JSON Schema (2020-12) of the summary
     */
    public static String schema() {
        try (InputStream in = ComparisonFiles.class.getResourceAsStream(SCHEMA)) {
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
        List<String> names = new ArrayList<>(List.of(SCHEMA, DIFFERENCES, ALTERNATIVES, REPLICATIONS));
        names.addAll(pictures.keySet());
        return names;
    }

    @Override
    public void into(Path folder) throws IOException {
        ComparisonCsv csv = new ComparisonCsv(comparison);
        CsvTable.write(folder.resolve(DIFFERENCES), csv.differences());
        CsvTable.write(folder.resolve(ALTERNATIVES), csv.alternatives());
        CsvTable.write(folder.resolve(REPLICATIONS), csv.replications());
        for (Map.Entry<String, byte[]> picture : pictures.entrySet()) {
            Files.write(folder.resolve(picture.getKey()), picture.getValue());
        }
        Files.writeString(folder.resolve(SCHEMA), schema());
        Files.writeString(folder.resolve(ResultsFiles.SUMMARY), new ComparisonJson(comparison).text(names()));
    }
}
