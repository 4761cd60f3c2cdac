package spoolyard.scenarios.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Faults;

/**
 * Reads a table with a header. The separator is {@code ;} if the header has more of these than commas; then numbers may
 * be written with a decimal comma all through. Rows of empty cells are passed over; quoted cells may run over several
 * lines.
 */
public final class CsvTable {
    private final SourceText source;
    private final CsvColumns columns;
    private final Faults faults;

    private CsvTable(SourceText source, CsvColumns columns, Faults faults) {
        this.source = source;
        this.columns = columns;
        this.faults = faults;
    }

    /**
     * Reads a table.
     *
     * @param source the text
     * @param columns the columns it may have
     * @param faults takes what is wrong with header, quotes and row lengths
     * @return the rows that have as many cells as the header; none if the header is wrong
     */
    public static List<CsvRow> rows(SourceText source, CsvColumns columns, Faults faults) {
        return new CsvTable(source, columns, faults).read();
    }

    private List<CsvRow> read() {
        List<CsvRecords.Cells> records = CsvRecords.of(source, faults);
        if (records.isEmpty()) {
            return List.of();
        }
        Optional<List<String>> header = new CsvHeader(source.file(), columns, faults).read(records.get(0));
        List<CsvRow> rows = new ArrayList<>();
        int width = records.get(0).texts().size();
        for (CsvRecords.Cells record : records.subList(1, records.size())) {
            if (isWhole(record, width)) {
                header.ifPresent(names -> rows.add(row(record, names)));
            }
        }
        return rows;
    }

    private CsvRow row(CsvRecords.Cells record, List<String> names) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < names.size(); i++) {
            cells.put(names.get(i), record.texts().get(i));
        }
        return new CsvRow(source.file(), record.line(), cells);
    }

    private boolean isWhole(CsvRecords.Cells record, int width) {
        int size = record.texts().size();
        String first = record.texts().get(0);
        if (first.matches("(?i)(grand |sub)?(total|sum|summe)s?:?")) {
            report(record, first, "Must be a row of the table, not a total.", "delete the row of totals");
            return false;
        }
        if (size != width) {
            String allowed = "Must have " + width + " cells like the header.";
            String mend = size < width
                    ? "fill in the missing cells (an empty cell still needs its separator), or delete the row"
                    : "put quotes around a cell that holds a separator, or delete the extra cells";
            report(record, size + " cells", allowed, mend);
        }
        return size == width;
    }

    private void report(CsvRecords.Cells record, String value, String allowed, String mend) {
        CsvRow row = new CsvRow(source.file(), record.line(), Map.of());
        faults.add(new Fault(FaultKind.ROW_LENGTH, row.origin("row"), value, allowed, mend));
    }
}
