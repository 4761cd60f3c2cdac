package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.IntStream;
import spoolyard.analysis.experiment.Difference;
import spoolyard.core.plant.Prices;

/** The differences of all measures, a row for each, two or three alternatives beside each other. */
final class DifferenceTable {
    private static final int LABEL = 23;
    private static final int BASE = 10;
    private static final int ROOM = 66;
    private static final int NARROW_CELL = 21;
    private static final int LONGEST_CURRENCY = 6;
    private static final List<String> LEGEND = List.of(
            "Alternative less base, rounded outwards; ? the data cannot tell. Variance ratio: how many times as",
            "many independent replications would be as sharp, for good spools per week (of all measures, from",
            "least to most): what the same luck for all saves.");

    private final Comparison comparison;
    private final Ink ink;
    private final int beside;
    private final int width;

    DifferenceTable(Comparison comparison, Ink ink) {
        this.comparison = comparison;
        this.ink = ink;
        int plants = comparison.plants().size();
        boolean isNarrow = comparison.measures().stream().allMatch(measure -> IntStream.range(1, plants)
                .allMatch(plant -> cell(plant, measure).length() <= NARROW_CELL));
        this.beside = isNarrow ? 3 : 2;
        this.width = ROOM / beside;
    }

    /**
     * The tables and what they mean.
     *
     * @return lines of text
     */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        int plants = comparison.plants().size();
        for (int first = 1; first < plants; first += beside) {
            List<Integer> shown = new ArrayList<>();
            for (int plant = first; plant < Math.min(plants, first + beside); plant++) {
                shown.add(plant);
            }
            lines.addAll(table(shown));
            lines.add("");
        }
        LEGEND.stream().map(ink::faint).forEach(lines::add);
        return lines;
    }

    private List<String> table(List<Integer> plants) {
        List<String> lines = new ArrayList<>();
        StringBuilder heading = new StringBuilder(Cell.left("", LABEL) + Cell.right("A", BASE));
        plants.forEach(plant -> heading.append(Cell.right(Comparison.letter(plant) + " less A  ", width)));
        lines.add(ink.strong(heading.toString().stripTrailing()));
        comparison.measures().forEach(measure -> lines.add(row(measure, plants)));
        StringBuilder ratios = new StringBuilder(Cell.left("Variance ratio", LABEL + BASE));
        plants.forEach(plant -> ratios.append(Cell.right(ratio(plant) + "  ", width)));
        lines.add(ink.faint(ratios.toString().stripTrailing()));
        return lines;
    }

    private String row(Measure measure, List<Integer> plants) {
        String base = Figures.shown(comparison.mean(0, measure).mean(), measure.decimals());
        StringBuilder row = new StringBuilder(Cell.left(label(measure), LABEL) + Cell.right(base, BASE));
        plants.forEach(plant -> row.append(Cell.right(cell(plant, measure), width)));
        return row.toString().stripTrailing();
    }

    private String cell(int plant, Measure measure) {
        Difference difference = comparison.difference(plant, measure);
        String mark = difference.verdict() == Difference.Verdict.OPEN ? " ?" : "  ";
        String text = difference.verdict() == Difference.Verdict.SAME
                ? "same"
                : Spread.of(difference).signed(measure.decimals());
        return text + mark;
    }

    private String label(Measure measure) {
        String currency = comparison.plants().get(0).setting().plant().economy().prices().stream()
                .map(Prices::currency)
                .map(name -> ", " + Cell.clipped(name, LONGEST_CURRENCY))
                .findFirst()
                .orElse("");
        return measure.label() + (measure == Measure.COST_PER_GOOD_SPOOL ? currency : "");
    }

    private String ratio(int plant) {
        DoubleSummaryStatistics all = comparison.measures().stream()
                .mapToDouble(measure -> comparison.difference(plant, measure).varianceRatio())
                .filter(ratio -> !Double.isNaN(ratio))
                .summaryStatistics();
        if (all.getCount() == 0) {
            return ink.none();
        }
        double ofSpools =
                comparison.difference(plant, Measure.GOOD_SPOOLS_PER_WEEK).varianceRatio();
        String first = Double.isNaN(ofSpools) ? ink.none() : Figures.shown(ofSpools, 1);
        return first + " (" + Figures.shown(all.getMin(), 1) + " to " + Figures.shown(all.getMax(), 1) + ")";
    }
}
