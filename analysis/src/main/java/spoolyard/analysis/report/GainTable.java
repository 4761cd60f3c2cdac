package spoolyard.analysis.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoolyard.analysis.bottleneck.Gain;
import spoolyard.analysis.experiment.Difference;

/** What each relief brings, for a screen, a spreadsheet and as a picture. */
public final class GainTable {
    private static final int NAME = 42;
    private static final int MEAN = 9;
    private static final int HALF = 9;
    private static final int MOST = 24;
    private static final int FIRST = 6;
    private static final int MOST_BARS = 12;
    private static final List<String> HEADER = List.of(
            "kind",
            "station",
            "change",
            "good_spools_per_week",
            "good_spools_per_week_half_width",
            "packed_spools_per_week",
            "packed_spools_per_week_half_width",
            "cost_per_good_spool",
            "cost_per_good_spool_half_width",
            "net_gain_per_week",
            "net_gain_per_week_half_width");

    private final List<Gain> gains;
    private final Optional<String> currency;

    /**
     * Prepares to show.
     *
     * @param gains the most extra good spools first
     * @param currency of the plant's prices; empty if it has none
     */
    public GainTable(List<Gain> gains, Optional<String> currency) {
        this.gains = List.copyOf(gains);
        this.currency = currency;
    }

    /**
     * For a screen: the first few, and all that can be told from nothing.
     *
     * @param ink what the screen can show
     * @return lines of text
     */
    public List<String> lines(Ink ink) {
        Cell cell = new Cell(ink);
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong(row("Relief", "good spools", "packed spools", hasMoney() ? "net gain" : "")));
        lines.add(ink.faint(row("", "a week", "a week", hasMoney() ? currency.orElseThrow() + " a week" : "")));
        List<Gain> shown = shown();
        for (Gain gain : shown) {
            String text = row(gain, cell);
            lines.add(gain.isSure() ? ink.strong(text) : text);
        }
        if (shown.size() < gains.size()) {
            lines.add("  and " + (gains.size() - shown.size()) + " more with less or nothing to tell");
        }
        lines.add("");
        lines.addAll(verdict(cell));
        lines.addAll(Cautions.LINES.stream().map(ink::faint).toList());
        return lines;
    }

    private static String row(String name, String... cells) {
        StringBuilder row = new StringBuilder(Cell.left(name, NAME));
        for (String cell : cells) {
            row.append(Cell.left(Cell.right(cell, MEAN + HALF - 3), MEAN + HALF));
        }
        return row.toString().stripTrailing();
    }

    private String row(Gain gain, Cell cell) {
        String text = Cell.left(Cell.clipped(gain.relief().label(), NAME - 1), NAME)
                + cell.aligned(gain.goodPerWeek().interval(), 0, MEAN, HALF)
                + cell.aligned(gain.packedPerWeek().interval(), 0, MEAN, HALF)
                + (hasMoney() ? cell.aligned(gain.contributionPerWeek().interval(), 0, MEAN, HALF) : "");
        return text.stripTrailing();
    }

    private boolean hasMoney() {
        return currency.isPresent()
                && gains.stream()
                        .anyMatch(gain -> gain.contributionPerWeek().interval().isPresent());
    }

    private List<Gain> shown() {
        List<Gain> telling = gains.stream()
                .filter(gain -> gain.isSure() || gain.isHarmful() || gains.indexOf(gain) < FIRST)
                .toList();
        return telling.subList(0, Math.min(MOST, telling.size()));
    }

    private List<String> verdict(Cell cell) {
        List<Gain> sure = gains.stream().filter(Gain::isSure).toList();
        if (sure.isEmpty()) {
            return List.of(
                    "No relief by itself can be told from nothing. Either nothing here is the bottleneck, or there are",
                    "too few replications. Where orders run out before time, more capacity makes no more spools.");
        }
        Gain best = sure.get(0);
        List<String> lines = new ArrayList<>();
        lines.add("The most comes of " + best.relief().label() + ": "
                + cell.text(best.goodPerWeek().interval(), 0) + " good spools a week.");
        long near = sure.stream()
                .filter(gain -> gain.goodPerWeek().high() >= best.goodPerWeek().low())
                .count();
        if (near > 1) {
            lines.add("Not to be told from it by these intervals: " + (near - 1) + " more.");
        }
        if (hasMoney()) {
            lines.add(
                    "Net gain: contribution of the extra good kilograms less extra labour, before what it costs to buy.");
        }
        return lines;
    }

    /**
     * For a spreadsheet: all of them.
     *
     * @return CSV with a heading
     */
    public String csv() {
        StringBuilder csv = new StringBuilder();
        try {
            CsvTable.FORMAT.printRecord(csv, HEADER.toArray());
            for (Gain gain : gains) {
                CsvTable.FORMAT.printRecord(csv, cells(gain).toArray());
            }
        } catch (IOException impossibleInMemory) {
            throw new UncheckedIOException(impossibleInMemory);
        }
        return csv.toString();
    }

    private static List<String> cells(Gain gain) {
        List<String> cells = new ArrayList<>(List.of(
                gain.relief().kind().label(),
                gain.relief().station(),
                gain.relief().change()));
        for (Difference difference :
                List.of(gain.goodPerWeek(), gain.packedPerWeek(), gain.costPerSpool(), gain.contributionPerWeek())) {
            cells.add(Figures.cell(difference.interval().mean()));
            cells.add(Figures.cell(difference.interval().halfWidth().orElse(Double.NaN)));
        }
        return cells;
    }

    /**
     * As a picture: the largest, with intervals.
     *
     * @return PNG
     */
    public byte[] png() {
        IntervalBars bars = new IntervalBars("What relieving one thing brings", "Extra good spools a week");
        gains.stream()
                .limit(MOST_BARS)
                .forEach(gain ->
                        bars.add(gain.relief().label(), gain.goodPerWeek().interval()));
        return Pictures.png(bars.chart());
    }
}
