package spoolyard.analysis.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import spoolyard.analysis.bottleneck.MorrisScreening.Effects;
import spoolyard.analysis.bottleneck.MorrisScreening.Found;
import spoolyard.analysis.experiment.ElementaryEffects.Range;
import spoolyard.scenarios.factor.Factor;

/** Elementary effects of factors, the largest first, for a screen and a spreadsheet. */
public final class MorrisTable {
    private static final int NAME = 40;
    private static final int NUMBER = 9;
    private static final int INTERVAL = 15;
    private static final List<String> FIGURES = List.of(
            "mean", "size", "size_low", "size_high", "spread", "spread_low", "spread_high", "spread_by_chance");

    private final List<Factor> factors;
    private final List<Effects> effects;
    private final Optional<String> currency;

    /**
     * Prepares to show.
     *
     * @param factors the factors, in the order of the design
     * @param effects one a factor
     * @param currency of the plant's prices; empty if it has none
     */
    public MorrisTable(List<Factor> factors, List<Effects> effects, Optional<String> currency) {
        this.factors = List.copyOf(factors);
        this.effects = effects.stream()
                .sorted(Comparator.comparingDouble(
                        each -> -each.goodPerWeek().effects().size().value()))
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
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong(row("From low to high", "good", "spools a", "week:", "chance", "packed", cost("cost"))));
        lines.add(ink.faint(row("", "size", "95 % interval", "spread", "alone", "size", cost("size"))));
        for (Effects each : effects) {
            String text = row(each);
            lines.add(each.goodPerWeek().isSure() ? ink.strong(text) : text);
        }
        lines.add("");
        lines.addAll(told("good spools", Effects::goodPerWeek));
        lines.addAll(told("packed spools", Effects::packedPerWeek));
        if (currency.isPresent()) {
            lines.addAll(told("cost", Effects::costPerSpool));
        }
        lines.addAll(wrapped("Not straight, or by what others are: "
                + names(each -> each.goodPerWeek().isSure() && isUneven(each.goodPerWeek()))));
        return lines;
    }

    private String cost(String text) {
        return currency.isPresent() ? text : "";
    }

    private String row(Effects each) {
        Factor factor = factors.get(each.factor());
        Found good = each.goodPerWeek();
        Range size = good.effects().size();
        double cost = each.costPerSpool().effects().size().value();
        return row(
                factor.name() + ": " + factor.low() + " to " + factor.high(),
                Figures.shown(size.value(), 0),
                Figures.shown(size.low(), 0) + " to " + Figures.shown(size.high(), 0),
                Figures.shown(good.effects().spread().value(), 0),
                Figures.shown(good.luck(), 0),
                Figures.shown(each.packedPerWeek().effects().size().value(), 0),
                currency.isPresent() && Double.isFinite(cost) ? Figures.shown(cost, 3) : "");
    }

    private static String row(String name, String size, String interval, String... others) {
        StringBuilder row = new StringBuilder(Cell.left(Cell.clipped(name, NAME - 1), NAME));
        row.append(Cell.right(size, NUMBER)).append(Cell.right(interval, INTERVAL));
        for (String other : others) {
            row.append(Cell.right(other, NUMBER));
        }
        return row.toString().stripTrailing();
    }

    private List<String> told(String what, Function<Effects, Found> measure) {
        return wrapped("Matters for " + what + ": "
                + names(each -> measure.apply(each).isSure()));
    }

    private static List<String> wrapped(String text) {
        return Wrapped.lines(text + ".", "  ", TextReport.MOST_COLUMNS);
    }

    private String names(Function<Effects, Boolean> which) {
        String names = effects.stream()
                .filter(which::apply)
                .map(each -> factors.get(each.factor()).name())
                .collect(Collectors.joining(", "));
        return names.isEmpty() ? "none that can be told" : names;
    }

    /** The spread is at least half the size, and its interval lies above chance. */
    private static boolean isUneven(Found found) {
        Range spread = found.effects().spread();
        return spread.value() > found.effects().size().value() / 2 && spread.low() > found.luck();
    }

    /**
     * For a spreadsheet.
     *
     * @return CSV with a heading, a row for each factor and measure
     */
    public String csv() {
        StringBuilder csv = new StringBuilder();
        try {
            List<String> header = new ArrayList<>(List.of("factor", "pointer", "low", "high", "measure"));
            header.addAll(FIGURES);
            CsvTable.FORMAT.printRecord(csv, header.toArray());
            for (Effects each : effects) {
                CsvTable.FORMAT.printRecord(csv, cells(each, "good_spools_per_week", each.goodPerWeek()));
                CsvTable.FORMAT.printRecord(csv, cells(each, "packed_spools_per_week", each.packedPerWeek()));
                if (currency.isPresent()) {
                    CsvTable.FORMAT.printRecord(csv, cells(each, "cost_per_good_spool", each.costPerSpool()));
                }
            }
        } catch (IOException impossibleInMemory) {
            throw new UncheckedIOException(impossibleInMemory);
        }
        return csv.toString();
    }

    private Object[] cells(Effects each, String measure, Found found) {
        Factor factor = factors.get(each.factor());
        Range size = found.effects().size();
        Range spread = found.effects().spread();
        return new Object[] {
            factor.name(),
            factor.pointer(),
            factor.low(),
            factor.high(),
            measure,
            Figures.cell(found.effects().mean()),
            Figures.cell(size.value()),
            Figures.cell(size.low()),
            Figures.cell(size.high()),
            Figures.cell(spread.value()),
            Figures.cell(spread.low()),
            Figures.cell(spread.high()),
            Figures.cell(found.luck())
        };
    }
}
