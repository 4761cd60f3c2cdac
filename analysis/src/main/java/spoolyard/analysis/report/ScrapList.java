package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Scrap by cause, the largest first, several to a line. */
final class ScrapList {
    private static final int INDENT = 13;
    private static final int TO_A_LINE = 3;
    private static final int WIDTH = 27;
    private static final int NAME = 16;
    private static final double WORTH_SHOWING_PCT = 0.005;

    private final RunReport report;
    private final Ink ink;
    private final Cell cell;

    ScrapList(RunReport report, Ink ink) {
        this.report = report;
        this.ink = ink;
        this.cell = new Cell(ink);
    }

    /**
     * The sum, then the causes.
     *
     * @return lines of text
     */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        String share = cell.text(report.plant(PlantSheet.SCRAP_PCT), 2) + " %";
        lines.add(ink.strong(Cell.left("Scrap", INDENT) + share) + " of "
                + cell.mean(report.plant(PlantSheet.FED_KG), 0) + " kg fed:");
        List<String> causes = causes();
        for (int i = 0; i < causes.size(); i += TO_A_LINE) {
            List<String> some = causes.subList(i, Math.min(i + TO_A_LINE, causes.size()));
            lines.add((" ".repeat(INDENT) + String.join("", some)).stripTrailing());
        }
        return lines;
    }

    /**
     * The causes that can be seen, the largest first.
     *
     * @param causes all causes
     * @return rows of those above some thousandths of a per cent
     */
    static List<List<String>> worthShowing(Estimates causes) {
        return causes.keys().stream()
                .filter(key -> causes.at(key, LineSheets.CAUSE_PCT).mean() >= WORTH_SHOWING_PCT)
                .sorted(Comparator.comparingDouble(
                        key -> -causes.at(key, LineSheets.CAUSE_PCT).mean()))
                .toList();
    }

    private List<String> causes() {
        Estimates table = report.table(LineSheets.SCRAP_CAUSES);
        return worthShowing(table).stream()
                .map(key -> Cell.left(key.get(0), NAME)
                        + Cell.left(cell.mean(table.at(key, LineSheets.CAUSE_PCT), 2), WIDTH - NAME))
                .toList();
    }
}
