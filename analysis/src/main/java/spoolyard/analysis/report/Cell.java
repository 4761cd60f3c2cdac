package spoolyard.analysis.report;

import spoolyard.analysis.experiment.Interval;

/** Writes intervals for people, in columns that line up. */
final class Cell {
    private final Ink ink;

    /**
     * For a screen.
     *
     * @param ink what it can show
     */
    Cell(Ink ink) {
        this.ink = ink;
    }

    /**
     * Mean and half-width, no wider than needed.
     *
     * @param interval the interval
     * @param decimals digits after the point
     * @return for example {@code 871.4 +/- 6.2}
     */
    String text(Interval interval, int decimals) {
        if (!interval.isPresent()) {
            return ink.none();
        }
        return Figures.shown(interval.mean(), decimals) + halfWidth(interval, decimals);
    }

    /**
     * Mean only.
     *
     * @param interval the interval
     * @param decimals digits after the point
     * @return for example {@code 871.4}
     */
    String mean(Interval interval, int decimals) {
        return interval.isPresent() ? Figures.shown(interval.mean(), decimals) : ink.none();
    }

    /**
     * Mean to the right of a field, half-width to the left of the next, so that both line up down a column.
     *
     * @param interval the interval
     * @param decimals digits after the point
     * @param meanWidth characters for the mean
     * @param halfWidth characters for sign and half-width
     * @return exactly {@code meanWidth + halfWidth} characters, if the numbers fit
     */
    String aligned(Interval interval, int decimals, int meanWidth, int halfWidth) {
        return left(right(mean(interval, decimals), meanWidth) + halfWidth(interval, decimals), meanWidth + halfWidth);
    }

    /**
     * Fills up on the left.
     *
     * @param text any text
     * @param width characters
     * @return at least {@code width} characters
     */
    static String right(String text, int width) {
        return " ".repeat(Math.max(0, width - text.length())) + text;
    }

    /**
     * Fills up on the right; text that is too long is cut.
     *
     * @param text any text
     * @param width characters
     * @return exactly {@code width} characters
     */
    static String left(String text, int width) {
        return clipped(text, width) + " ".repeat(Math.max(0, width - text.length()));
    }

    /**
     * Cuts what is too long and marks the cut.
     *
     * @param text any text
     * @param width characters, {@code >= 1}
     * @return at most {@code width} characters
     */
    static String clipped(String text, int width) {
        return text.length() <= width ? text : text.substring(0, width - 1) + "~";
    }

    private String halfWidth(Interval interval, int decimals) {
        return interval.halfWidth().isPresent()
                ? " " + ink.plusMinus() + " "
                        + Figures.shown(interval.halfWidth().getAsDouble(), decimals)
                : "";
    }
}
