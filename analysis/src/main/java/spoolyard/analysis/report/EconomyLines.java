package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import spoolyard.core.plant.Economy;
import spoolyard.core.plant.Prices;

/** Energy, money and pointers to labour law on the screen: at most three lines, none for what nobody asked for. */
final class EconomyLines {
    private static final int INDENT = 13;
    private static final int LONGEST_CURRENCY = 6;
    private static final List<String> TOTAL = List.of(CostRow.TOTAL);

    private final RunReport report;
    private final Ink ink;
    private final Cell cell;

    EconomyLines(RunReport report, Ink ink) {
        this.report = report;
        this.ink = ink;
        this.cell = new Cell(ink);
    }

    /**
     * The lines.
     *
     * @return lines of text
     */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        Economy economy = report.setting().plant().economy();
        economy.prices().ifPresent(prices -> lines.addAll(costs(prices)));
        if (economy.energy().isPresent() && economy.prices().isEmpty()) {
            lines.add(headed("Energy", energy()));
        }
        int flags = report.setting().labourFlags().size();
        if (flags > 0) {
            lines.add(headed(
                    "Labour law",
                    flags + (flags == 1 ? " pointer" : " pointers")
                            + " for the roster, told by check; national law and agreements rule"));
        }
        return lines;
    }

    private List<String> costs(Prices prices) {
        Estimates parts = report.table(CostSheets.PARTS);
        String currency = Cell.clipped(prices.currency(), LONGEST_CURRENCY);
        String perSpool = currency + " " + cell.text(parts.at(TOTAL, CostSheets.PER_SPOOL), 2) + " a good spool";
        String first = Fitted.joined(perSpool + ": ", ", ", largest(parts), TextReport.MOST_COLUMNS - INDENT);
        List<String> rest = new ArrayList<>();
        prices.contributionPerKg()
                .ifPresent(perKg -> rest.add(currency + " "
                        + cell.text(report.table(CostSheets.LOST_CONTRIBUTION).at(TOTAL, CostSheets.LOST), 0)
                        + " contribution lost"));
        if (report.setting().plant().economy().energy().isPresent()) {
            rest.add(energy());
        }
        String all = currency + " " + cell.mean(parts.at(TOTAL, CostSheets.COST), 0) + " in all; ";
        String second = Fitted.joined(all, "; ", rest, TextReport.MOST_COLUMNS - INDENT);
        return List.of(headed("Cost", first.replace(perSpool, ink.strong(perSpool))), headed("", second));
    }

    /** What a spool costs by part, the largest first. */
    private List<String> largest(Estimates parts) {
        return parts.keys().stream()
                .filter(key -> !key.equals(TOTAL))
                .sorted(Comparator.comparingDouble(
                        key -> -Math.abs(parts.at(key, CostSheets.COST).mean())))
                .map(key -> key.get(0) + " " + cell.mean(parts.at(key, CostSheets.PER_SPOOL), 2))
                .toList();
    }

    private String energy() {
        Estimates uses = report.table(CostSheets.ENERGY_USES);
        return cell.mean(uses.at(TOTAL, CostSheets.KWH), 0) + " kWh, "
                + cell.mean(uses.at(TOTAL, CostSheets.KWH_PER_KG), 2) + " kWh/kg fed";
    }

    private String headed(String heading, String text) {
        return ink.strong(Cell.left(heading, INDENT)) + text;
    }
}
