package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import spoolyard.analysis.purge.PurgeEntry;
import spoolyard.analysis.purge.PurgeMatrix;
import spoolyard.scenarios.check.PurgeBasis;

/**
 * The purges of all lines, a row for each line and polymer. Immutable.
 *
 * @param matrices the purges
 */
public record PurgeOverview(List<PurgeMatrix> matrices) {
    private static final int NAME = 20;
    private static final int WIDTH = 13;

    /** Copies the list. */
    public PurgeOverview {
        matrices = List.copyOf(matrices);
    }

    /**
     * The table.
     *
     * @param ink what the screen can show
     * @return lines of text, the last one empty
     */
    public List<String> lines(Ink ink) {
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong(Cell.left("Line, polymer", NAME) + Cell.right("pairs", 7) + Cell.right("measured", WIDTH)
                + Cell.right("extrapolated", WIDTH) + Cell.right("mean kg", WIDTH) + "  dearest"));
        matrices.stream().filter(matrix -> !matrix.entries().isEmpty()).forEach(matrix -> lines.add(row(matrix)));
        lines.add("");
        return lines;
    }

    private static String row(PurgeMatrix matrix) {
        PurgeEntry dearest = PurgeTableText.dearest(matrix);
        double mean =
                matrix.entries().stream().mapToDouble(PurgeEntry::kg).average().orElse(0);
        return Cell.left(matrix.line().name() + " " + matrix.polymer().code(), NAME)
                + Cell.right(String.valueOf(matrix.entries().size()), 7)
                + Cell.right(String.valueOf(matrix.count(PurgeBasis.MEASURED)), WIDTH)
                + Cell.right(String.valueOf(matrix.count(PurgeBasis.EXTRAPOLATED)), WIDTH)
                + Cell.right(Figures.shown(mean, 1), WIDTH)
                + "  " + dearest.from() + " to " + dearest.to() + ": " + Figures.shown(dearest.kg(), 1) + " kg, "
                + Figures.shown(dearest.minutes(), 0) + " min";
    }
}
