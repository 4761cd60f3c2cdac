package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.stat.StatUtils;
import spoolyard.analysis.experiment.Batches;
import spoolyard.analysis.experiment.Difference;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.experiment.Truncation;
import spoolyard.analysis.experiment.Welch;

/** How long a plant takes to settle, and what it makes once it has. Immutable. */
public final class WarmupReport {
    /** Fewest full shifts in which a warm-up can be looked for. */
    public static final int FEWEST_SHIFTS = 4 * Truncation.USUAL_BATCH;

    private static final int BATCHES = 10;

    private final Setting setting;
    private final List<double[]> series;
    private final int window;
    private final Truncation truncation;

    /**
     * Looks for the warm-up in the average of the replications.
     *
     * @param setting what was run
     * @param series one a replication, as {@link ShiftSeries} gives them, at least {@value #FEWEST_SHIFTS} values each
     * @param window values on each side of the moving average
     */
    public WarmupReport(Setting setting, List<double[]> series, int window) {
        this.setting = setting;
        this.series = List.copyOf(series);
        this.window = window;
        this.truncation = Truncation.of(Welch.average(series), Truncation.USUAL_BATCH);
    }

    /**
     * The answer.
     *
     * @param ink what the screen can show
     * @return lines without line breaks
     */
    public List<String> lines(Ink ink) {
        Cell cell = new Cell(ink);
        int shifts = series.get(0).length;
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong(found()));
        lines.add("");
        lines.add(row("All " + shifts + " full shifts", cell.text(Welch.deleted(series, 0, Interval.USUAL_LEVEL), 1)));
        lines.add(row("After the warm-up", cell.text(Welch.deleted(series, cut(), Interval.USUAL_LEVEL), 1)));
        Batches batches = Batches.of(series.get(0), cut(), BATCHES, Interval.USUAL_LEVEL);
        lines.add(row(
                "First replication alone",
                cell.text(batches.interval(), 1) + " by " + BATCHES + " batch means, lag-one correlation "
                        + Figures.shown(batches.lagOne(), 2)));
        lines.add("");
        lines.addAll(Wrapped.lines(note(), "", TextReport.MOST_COLUMNS));
        return lines;
    }

    /**
     * Where the warm-up ends.
     *
     * @return full shifts to leave out
     */
    public int cut() {
        return truncation.cut();
    }

    /** Average of the replications. */
    double[] average() {
        return Welch.average(series);
    }

    /** The moving average of it. */
    double[] smooth() {
        return Welch.smooth(average(), window);
    }

    /** Values on each side of the moving average. */
    int window() {
        return window;
    }

    private String found() {
        if (truncation.isAtLimit()) {
            return "No end of the warm-up in sight: MSER-5 would cut half of the run or more.";
        }
        if (cut() == 0) {
            return "No warm-up found: MSER-5 cuts nothing.";
        }
        int last = FullShifts.of(setting.plant()).get(cut() - 1);
        long end = setting.plant().shifts().get(last).endTick();
        return "Warm-up: MSER-5 cuts the first " + cut() + " full shifts, until "
                + setting.clock().minute(end) + ".";
    }

    private String note() {
        Difference halves = halves();
        if (halves.verdict() == Difference.Verdict.MORE || halves.verdict() == Difference.Verdict.LESS) {
            Spread spread = Spread.of(halves);
            return "No steady state: after the warm-up the second half of the run makes " + spread.size(0) + " spools a"
                    + " shift " + (spread.isAboveZero() ? "more" : "fewer") + " than the first (95 %, paired). Orders"
                    + " that run out or weeks that differ do that. Look at the picture; an order book is studied from"
                    + " its declared start to its end, with run.";
        }
        return truncation.isAtLimit()
                ? "Give a longer --set /time/length, or look at the picture."
                : "No sign that the two halves after the warm-up differ. A steady state is only there if orders, shifts"
                        + " and lines go on as they are. Good spools per shift, 95 % over replications (replication and"
                        + " deletion). docs/answers.md";
    }

    /** The second half of what is left against the first, replication by replication. */
    private Difference halves() {
        return Difference.of(halfMeans(0), halfMeans(1), Interval.USUAL_LEVEL);
    }

    private double[] halfMeans(int which) {
        int size = (series.get(0).length - cut()) / 2;
        return series.stream()
                .mapToDouble(each -> StatUtils.mean(each, cut() + which * size, size))
                .toArray();
    }

    private static String row(String name, String value) {
        return Cell.left(name, 26) + value;
    }
}
