package spoolyard.scenarios.check;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.format.PathText;
import spoolyard.scenarios.read.CsvColumns;
import spoolyard.scenarios.read.CsvRow;
import spoolyard.scenarios.read.CsvTable;
import spoolyard.scenarios.read.Node;
import spoolyard.scenarios.read.SourceFiles;

/**
 * The tables that a scenario names in its part {@code files}. Immutable.
 *
 * @param orders rows of the order book
 * @param colours rows of the colours
 * @param changeovers rows of the measured changeovers
 */
record Tables(Table orders, Table colours, Table changeovers) {
    /** No tables. */
    static final Tables NONE = new Tables(Table.NONE, Table.NONE, Table.NONE);

    /** Kind that opens the files. */
    static Kind<Tables> kind(SourceFiles files) {
        return new MappingKind<>(
                "files",
                r -> new Tables(
                        r.optional("orders", new TableKind(files, OrderFile.COLUMNS), Table.NONE),
                        r.optional("colours", new TableKind(files, ColourFile.COLUMNS), Table.NONE),
                        r.optional("changeovers", new TableKind(files, ChangeoverFile.COLUMNS), Table.NONE)));
    }

    /** Rows of one file. */
    record TableKind(SourceFiles files, CsvColumns columns) implements Kind<Table> {
        @Override
        public Table read(Node node, Reading reading) {
            int before = reading.faults().count();
            List<CsvRow> rows = rows(node, reading);
            return new Table(rows, reading.faults().count() == before);
        }

        private List<CsvRow> rows(Node node, Reading reading) {
            Optional<Path> path =
                    node instanceof Node.Text text ? PathText.resolve(text.text(), text.origin()) : Optional.empty();
            if (path.isEmpty()) {
                reading.fault(
                        FaultKind.NOT_A_VALUE,
                        node,
                        "Must be the name of a CSV file, relative to this file.",
                        "write for example orders.csv");
            }
            return path.flatMap(p -> files.open(p, node.origin(), SourceFiles.CSV_LIMIT_BYTES))
                    .map(source -> CsvTable.rows(source, columns, reading.faults()))
                    .orElse(List.of());
        }

        @Override
        public Table standIn() {
            return Table.NONE;
        }
    }
}
