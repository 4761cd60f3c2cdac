package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What the plant loses of its full rate, in spools, the largest first; the smallest together, so that nothing is missing. */
final class LossList {
    private static final int INDENT = 13;
    private static final int MOST = 6;

    private final RunReport report;
    private final Ink ink;
    private final Cell cell;

    LossList(RunReport report, Ink ink) {
        this.report = report;
        this.ink = ink;
        this.cell = new Cell(ink);
    }

    /**
     * The whole, then the losses.
     *
     * @return lines of text
     */
    List<String> lines() {
        Estimates table = report.table(LossSheet.SHEET);
        List<List<String>> steps = table.keys().stream()
                .filter(key -> key.get(0).equals(LossSheet.ALL))
                .toList();
        List<String> lines = new ArrayList<>();
        if (steps.isEmpty()) {
            return lines;
        }
        lines.add(ink.strong(Cell.left("Spools lost", INDENT)) + "of "
                + cell.mean(table.at(steps.get(0), LossSheet.SPOOLS), 0) + " at " + Loss.FULL + ", until "
                + cell.mean(table.at(steps.get(steps.size() - 1), LossSheet.SPOOLS), 0) + " are good:");
        lines.addAll(losses(table, steps.subList(1, steps.size() - 1)));
        return lines;
    }

    private List<String> losses(Estimates table, List<List<String>> steps) {
        List<List<String>> largest = steps.stream()
                .filter(key -> table.at(key, LossSheet.SPOOLS).mean() != 0)
                .sorted(Comparator.comparingDouble(
                        key -> -Math.abs(table.at(key, LossSheet.SPOOLS).mean())))
                .toList();
        int shown = largest.size() > MOST ? MOST - 1 : largest.size();
        ThreeToALine losses = new ThreeToALine(INDENT);
        largest.subList(0, shown)
                .forEach(key ->
                        losses.add(key.get(1).replace("scrap: ", ""), cell.mean(table.at(key, LossSheet.SPOOLS), 0)));
        if (shown < largest.size()) {
            double others = largest.subList(shown, largest.size()).stream()
                    .mapToDouble(key -> table.at(key, LossSheet.SPOOLS).mean())
                    .sum();
            losses.add((largest.size() - shown) + " others", Figures.shown(others, 0));
        }
        return losses.lines();
    }
}
