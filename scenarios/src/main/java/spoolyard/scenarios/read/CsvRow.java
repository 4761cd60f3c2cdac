package spoolyard.scenarios.read;

import java.util.Map;
import spoolyard.scenarios.fault.Origin;

/**
 * A row of a table. Immutable.
 *
 * @param file file name
 * @param line line on which the row begins, from 1
 * @param cells text by column name, for the columns the file has
 */
public record CsvRow(String file, int line, Map<String, String> cells) {
    /**
     * A cell as a value.
     *
     * @param column column name
     * @return its text; {@link Node.Nothing} if the cell is empty or the file has no such column
     */
    public Node cell(String column) {
        String text = cells.getOrDefault(column, "");
        return text.isEmpty() ? new Node.Nothing(origin(column)) : new Node.Text(origin(column), text);
    }

    /**
     * Where a cell stands.
     *
     * @param column column name
     * @return file, line and column
     */
    public Origin origin(String column) {
        return new Origin(file, line, column);
    }
}
