package spoolyard.analysis.report;

import java.util.function.ToDoubleFunction;

/**
 * A column of numbers in a results table. Immutable.
 *
 * @param <T> what a row stands for
 * @param name name with the unit in it, lower case with underscores
 * @param value the value of a row in one replication; not a number for an average of nothing
 * @param kind how it is shown
 * @param absent value in a replication that has no such row: 0 for counts and amounts, not a number for averages
 */
record Column<T>(String name, ToDoubleFunction<T> value, Kind kind, double absent) {
    /** How a column is shown. */
    enum Kind {
        /** As a number. */
        NUMBER,
        /** Hours since the start of the run, shown as local time. */
        INSTANT
    }

    /**
     * A column of counts or amounts: a replication without the row counts as zero.
     *
     * @param <T> what a row stands for
     * @param name name with unit
     * @param value the value of a row
     * @return the column
     */
    static <T> Column<T> amount(String name, ToDoubleFunction<T> value) {
        return new Column<>(name, value, Kind.NUMBER, 0);
    }

    /**
     * A column of averages or shares: a replication without the row has no say.
     *
     * @param <T> what a row stands for
     * @param name name with unit
     * @param value the value of a row
     * @return the column
     */
    static <T> Column<T> average(String name, ToDoubleFunction<T> value) {
        return new Column<>(name, value, Kind.NUMBER, Double.NaN);
    }

    /**
     * A column of instants.
     *
     * @param <T> what a row stands for
     * @param name name without unit
     * @param hours hours since the start of the run, not a number if it did not come
     * @return the column
     */
    static <T> Column<T> instant(String name, ToDoubleFunction<T> hours) {
        return new Column<>(name, hours, Kind.INSTANT, Double.NaN);
    }
}
