package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What has run out, on one line of the screen; none for a plant that has nothing in store. */
final class StockLine {
    private static final int INDENT = 13;
    private static final double WORTH_SHOWING_H = 0.05;

    private final RunReport report;
    private final Ink ink;
    private final Cell cell;

    StockLine(RunReport report, Ink ink) {
        this.report = report;
        this.ink = ink;
        this.cell = new Cell(ink);
    }

    Optional<String> line() {
        Estimates stocks = report.table(StockSheet.SHEET);
        List<List<String>> awaited =
                stocks.keys().stream().filter(StockSheet::isAwaited).toList();
        if (awaited.isEmpty()) {
            return Optional.empty();
        }
        List<String> parts = new ArrayList<>();
        awaited.stream()
                .filter(key -> outH(key) >= WORTH_SHOWING_H)
                .sorted(Comparator.comparingDouble((List<String> key) -> -outH(key)))
                .forEach(key -> parts.add(
                        key.get(0) + " " + key.get(1) + " " + cell.text(stocks.at(key, StockSheet.OUT), 1) + " h"));
        String stood = ink.strong(
                "lines stood " + cell.text(report.plant(PlantSheet.STOOD_FOR_STORE), 1) + " h for want of material");
        String text = parts.isEmpty()
                ? stood + "; nothing of " + awaited.size() + " ran out"
                : Fitted.joined(stood + "; out: ", ", ", parts, TextReport.MOST_COLUMNS - INDENT);
        return Optional.of(ink.strong(Cell.left("Stores", INDENT)) + text);
    }

    private double outH(List<String> key) {
        return report.table(StockSheet.SHEET).at(key, StockSheet.OUT).mean();
    }
}
