package spoolyard.scenarios.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The columns a table may have, each under any of several names that plants' exports use. Immutable once built.
 *
 * <p>Names are compared in lower case, with runs of spaces, dots, stars and dashes as one underscore.
 */
public final class CsvColumns {
    private final Map<String, String> columnByName = new LinkedHashMap<>();
    private final List<String> required = new ArrayList<>();

    /** No columns yet. */
    public CsvColumns() {}

    /**
     * Adds a column that must be there.
     *
     * @param column its name in the program and in messages
     * @param otherNames further names it may have in a file
     * @return this
     */
    public CsvColumns need(String column, String... otherNames) {
        required.add(column);
        return may(column, otherNames);
    }

    /**
     * Adds a column that may be there.
     *
     * @param column its name in the program and in messages
     * @param otherNames further names it may have in a file
     * @return this
     */
    public CsvColumns may(String column, String... otherNames) {
        columnByName.put(normalised(column), column);
        for (String name : otherNames) {
            columnByName.put(normalised(name), column);
        }
        return this;
    }

    Optional<String> columnOf(String header) {
        return Optional.ofNullable(columnByName.get(normalised(header)));
    }

    List<String> required() {
        return required;
    }

    /** Every column once, under its first name. */
    List<String> all() {
        return columnByName.values().stream().distinct().toList();
    }

    private static String normalised(String header) {
        return header.strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[\\s.*\\-_]+", "_")
                .replaceAll("^_|_$", "");
    }
}
