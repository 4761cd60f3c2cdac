package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** A comparison on the screen: a sentence for each alternative, then the differences in tables. */
public final class ComparisonText {
    private final Comparison comparison;
    private final Ink ink;

    /**
     * Prepares to write.
     *
     * @param comparison what
     * @param ink what the screen can show
     */
    public ComparisonText(Comparison comparison, Ink ink) {
        this.comparison = comparison;
        this.ink = ink;
    }

    /**
     * What is compared: known before the runs, so it can be shown at once.
     *
     * @param plants the base, then its alternatives
     * @param ink what the screen can show
     * @return lines without line breaks, the last one empty
     */
    public static List<String> heading(List<Alternative> plants, Ink ink) {
        Setting base = plants.get(0).setting();
        String span = ", " + base.clock().minute(0) + " to "
                + base.clock().minute(base.plant().horizonTicks());
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong(Cell.clipped(base.plant().name(), TextReport.MOST_COLUMNS - span.length())) + span);
        for (int i = 0; i < plants.size(); i++) {
            String name = Comparison.letter(i) + "  " + plants.get(i).name() + (i == 0 ? " (the base)" : "");
            lines.add(Cell.clipped(name, TextReport.MOST_COLUMNS));
        }
        lines.add("");
        return lines;
    }

    /**
     * The answer.
     *
     * @return lines without line breaks
     */
    public List<String> body() {
        List<String> lines = new ArrayList<>();
        for (String line : Wrapped.lines(guarantee(), "", TextReport.MOST_COLUMNS)) {
            lines.add(ink.faint(line));
        }
        lines.add("");
        for (int plant = 1; plant < comparison.plants().size(); plant++) {
            lines.addAll(sentences(plant));
        }
        lines.add("");
        lines.addAll(new DifferenceTable(comparison, ink).lines());
        lines.addAll(notes());
        lines.add("");
        Cautions.LINES.stream().map(ink::faint).forEach(lines::add);
        return lines;
    }

    private List<String> sentences(int plant) {
        List<String> lines = Wrapped.lines(new Answer(comparison, plant).text(), "  ", TextReport.MOST_COLUMNS);
        List<String> emphasised = new ArrayList<>(lines);
        emphasised.set(
                0, ink.strong(lines.get(0).substring(0, 1)) + lines.get(0).substring(1));
        return emphasised;
    }

    private String guarantee() {
        int alternatives = comparison.plants().size() - 1;
        return comparison.replications() + " replications of each, seed "
                + comparison.plants().get(0).provenance().masterSeed() + ", the same luck for all. With "
                + Figures.shown(100 * comparison.confidence().level(), 0)
                + " % confidence all statements hold at once (Bonferroni, "
                + comparison.measures().size() + " measures x " + alternatives
                + (alternatives == 1 ? " alternative" : " alternatives") + ").";
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        IntStream.range(0, comparison.plants().size())
                .filter(plant -> labourFlags(plant) > 0)
                .mapToObj(plant -> Comparison.letter(plant) + " " + labourFlags(plant))
                .reduce((a, b) -> a + ", " + b)
                .ifPresent(flags -> notes.add(
                        "Labour law has something to say on a roster, told by check; pointers: " + flags + "."));
        return notes;
    }

    private int labourFlags(int plant) {
        return comparison.plants().get(plant).setting().labourFlags().size();
    }
}
