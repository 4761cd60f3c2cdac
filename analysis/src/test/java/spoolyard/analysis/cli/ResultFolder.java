package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * The tables of a run, as a person would read them in a spreadsheet.
 *
 * @param folder where the run wrote them
 */
record ResultFolder(Path folder) {
    /** The sum of a column over the rows that begin with the keys, at least one; {@code *} stands for any key. */
    double sum(String file, String column, String... keys) {
        List<CSVRecord> found =
                rows(file).stream().filter(row -> beginsWith(row, keys)).toList();
        assertThat(found)
                .as("rows of %s that begin with %s", file, List.of(keys))
                .isNotEmpty();
        return found.stream()
                .map(row -> row.get(column))
                .filter(cell -> !cell.isEmpty())
                .mapToDouble(Double::parseDouble)
                .sum();
    }

    /** All rows of a table. */
    List<CSVRecord> rows(String file) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try {
            return format.parse(Files.newBufferedReader(folder.resolve(file + ".csv")))
                    .getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean beginsWith(CSVRecord row, String... keys) {
        for (int i = 0; i < keys.length; i++) {
            if (!keys[i].equals("*") && !keys[i].equals(row.get(i))) {
                return false;
            }
        }
        return true;
    }
}
