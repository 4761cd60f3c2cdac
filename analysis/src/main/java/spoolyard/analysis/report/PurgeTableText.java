package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import spoolyard.analysis.purge.PurgeEntry;
import spoolyard.analysis.purge.PurgeMatrix;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.Line;
import spoolyard.scenarios.check.PurgeBasis;

/**
 * The purges of a line as a table, from the row to the column. Immutable.
 *
 * @param matrix the purges
 * @param unit in what they are told
 */
public record PurgeTableText(PurgeMatrix matrix, PurgeUnit unit) {
    private static final int MOST_CHARACTERS = 100;
    private static final int NAME = 6;
    private static final List<String> LEGEND = List.of(
            "m measured; ' by the shade-class formula; ? unknown",
            "* extrapolated: beyond the measured colours, hold-ups or polymers; docs/purge.md");

    /**
     * The table under its heading.
     *
     * @param ink what the screen can show
     * @return lines of text, the last one empty
     */
    public List<String> lines(Ink ink) {
        List<String> lines = new ArrayList<>(heading(ink));
        List<Colour> columns = matrix.colours();
        int most = Math.max(1, (MOST_CHARACTERS - NAME) / width());
        int blocks = (columns.size() + most - 1) / most;
        for (int block = 0; block < blocks; block++) {
            int from = block * columns.size() / blocks;
            int to = (block + 1) * columns.size() / blocks;
            lines.add("");
            lines.addAll(block(columns.subList(from, to), ink));
        }
        lines.add("");
        LEGEND.forEach(line -> lines.add(ink.faint(line)));
        lines.add("");
        return lines;
    }

    private List<String> heading(Ink ink) {
        Line line = matrix.line();
        int strands = line.strands();
        return List.of(
                ink.strong(line.name() + ", " + matrix.polymer().code()) + ": purge from the row to the column, "
                        + unit.label(),
                "  " + Figures.cell(line.holdUpKg()) + " kg hold-up, " + strands
                        + (strands == 1 ? " strand" : " strands") + " of "
                        + Figures.cell(line.diametersMm().get(0)) + " mm, nominally "
                        + Figures.cell(line.nominalRateKgPerH()) + " kg/h",
                "  " + counts(),
                "  " + order());
    }

    private String counts() {
        Map<PurgeBasis, String> words = new LinkedHashMap<>();
        words.put(PurgeBasis.MEASURED, "measured");
        words.put(PurgeBasis.ESTIMATED, "estimated");
        words.put(PurgeBasis.EXTRAPOLATED, "extrapolated");
        words.put(PurgeBasis.FORMULA, "by formula");
        String counts = words.entrySet().stream()
                .filter(word -> matrix.count(word.getKey()) > 0)
                .map(word -> matrix.count(word.getKey()) + " " + word.getValue())
                .collect(Collectors.joining(", "));
        int pairs = matrix.entries().size();
        return pairs + (pairs == 1 ? " pair: " : " pairs: ") + (counts.isEmpty() ? "nothing known" : counts);
    }

    /** A rank correlation of -1 is light to dark without exception. */
    private String order() {
        double correlation = -matrix.correlationWithLightness();
        return "in the order of the purges, cheap changes to the right"
                + (Double.isNaN(correlation)
                        ? ""
                        : "; rank correlation with light to dark " + Figures.shown(correlation, 2));
    }

    private List<String> block(List<Colour> columns, Ink ink) {
        List<String> lines = new ArrayList<>();
        StringBuilder heading = new StringBuilder(" ".repeat(NAME));
        columns.forEach(to -> heading.append(Cell.right(Cell.clipped(to.code(), width() - 2) + " ", width())));
        lines.add(ink.strong(heading.toString().stripTrailing()));
        for (Colour from : matrix.colours()) {
            StringBuilder row = new StringBuilder(Cell.left(from.code(), NAME));
            columns.forEach(to -> row.append(cell(from, to, ink)));
            lines.add(row.toString().stripTrailing());
        }
        return lines;
    }

    private String cell(Colour from, Colour to, Ink ink) {
        String text = matrix.entry(from.code(), to.code())
                .map(entry -> unit.shown(entry) + mark(entry.basis()))
                .orElse((from.code().equals(to.code()) ? ink.none() : "?") + " ");
        return Cell.right(text, width());
    }

    private static String mark(PurgeBasis basis) {
        return switch (basis) {
            case MEASURED -> "m";
            case ESTIMATED -> " ";
            case EXTRAPOLATED -> "*";
            case FORMULA -> "'";
        };
    }

    private int width() {
        double largest = matrix.largest(unit::of);
        return largest >= 1000 ? 7 : 6;
    }

    /** For a list of lines: the dearest pair. */
    static PurgeEntry dearest(PurgeMatrix matrix) {
        return matrix.entries().stream()
                .reduce((one, other) -> other.kg() > one.kg() ? other : one)
                .orElseThrow();
    }
}
