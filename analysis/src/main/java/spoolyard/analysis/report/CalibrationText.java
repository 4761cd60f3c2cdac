package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import spoolyard.analysis.purge.Calibration;
import spoolyard.core.plant.ChangeoverRules.MeasuredPurge;

/**
 * A calibration of the purge estimate for people: what was found, how sure, and which rows do not fit. Immutable.
 *
 * @param calibration the calibration
 * @param isAssumed whether the plant has no estimate, so that {@link Calibration#USUAL} was taken
 */
public record CalibrationText(Calibration calibration, boolean isAssumed) {
    private static final double CONFIDENCE = 0.95;
    private static final double STRONG_CORRELATION = 0.95;
    private static final int ROW = 24;
    private static final int WHAT = 26;
    private static final int NUMBER = 10;

    /**
     * The text.
     *
     * @param ink what the screen can show
     * @return lines of text, the last one empty
     */
    public List<String> lines(Ink ink) {
        List<String> lines = new ArrayList<>();
        int rows = calibration.used().size();
        lines.add(ink.strong("Calibration") + " on " + rows + " measured changeovers");
        lines.add("");
        lines.add("  volume           " + volume());
        lines.add("  mixing exponent  " + exponent(ink));
        lines.add("  spread           "
                + Figures.shown(100 * Math.expm1(calibration.fit().spread()), 0)
                + " % of a measured purge about the fitted one");
        warnings().forEach(warning -> lines.add("  " + warning));
        lines.add("");
        lines.add(ink.strong(Cell.left("Row", ROW)
                + Cell.left("Changeover", WHAT)
                + Cell.right("kg", NUMBER)
                + Cell.right("fitted", NUMBER)
                + Cell.right("off by", NUMBER)));
        IntStream.range(0, rows)
                .boxed()
                .sorted(Comparator.comparingDouble(
                        i -> -Math.abs(calibration.fit().studentised().get(i))))
                .forEach(i -> lines.add(row(i)));
        calibration
                .notUsed()
                .forEach(each ->
                        lines.add(ink.faint(Cell.left(place(each.row().origin().where()), ROW)
                                + Cell.left(what(each.row().purge()), WHAT)
                                + Cell.right(Figures.shown(each.row().purge().purgeKg(), 1), NUMBER) + "  not used: "
                                + each.reason())));
        lines.add("");
        lines.addAll(toCopy());
        lines.add("");
        return lines;
    }

    private String volume() {
        double halfWidth = calibration.fit().halfWidth(0, CONFIDENCE);
        double volume = calibration.volumeHoldUps();
        return Figures.shown(volume, 2) + " hold-ups, 95 % interval " + Figures.shown(volume / Math.exp(halfWidth), 2)
                + " to " + Figures.shown(volume * Math.exp(halfWidth), 2);
    }

    private String exponent(Ink ink) {
        return Figures.shown(calibration.mixingExponent(), 2) + " " + ink.plusMinus() + " "
                + Figures.shown(calibration.fit().halfWidth(1, CONFIDENCE), 2) + ", 95 % interval";
    }

    private List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        if (Math.abs(calibration.fit().correlation()) > STRONG_CORRELATION) {
            warnings.add("The rows hardly tell one from the other (correlation "
                    + Figures.shown(calibration.fit().correlation(), 2)
                    + "): measure some changes from light to dark and from dark to light.");
        }
        if (calibration.mixingExponent() < 0 || calibration.mixingExponent() > 2) {
            warnings.add(
                    "A mixing exponent beyond 0 to 2 is no property of pigments: look at the rows, the strengths and"
                            + " the concentrates.");
        }
        return warnings;
    }

    private String row(int index) {
        Calibration.Used used = calibration.used().get(index);
        double kg = used.row().purge().purgeKg();
        double fitted = calibration.fittedKg(index);
        double off = 100 * (kg / fitted - 1);
        return Cell.left(place(used.row().origin().where()), ROW)
                + Cell.left(what(used.row().purge()), WHAT)
                + Cell.right(Figures.shown(kg, 1), NUMBER)
                + Cell.right(Figures.shown(fitted, 1), NUMBER)
                + Cell.right((off > 0 ? "+" : "") + Figures.shown(off, 0) + " %", NUMBER)
                + (calibration.isOutlier(index) ? "  fits badly: measure again" : "");
    }

    /** The last part of a long path says enough. */
    private static String place(String where) {
        int slash = Math.max(where.lastIndexOf('/'), where.lastIndexOf('\\'));
        return where.substring(slash + 1);
    }

    private static String what(MeasuredPurge purge) {
        return purge.line() + " " + purge.polymer() + " " + purge.fromColour() + " to " + purge.toColour();
    }

    private List<String> toCopy() {
        List<String> lines = new ArrayList<>();
        lines.add("To use it, in changeover of plant.yaml, under purge_estimate"
                + (isAssumed ? ", which this scenario does not have yet:" : ":"));
        if (isAssumed) {
            Calibration.USUAL_KEYS.forEach(key -> lines.add("  " + key));
        }
        lines.add("  volume: " + Figures.shown(calibration.volumeHoldUps(), 3));
        lines.add("  mixing_exponent: " + Figures.shown(calibration.mixingExponent(), 3));
        return lines;
    }
}
