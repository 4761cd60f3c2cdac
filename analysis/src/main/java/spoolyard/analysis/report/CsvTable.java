package spoolyard.analysis.report;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import spoolyard.analysis.experiment.Interval;
import spoolyard.core.quantity.Ticks;

/** Writes a table as CSV: text columns, then mean and half-width of each number. */
final class CsvTable {
    /** Commas, decimal points, quotes where needed, one line break for all platforms. */
    static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();

    private final PlantClock clock;

    /**
     * Prepares to write.
     *
     * @param clock shows instants
     */
    CsvTable(PlantClock clock) {
        this.clock = clock;
    }

    /**
     * Writes rows of text.
     *
     * @param file where
     * @param rows the header first
     * @throws IOException if it cannot be written
     */
    static void write(Path file, List<List<String>> rows) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            for (List<String> row : rows) {
                FORMAT.printRecord(out, row.toArray());
            }
        }
    }

    /**
     * Writes a table.
     *
     * @param table what
     * @param out where
     * @throws IOException if it cannot be written
     */
    void write(Estimates table, Appendable out) throws IOException {
        FORMAT.printRecord(out, header(table.sheet()).toArray());
        for (List<String> key : table.keys()) {
            FORMAT.printRecord(out, cells(table, key).toArray());
        }
    }

    /**
     * Names of the columns.
     *
     * @param sheet a table
     * @return the header row
     */
    static List<String> header(Sheet<?> sheet) {
        List<String> names = new ArrayList<>(sheet.keyNames());
        for (Column<?> column : sheet.columns()) {
            boolean isInstant = column.kind() == Column.Kind.INSTANT;
            names.add(isInstant ? column.name() + "_local" : column.name());
            names.add(column.name() + (isInstant ? "_half_width_h" : "_half_width"));
        }
        return names;
    }

    private List<String> cells(Estimates table, List<String> key) {
        List<String> cells = new ArrayList<>(key);
        List<Interval> row = table.row(key);
        for (int i = 0; i < row.size(); i++) {
            cells.add(mean(row.get(i), table.sheet().columns().get(i).kind()));
            cells.add(Figures.cell(row.get(i).halfWidth().orElse(Double.NaN)));
        }
        return cells;
    }

    private String mean(Interval interval, Column.Kind kind) {
        if (kind == Column.Kind.NUMBER || !interval.isPresent()) {
            return Figures.cell(interval.mean());
        }
        return clock.minute(Math.round(interval.mean() * Ticks.PER_HOUR));
    }
}
