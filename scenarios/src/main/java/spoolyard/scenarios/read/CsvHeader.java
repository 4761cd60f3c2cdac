package spoolyard.scenarios.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.fault.Nearest;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.fault.Warning;

/** Matches the header of a table with the columns it may have. */
final class CsvHeader {
    private final String file;
    private final CsvColumns columns;
    private final Faults faults;
    private final List<String> found = new ArrayList<>();

    CsvHeader(String file, CsvColumns columns, Faults faults) {
        this.file = file;
        this.columns = columns;
        this.faults = faults;
    }

    /** Column name of each cell of the header, under which rows are read; empty if the header is wrong. */
    Optional<List<String>> read(CsvRecords.Cells header) {
        int before = faults.count();
        List<String> unknown = new ArrayList<>();
        for (String name : header.texts()) {
            String column = columns.columnOf(name).orElse(name);
            if (found.contains(column)) {
                duplicate(header.line(), name);
            }
            if (columns.columnOf(name).isEmpty()) {
                unknown.add(name);
            }
            found.add(column);
        }
        unknown.forEach(name -> unknown(header.line(), name));
        columns.required().stream().filter(c -> !found.contains(c)).forEach(c -> missing(header.line(), c));
        return faults.count() == before ? Optional.of(found) : Optional.empty();
    }

    private void duplicate(int line, String name) {
        faults.add(new Fault(
                FaultKind.BAD_HEADER,
                new Origin(file, line, "header"),
                name.isEmpty() ? "(empty)" : name,
                "Each column may stand once in the header.",
                "rename or delete one of the two columns"));
    }

    private void missing(int line, String column) {
        faults.add(new Fault(
                FaultKind.BAD_HEADER,
                new Origin(file, line, column),
                "(no such column)",
                "Must be a column; the first row must hold the column names.",
                "add the column " + column + ", or correct its name"));
    }

    /** A near miss of a column that is not there is a slip; anything else is a column of the plant's own. */
    private void unknown(int line, String name) {
        Origin origin = new Origin(file, line, "header");
        List<String> absent =
                columns.all().stream().filter(c -> !found.contains(c)).toList();
        Optional<String> meant = Nearest.slipOf(name, absent);
        if (meant.isPresent()) {
            String allowed = "Must be a known column: " + String.join(", ", columns.all()) + ".";
            faults.add(new Fault(
                    FaultKind.UNKNOWN_KEY, origin, name, allowed, "rename it to " + meant.get() + ", or delete it"));
        } else {
            String shown = name.isEmpty() ? "(no name)" : name;
            faults.add(new Warning(Warning.Kind.COLUMN_IGNORED, origin, "column " + shown + " is not used."));
        }
    }
}
