package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;

/** Names with numbers in three columns. */
final class ThreeToALine {
    private static final int COLUMNS = 3;
    private static final int WIDTH = 27;
    private static final int NAME = 16;

    private final int indent;
    private final List<String> cells = new ArrayList<>();

    /**
     * Nothing yet.
     *
     * @param indent blanks before each line
     */
    ThreeToALine(int indent) {
        this.indent = indent;
    }

    /**
     * Adds a name with its number.
     *
     * @param name cut if it is too long
     * @param number as text
     */
    void add(String name, String number) {
        cells.add(Cell.left(Cell.left(name, NAME - 1), NAME) + Cell.left(Cell.right(number, 4), WIDTH - NAME));
    }

    /**
     * The lines.
     *
     * @return three names to a line
     */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < cells.size(); i += COLUMNS) {
            List<String> some = cells.subList(i, Math.min(i + COLUMNS, cells.size()));
            lines.add((" ".repeat(indent) + String.join("", some)).stripTrailing());
        }
        return lines;
    }
}
