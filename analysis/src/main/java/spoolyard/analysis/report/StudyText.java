package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import spoolyard.analysis.experiment.BestSubset;
import spoolyard.analysis.experiment.Interval;
import spoolyard.scenarios.factor.Level;

/** A study for a screen: the best points first. */
public final class StudyText {
    private static final int WIDTH = 100;
    private static final int MOST_ROWS = 20;
    private static final int POINT = 8;
    private static final int WIDEST_FACTOR = 16;
    private static final int MEASURE = 26;
    private static final List<Measure> BESIDE = List.of(
            Measure.GOOD_SPOOLS_PER_SHIFT,
            Measure.OVERFLOW_PCT,
            Measure.SCRAP_PCT,
            Measure.COST_PER_GOOD_SPOOL,
            Measure.ORDERS_LATE);

    private final StudyReport report;
    private final Ink ink;

    /**
     * Prepares to show.
     *
     * @param report what
     * @param ink what the screen can show
     */
    public StudyText(StudyReport report, Ink ink) {
        this.report = report;
        this.ink = ink;
    }

    /**
     * Letter of a factor.
     *
     * @param factor number from 0
     * @return A to D
     */
    static String letter(int factor) {
        return String.valueOf((char) ('A' + factor));
    }

    /**
     * The screen.
     *
     * @return lines of text
     */
    public List<String> lines() {
        BestSubset best = report.best();
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < report.factors().size(); i++) {
            String about = report.factors().get(i).pointer() + ": "
                    + report.factors().get(i).levels().described();
            lines.add(letter(i) + "  " + Cell.clipped(about, WIDTH - 3));
        }
        lines.add("");
        List<Measure> columns = columns();
        lines.add(ink.strong(header(columns)));
        List<Integer> order = order(best);
        order.stream().limit(MOST_ROWS).forEach(point -> lines.add(row(point, columns, best)));
        if (order.size() > MOST_ROWS) {
            lines.add(ink.faint((order.size() - MOST_ROWS) + " more points in " + StudyFiles.POINTS));
        }
        lines.add("");
        lines.addAll(answer(best));
        return lines;
    }

    private List<String> answer(BestSubset best) {
        String by = report.measure().inWords();
        if (best.best() < 0) {
            return List.of("No point has a value of " + by + " in every replication.");
        }
        int others = best.members().size() - 1;
        if (others == 0) {
            return List.of("Point " + (best.best() + 1) + " (*) is the best of all points in " + by
                    + ", with 95 % confidence.");
        }
        return List.of(
                "* has the best mean of " + by + ". " + others + (others == 1 ? " other" : " others")
                        + " (=) cannot be told from it:",
                "with 95 % confidence the best of all points is one of these " + (others + 1)
                        + ". More --replications tell more.");
    }

    private List<Integer> order(BestSubset best) {
        double sign = report.measure().isMoreBetter() ? -1 : 1;
        return IntStream.range(0, report.points().size())
                .boxed()
                .sorted(Comparator.comparing((Integer point) -> point != best.best())
                        .thenComparing(point -> !best.members().contains(point))
                        .thenComparing(point -> sign * report.mean(point, report.measure())))
                .toList();
    }

    private List<Measure> columns() {
        List<Measure> columns = new ArrayList<>(List.of(report.measure()));
        int room = WIDTH - POINT - MEASURE;
        for (int i = 0; i < report.factors().size(); i++) {
            room -= width(i) + 2;
        }
        for (Measure measure : BESIDE) {
            if (measure != report.measure() && report.measures().contains(measure) && room >= MEASURE) {
                columns.add(measure);
                room -= MEASURE;
            }
        }
        return columns;
    }

    private int width(int factor) {
        int longest = report.points().stream()
                .mapToInt(point -> point.get(factor).label().length())
                .max()
                .orElse(1);
        return Math.min(WIDEST_FACTOR, longest);
    }

    private String header(List<Measure> columns) {
        StringBuilder line = new StringBuilder(padded("  point", POINT));
        for (int i = 0; i < report.factors().size(); i++) {
            line.append(padded(letter(i), width(i) + 2));
        }
        columns.forEach(measure -> line.append(String.format("%" + MEASURE + "s", measure.label())));
        return line.toString();
    }

    private String row(int point, List<Measure> columns, BestSubset best) {
        String mark = point == best.best() ? "*" : best.members().contains(point) ? "=" : " ";
        StringBuilder line = new StringBuilder(padded(String.format("%s %5d", mark, point + 1), POINT));
        List<Level> levels = report.points().get(point);
        for (int i = 0; i < levels.size(); i++) {
            line.append(padded(Cell.clipped(levels.get(i).label(), width(i)), width(i) + 2));
        }
        columns.forEach(measure -> line.append(String.format("%" + MEASURE + "s", shown(point, measure))));
        return line.toString();
    }

    private String shown(int point, Measure measure) {
        Interval interval = report.interval(point, measure);
        if (!interval.isPresent()) {
            return ink.none();
        }
        String mean = Figures.shown(interval.mean(), measure.decimals());
        return interval.halfWidth().isPresent()
                ? mean + " " + ink.plusMinus() + " "
                        + Figures.shown(interval.halfWidth().getAsDouble(), measure.decimals())
                : mean;
    }

    private static String padded(String text, int width) {
        return String.format("%-" + width + "s", text);
    }
}
