package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spoolyard.analysis.buffer.CapacityCurve;
import spoolyard.analysis.buffer.LossMeasure;
import spoolyard.analysis.buffer.RareGain;
import spoolyard.analysis.buffer.RareView;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.experiment.Proportion;

/** Rare overflows over the capacity, of a million swaps, and what it gained to expect rather than to count them. */
final class RareTable {
    /** From per cent to a million. */
    private static final double PER_MILLION = 1e4;

    private static final double PER_HUNDRED_PERCENT = 1e6;

    /** Two-sided level that leaves 5 % above. */
    private static final double TWO_SIDED = 0.9;

    private static final int LEAST_DECIMALS = 5;
    private static final int CAPACITY = 10;
    private static final int MEAN = 12;
    private static final int HALF = 12;
    private static final int NUMBER = 13;

    private final BufferReport report;
    private final RareView rare;
    private final Ink ink;

    RareTable(BufferReport report, RareView rare, Ink ink) {
        this.report = report;
        this.rare = rare;
        this.ink = ink;
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong(row("Capacity", "overflows of a million", "dedicated", "seen in", "counted", "speed-up")));
        lines.add(ink.faint(row("m", "swaps, expected", "operator", "the runs", "% of swaps", "times")));
        report.curve().points().forEach(point -> lines.add(row(point)));
        lines.add("");
        lines.addAll(none());
        lines.add(ink.faint(
                "Overflows are expected, not counted: each swap by the chance that its work outlasts the room"));
        lines.add(ink.faint(
                "left; counted where something came between. Speed-up: variance x time of counting over that of"));
        lines.add(ink.faint(String.format(
                Locale.ROOT,
                "expecting, the time ratio measured here: %.2f; ~ where too few were seen to measure the variance.",
                rare.timeRatio())));
        return lines;
    }

    private String row(CapacityCurve.Point point) {
        RareGain gain = rare.byCapacity().get(point.capacityM());
        Interval share = point.losses().get(LossMeasure.OVERFLOW).times(PER_MILLION);
        boolean isPresent = point.capacityM() == report.line().accumulator().capacityM();
        String head = Cell.left(Figures.cell(point.capacityM()) + (isPresent ? " now" : ""), CAPACITY);
        return head
                + expected(share, gain.swaps())
                + Cell.right(number(PER_MILLION * report.operator().overflowPct(point.capacityM())), NUMBER)
                + Cell.right(Figures.shown(gain.seen(), 0), NUMBER)
                + Cell.right(Figures.shown(100 * gain.countedSwaps() / gain.swaps(), 2), NUMBER)
                + Cell.right(speedUp(point.capacityM()), NUMBER);
    }

    /** With the limit below which the share lies where none was expected or seen in so many changes. */
    private String expected(Interval share, double swaps) {
        return share.mean() > 0
                ? new Cell(ink).aligned(share, decimals(share.mean()), MEAN, HALF)
                : Cell.left(Cell.right("none in " + Figures.shown(swaps, 0), MEAN + HALF - 1), MEAN + HALF);
    }

    /**
     * How many of a million changes may overflow where none did: the exact one-sided limit, 1 - 0.05^(1/n); about 3 / n.
     * Source: C. J. Clopper and E. S. Pearson, Biometrika 26 (1934) 404-413.
     */
    static double mostOfAMillion(double swaps) {
        int trials = (int) Math.min(Integer.MAX_VALUE, Math.round(swaps));
        return PER_HUNDRED_PERCENT * new Proportion(0, trials, TWO_SIDED).high();
    }

    private List<String> none() {
        return report.curve().points().stream()
                .filter(point -> point.losses().get(LossMeasure.OVERFLOW).mean() == 0)
                .mapToDouble(point -> rare.byCapacity().get(point.capacityM()).swaps())
                .filter(swaps -> swaps >= 1)
                .boxed()
                .min(Double::compare)
                .map(swaps -> List.of(ink.faint("none in " + Figures.shown(swaps, 0) + ": with 95 % confidence at most "
                        + Figures.shown(mostOfAMillion(swaps), 1) + " of a million swaps, from their number alone.")))
                .orElse(List.of());
    }

    private String speedUp(double capacityM) {
        double times = rare.speedUp(capacityM);
        if (Double.isNaN(times)) {
            return ink.none();
        }
        if (Double.isInfinite(times)) {
            return "exact";
        }
        String mark = rare.byCapacity().get(capacityM).isMeasured() ? "" : "~";
        return mark + (times >= 10 ? Figures.shown(times, 0) : Figures.shown(times, 1));
    }

    private String number(double value) {
        double least = Math.pow(10, -LEAST_DECIMALS);
        return Double.isNaN(value)
                ? ink.none()
                : value > 0 && value < least
                        ? "<" + Figures.shown(least, LEAST_DECIMALS)
                        : Figures.shown(value, decimals(value));
    }

    private static int decimals(double value) {
        return value >= 100 ? 0 : value >= 1 ? 2 : LEAST_DECIMALS;
    }

    private static String row(String name, String first, String... others) {
        StringBuilder row = new StringBuilder(Cell.left(name, CAPACITY));
        row.append(Cell.left(Cell.right(first, MEAN + HALF - 1), MEAN + HALF));
        for (String other : others) {
            row.append(Cell.right(other, NUMBER));
        }
        return row.toString();
    }
}
