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

    private final PlantNames names;
    private final Products products;
    private final Reading reading;
    private final Set<List<String>> seen = new HashSet<>();

    ChangeoverFile(PlantNames names, Products products, Reading reading) {
        this.names = names;
        this.products = products;
        this.reading = reading;
    }

    List<LoggedPurge> read(List<CsvRow> rows) {
        List<LoggedPurge> purges = new ArrayList<>();
        rows.forEach(row -> purges.add(
                new LoggedPurge(purge(row), basis(row), row.cell("purge_kg").origin())));
        return purges;
    }

    private MeasuredPurge purge(CsvRow row) {
        Kind<String> colour = products.colourCode();
        MeasuredPurge purge = new MeasuredPurge(
                nameOrAll(row.cell("line"), "line", names.lines()),
                nameOrAll(row.cell("polymer"), "polymer", names.polymers()),
                colour.read(row.cell("from"), reading),
                colour.read(row.cell("to"), reading),
                PURGE_KG.read(row.cell("purge_kg"), reading));
        if (!seen.add(List.of(purge.line(), purge.polymer(), purge.fromColour(), purge.toColour()))) {
            reading.fault(
                    FaultKind.DUPLICATE_NAME,
                    row.cell("from"),
                    "Each pair may stand once for a line and polymer.",
                    "delete one of the two rows");
        }
        return purge;
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
