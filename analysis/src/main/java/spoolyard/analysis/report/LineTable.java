package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import spoolyard.analysis.experiment.Interval;

/** The lines of a plant and their sum, a row each. */
final class LineTable {
    private static final int MOST_ROWS = 10;
    private static final int NAME = 13;
    private static final int SPOOLS = 18;
    private static final int SHARE = 15;
    private static final int FACTOR = 8;
    private static final int LAST = 11;

    private final RunReport report;
    private final Ink ink;
    private final Cell cell;

    LineTable(RunReport report, Ink ink) {
        this.report = report;
        this.ink = ink;
        this.cell = new Cell(ink);
    }

    /**
     * Heading, lines, sum.
     *
     * @return lines of text
     */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong(heading()));
        Estimates table = report.table(LineSheets.LINES);
        List<List<String>> keys = table.keys();
        int shown = keys.size() > MOST_ROWS ? MOST_ROWS - 1 : keys.size();
        keys.subList(0, shown).forEach(key -> lines.add(row(key.get(0), of(table, key))));
        if (shown < keys.size()) {
            lines.add(ink.faint("  and " + (keys.size() - shown) + " more in lines.csv"));
        }
        lines.add(ink.strong(row("all", ofPlant())));
        return lines;
    }

    private static String heading() {
        return Cell.left("Line", NAME)
                + Cell.left("    spools/shift", SPOOLS)
                + Cell.left("   OEE %", SHARE)
                + Cell.right("avail.", FACTOR)
                + Cell.right("effect.", FACTOR)
                + Cell.right("quality", FACTOR)
                + Cell.left("   scrap %", SHARE)
                + Cell.right("overflow %", LAST);
    }

    private String row(String name, List<Interval> cells) {
        return (Cell.left(Cell.left(name, NAME - 1), NAME)
                        + cell.aligned(cells.get(0), 1, 8, SPOOLS - 8)
                        + cell.aligned(cells.get(1), 1, 6, SHARE - 6)
                        + Cell.right(cell.mean(cells.get(2), 1), FACTOR)
                        + Cell.right(cell.mean(cells.get(3), 1), FACTOR)
                        + Cell.right(cell.mean(cells.get(4), 1), FACTOR)
                        + cell.aligned(cells.get(5), 1, 6, SHARE - 6)
                        + Cell.right(cell.mean(cells.get(6), 2), LAST))
                .stripTrailing();
    }

    private static List<Interval> of(Estimates table, List<String> key) {
        return Stream.of(
                        LineSheets.SPOOLS_PER_SHIFT,
                        LineSheets.OEE,
                        LineSheets.AVAILABILITY,
                        LineSheets.EFFECTIVENESS,
                        LineSheets.QUALITY,
                        LineSheets.SCRAP_PCT,
                        LineSheets.OVERFLOW)
                .map(column -> table.at(key, column))
                .toList();
    }

    private List<Interval> ofPlant() {
        return Stream.of(
                        PlantSheet.SPOOLS_PER_SHIFT,
                        PlantSheet.OEE,
                        PlantSheet.AVAILABILITY,
                        PlantSheet.EFFECTIVENESS,
                        PlantSheet.QUALITY,
                        PlantSheet.SCRAP_PCT,
                        PlantSheet.OVERFLOW)
                .map(report::plant)
                .toList();
    }
}
