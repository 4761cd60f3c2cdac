package spoolyard.analysis.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import spoolyard.analysis.bottleneck.Screening.Effects;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.experiment.TwoLevelDesign;
import spoolyard.scenarios.factor.Factor;

/** Main effects of factors, the largest first, for a screen and a spreadsheet. */
public final class EffectTable {
    private static final int NAME = 44;
    private static final int MEAN = 9;
    private static final int HALF = 9;
    private static final int MOST_ALIASES = 3;

    private final TwoLevelDesign design;
    private final List<Factor> factors;
    private final List<Effects> effects;
    private final Optional<String> currency;

    /**
     * Prepares to show.
     *
     * @param design the design
     * @param factors the factors, in the order of the design
     * @param effects one a factor
     * @param currency of the plant's prices; empty if it has none
     */
    public EffectTable(TwoLevelDesign design, List<Factor> factors, List<Effects> effects, Optional<String> currency) {
        this.design = design;
        this.factors = List.copyOf(factors);
        this.effects = effects.stream()
                .sorted(Comparator.comparingDouble(
                        each -> -Math.abs(each.goodPerWeek().mean())))
                .toList();
        this.currency = currency;
    }

    /**
     * For a screen.
     *
     * @param ink what the screen can show
     * @return lines of text
     */
    public List<String> lines(Ink ink) {
        Cell cell = new Cell(ink);
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong(row("From low to high", "good spools", "packed spools", cost("cost"))));
        lines.add(ink.faint(row("", "a week", "a week", cost(currency.orElse("") + " a spool"))));
        for (Effects each : effects) {
            String text = row(each, cell);
            lines.add(isSure(each.goodPerWeek()) ? ink.strong(text) : text);
        }
        lines.add("");
        lines.addAll(verdict());
        return lines;
    }

    private String cost(String text) {
        return currency.isPresent() ? text : "";
    }

    private static String row(String name, String... cells) {
        StringBuilder row = new StringBuilder(Cell.left(name, NAME));
        for (String cell : cells) {
            row.append(Cell.left(Cell.right(cell, MEAN + HALF - 3), MEAN + HALF));
        }
        return row.toString().stripTrailing();
    }

    private String row(Effects each, Cell cell) {
        Factor factor = factors.get(each.factor());
        String name = factor.name() + ": " + factor.low() + " to " + factor.high();
        return (Cell.left(Cell.clipped(name, NAME - 1), NAME)
                        + cell.aligned(each.goodPerWeek(), 0, MEAN, HALF)
                        + cell.aligned(each.packedPerWeek(), 0, MEAN, HALF)
                        + (currency.isPresent() ? cell.aligned(each.costPerSpool(), 3, MEAN, HALF) : ""))
                .stripTrailing();
    }

    private List<String> verdict() {
        List<String> lines = new ArrayList<>(
                List.of(told("good spools", Effects::goodPerWeek), told("packed spools", Effects::packedPerWeek)));
        if (currency.isPresent()) {
            lines.add(told("cost", Effects::costPerSpool));
        }
        String resolution =
                design.resolution().map(length -> "resolution " + length).orElse("full");
        lines.add("Design: " + design.factors() + " factors, " + design.runs() + " runs, " + resolution + ".");
        for (Effects each : effects) {
            List<List<Integer>> aliases = design.aliases(each.factor());
            if (!aliases.isEmpty() && isSure(each.goodPerWeek())) {
                lines.add("Not told apart from " + factors.get(each.factor()).name() + ": " + named(aliases));
            }
        }
        return lines;
    }

    private String told(String what, Function<Effects, Interval> measure) {
        List<String> sure = effects.stream()
                .filter(each -> isSure(measure.apply(each)))
                .map(each -> factors.get(each.factor()).name())
                .toList();
        return "Matters for " + what + ": " + (sure.isEmpty() ? "none that can be told" : String.join(", ", sure))
                + ".";
    }

    private String named(List<List<Integer>> aliases) {
        String some = aliases.stream()
                .limit(MOST_ALIASES)
                .map(pair -> factors.get(pair.get(0)).name() + " with "
                        + factors.get(pair.get(1)).name())
                .collect(Collectors.joining("; "));
        return some + (aliases.size() > MOST_ALIASES ? "; and " + (aliases.size() - MOST_ALIASES) + " more" : "") + ".";
    }

    private static boolean isSure(Interval effect) {
        return Math.abs(effect.mean()) > effect.halfWidth().orElse(Double.POSITIVE_INFINITY);
    }

    /**
     * For a spreadsheet.
     *
     * @return CSV with a heading
     */
    public String csv() {
        StringBuilder csv = new StringBuilder();
        try {
            CsvTable.FORMAT.printRecord(
                    csv,
                    "factor",
                    "pointer",
                    "low",
                    "high",
                    "good_spools_per_week",
                    "good_spools_per_week_half_width",
                    "packed_spools_per_week",
                    "packed_spools_per_week_half_width",
                    "cost_per_good_spool",
                    "cost_per_good_spool_half_width");
            for (Effects each : effects) {
                CsvTable.FORMAT.printRecord(csv, cells(each).toArray());
            }
        } catch (IOException impossibleInMemory) {
            throw new UncheckedIOException(impossibleInMemory);
        }
        return csv.toString();
    }

    private List<String> cells(Effects each) {
        Factor factor = factors.get(each.factor());
        List<String> cells = new ArrayList<>(List.of(factor.name(), factor.pointer(), factor.low(), factor.high()));
        for (Interval interval : List.of(each.goodPerWeek(), each.packedPerWeek(), each.costPerSpool())) {
            cells.add(Figures.cell(interval.mean()));
            cells.add(Figures.cell(interval.halfWidth().orElse(Double.NaN)));
        }
        return cells;
    }
}
