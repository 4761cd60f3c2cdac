package spoolyard.scenarios.fault;

/**
 * Where a value was written. Immutable.
 *
 * <p>Example: {@code new Origin("plant.yaml", 12, "/lines/L3/rate")}.
 *
 * @param file file name as a person would type it, or the command-line option that gave the value
 * @param line line in the file, from 1; 0 where a line means nothing
 * @param field JSON Pointer (RFC 6901) in a tree, column name in a table
 */
public record Origin(String file, int line, String field) {
    /**
     * The origin of a file as a whole.
     *
     * @param file file name
     * @return an origin with no line and the field {@code file}
     */
    public static Origin ofFile(String file) {
        return new Origin(file, 0, "file");
    }

    /**
     * A value inside this one, on the same line.
     *
     * @param key key or index; escaped as RFC 6901 asks
     * @return its origin
     */
    public Origin child(String key) {
        return new Origin(file, line, field + "/" + key.replace("~", "~0").replace("/", "~1"));
    }

    /**
     * The same field on another line.
     *
     * @param otherLine the line, from 1
     * @return its origin
     */
    public Origin onLine(int otherLine) {
        return new Origin(file, otherLine, field);
    }

    /**
     * File and line for people.
     *
     * @return for example {@code plant.yaml:12}
     */
    public String where() {
        return line > 0 ? file + ":" + line : file;
    }

    /**
     * Field name for people.
     *
     * @return the field, or {@code the whole file} for the root of a tree
     */
    public String shownField() {
        return field.isEmpty() ? "the whole file" : field;
    }
}
