package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Scrap by cause, the largest first, several to a line. */
final class ScrapList {
    private static final int INDENT = 13;
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
        Estimates table = report.table(LineSheets.SCRAP_CAUSES);
        ThreeToALine causes = new ThreeToALine(INDENT);
        worthShowing(table).forEach(key -> causes.add(key.get(0), cell.mean(table.at(key, LineSheets.CAUSE_PCT), 2)));
        lines.addAll(causes.lines());
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
}
