package spoolyard.scenarios.check;

import java.util.List;
import spoolyard.scenarios.read.CsvRow;

/**
 * What was read of a table. Immutable.
 *
 * @param rows the rows that could be read
 * @param isWhole false: there were faults, so that rows may be missing
 */
record Table(List<CsvRow> rows, boolean isWhole) {
    /** A table that nobody asked for. */
    static final Table NONE = new Table(List.of(), true);

    /** Copies the rows. */
    Table {
        rows = List.copyOf(rows);
    }
}
