package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import spoolyard.analysis.experiment.Selection;
import spoolyard.analysis.experiment.Zone;

/** A selection on the screen: the best, what that is worth, and how each plant fared. */
public final class SelectionText {
    private static final int NAME = 54;
    private static final int COUNT = 14;

    private final SelectionReport report;
    private final List<Alternative> plants;
    private final Measure measure;
    private final Zone zone;
    private final Selection selection;

    /**
     * Prepares to write.
     *
     * @param report what
     */
    public SelectionText(SelectionReport report) {
        this.report = report;
        this.plants = report.plants();
        this.measure = report.measure();
        this.zone = report.zone();
        this.selection = report.selection();
    }

    /**
     * The answer.
     *
     * @param ink what the screen can show
     * @return lines without line breaks
     */
    public List<String> lines(Ink ink) {
        List<String> lines = new ArrayList<>();
        String answer = answer();
        lines.add(ink.strong(answer));
        Wrapped.lines(selection.isDecided() ? promise() : noPromise(), "", TextReport.MOST_COLUMNS)
                .forEach(line -> lines.add(ink.faint(line)));
        lines.add("");
        lines.add(ink.strong(Cell.left("", NAME)
                + Cell.right(measure.label(), TextReport.MOST_COLUMNS - NAME - COUNT)
                + Cell.right("replications", COUNT)));
        IntStream.range(0, plants.size())
                .boxed()
                .sorted(Comparator.comparingDouble(plant -> -selection.means().get(plant)))
                .forEach(plant -> lines.add(row(plant)));
        lines.add("");
        lines.add(selection.total() + " runs in all.");
        Cautions.LINES.stream().map(ink::faint).forEach(lines::add);
        return lines;
    }

    private String answer() {
        String letter = Comparison.letter(selection.best());
        String best = letter + " " + plants.get(selection.best()).name();
        return Cell.clipped(
                selection.isDecided() ? "The best is " + best + "." : "Not decided. So far the best is " + best + ".",
                TextReport.MOST_COLUMNS);
    }

    private String promise() {
        return "If one plant is ahead of the others by " + Figures.cell(zone.indifference()) + " or more in "
                + measure.inWords() + ", this is it with a probability of at least "
                + Figures.cell(100 * zone.confidence()) + " % ("
                + report.procedure()
                + (report.isTwoStage() ? ", independent runs" : ", the same luck for all")
                + "). If several are closer than that, they are as good as each other by what was asked.";
    }

    private static String noPromise() {
        return "Stopped at the most replications there may be, so nothing is promised. Give more with --most, or a larger"
                + " --within.";
    }

    private String row(int plant) {
        String name = Comparison.letter(plant) + "  " + plants.get(plant).name();
        double mean = report.shown(selection.means().get(plant));
        return Cell.left(name, NAME)
                + Cell.right(Figures.shown(mean, measure.decimals()), TextReport.MOST_COLUMNS - NAME - COUNT)
                + Cell.right(String.valueOf(selection.counts().get(plant)), COUNT);
    }
}
