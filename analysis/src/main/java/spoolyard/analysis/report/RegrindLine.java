package spoolyard.analysis.report;

import java.util.Optional;
import spoolyard.analysis.experiment.Interval;
import spoolyard.core.plant.Prices;

/** What was ground and fed again, on one line of the screen; none for a plant that sells its scrap. */
final class RegrindLine {
    private static final int INDENT = 13;
    private static final int LONGEST_CURRENCY = 6;

    private final RunReport report;
    private final Ink ink;
    private final Cell cell;

    RegrindLine(RunReport report, Ink ink) {
        this.report = report;
        this.ink = ink;
        this.cell = new Cell(ink);
    }

    Optional<String> line() {
        return report.table(RegrindSheet.SHEET).keys().isEmpty() ? Optional.empty() : Optional.of(text());
    }

    private String text() {
        String taken = cell.text(total(RegrindSheet.TAKEN), 0) + " kg fed";
        String rest = " in place of resin (" + cell.mean(total(RegrindSheet.TAKEN_PCT), 2) + " %); "
                + cell.mean(total(RegrindSheet.GROUND), 0) + " kg of scrap ground" + money();
        return ink.strong(Cell.left("Regrind", INDENT) + taken)
                + Cell.clipped(rest, TextReport.MOST_COLUMNS - INDENT - taken.length());
    }

    private String money() {
        return report.setting().plant().economy().prices().map(this::money).orElse("");
    }

    private String money(Prices prices) {
        double gain =
                total(RegrindSheet.SAVED).mean() - total(RegrindSheet.FORGONE).mean();
        return "; " + Cell.clipped(prices.currency(), LONGEST_CURRENCY) + " " + Figures.shown(gain, 0) + " gained";
    }

    private Interval total(Column<RegrindRow> column) {
        return report.table(RegrindSheet.SHEET).at(RegrindSheet.TOTAL, column);
    }
}
