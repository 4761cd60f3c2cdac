package spoolyard.scenarios.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import spoolyard.core.plant.ChangeoverRules.MeasuredPurge;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.Numbers;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.read.CsvColumns;
import spoolyard.scenarios.read.CsvRow;
import spoolyard.scenarios.read.Node;

/** The measured changeovers of a plant, one a row. */
final class ChangeoverFile {
    static final CsvColumns COLUMNS = new CsvColumns()
            .need("from", "from_colour", "from_color")
            .need("to", "to_colour", "to_color")
            .need("purge_kg", "purge")
            .may("line")
            .may("polymer")
            .may("basis")
            .may("minutes")
            .may("metres_per_strand");

    private static final Kind<Double> PURGE_KG = Numbers.from("0", "2000");
    private static final Kind<PurgeBasis> BASIS = Words.oneOf(PurgeBasis.class);

    private final List<String> lines;
    private final List<String> polymers;
    private final Kind<String> colour;
    private final Reading reading;
    private final Set<List<String>> seen = new HashSet<>();

    ChangeoverFile(List<String> lines, List<String> polymers, Kind<String> colour, Reading reading) {
        this.lines = lines;
        this.polymers = polymers;
        this.colour = colour;
        this.reading = reading;
    }

    /** Rows of a table, in which each pair may stand once. */
    List<LoggedPurge> table(List<CsvRow> rows) {
        List<LoggedPurge> purges = log(rows);
        for (int i = 0; i < rows.size(); i++) {
            requireNew(purges.get(i).purge(), rows.get(i));
        }
        return purges;
    }

    /** Rows of a log, in which a pair may come again. */
    List<LoggedPurge> log(List<CsvRow> rows) {
        List<LoggedPurge> purges = new ArrayList<>();
        rows.forEach(row -> purges.add(
                new LoggedPurge(purge(row), basis(row), row.cell("purge_kg").origin())));
        return purges;
    }

    private MeasuredPurge purge(CsvRow row) {
        return new MeasuredPurge(
                nameOrAll(row.cell("line"), "line", lines),
                nameOrAll(row.cell("polymer"), "polymer", polymers),
                colour.read(row.cell("from"), reading),
                colour.read(row.cell("to"), reading),
                PURGE_KG.read(row.cell("purge_kg"), reading));
    }

    private void requireNew(MeasuredPurge purge, CsvRow row) {
        if (!seen.add(List.of(purge.line(), purge.polymer(), purge.fromColour(), purge.toColour()))) {
            reading.fault(
                    FaultKind.DUPLICATE_NAME,
                    row.cell("from"),
                    "Each pair may stand once for a line and polymer.",
                    "delete one of the two rows");
        }
    }

    private PurgeBasis basis(CsvRow row) {
        Node cell = row.cell("basis");
        return cell instanceof Node.Nothing ? PurgeBasis.MEASURED : BASIS.read(cell, reading);
    }

    private String nameOrAll(Node cell, String what, List<String> known) {
        boolean isAll = cell instanceof Node.Nothing || cell.shown().equals("*");
        return isAll ? "*" : Words.name(what, known).read(cell, reading);
    }
}
