package spoolyard.analysis.theory;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** A table of values from outside the project; `checks/SOURCES.md` in the test resources says where each comes from. */
public final class CheckTable {
    private CheckTable() {}

    /**
     * All rows of a table.
     *
     * @param name file below {@code checks}, for example {@code queueing/mm1.csv}
     * @return the rows, cells by column name
     */
    public static List<CSVRecord> rows(String name) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader reader = new InputStreamReader(
                CheckTable.class.getResourceAsStream("/checks/" + name), StandardCharsets.UTF_8)) {
            return format.parse(reader).getRecords();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /**
     * A cell as a number.
     *
     * @param row the row
     * @param column column name
     * @return the number
     */
    public static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
