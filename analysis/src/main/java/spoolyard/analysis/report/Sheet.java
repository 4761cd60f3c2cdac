package spoolyard.analysis.report;

import java.util.Comparator;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import spoolyard.core.record.RunResult;

/**
 * A results table: what its rows stand for and how each number is had from one replication. Immutable.
 *
 * @param <T> what a row stands for
 * @param name file name without ending
 * @param keyNames names of the columns of text that say which row it is
 * @param items what there is in a replication, one item a row
 * @param key the texts that say which row it is, unique in a replication
 * @param columns the columns of numbers
 * @param order order of the rows where replications differ in which rows they have
 */
record Sheet<T>(
        String name,
        List<String> keyNames,
        BiFunction<Setting, RunResult, List<T>> items,
        Function<T, List<String>> key,
        List<Column<T>> columns,
        Function<Setting, Comparator<List<String>>> order) {
    /** Copies the lists. */
    Sheet {
        keyNames = List.copyOf(keyNames);
        columns = List.copyOf(columns);
    }

    /**
     * A table with the same rows in every replication.
     *
     * @param name file name without ending
     * @param keyNames names of the text columns
     * @param items one item a row
     * @param key texts of a row
     * @param columns the columns of numbers
     */
    Sheet(
            String name,
            List<String> keyNames,
            BiFunction<Setting, RunResult, List<T>> items,
            Function<T, List<String>> key,
            List<Column<T>> columns) {
        this(name, keyNames, items, key, columns, setting -> (a, b) -> 0);
    }

    /**
     * The rows of one replication.
     *
     * @param setting what was run
     * @param result what the replication told
     * @return keys and numbers
     */
    Rows rows(Setting setting, RunResult result) {
        List<T> all = items.apply(setting, result);
        double[] values = new double[all.size() * columns.size()];
        int next = 0;
        for (T item : all) {
            for (Column<T> column : columns) {
                values[next++] = column.value().applyAsDouble(item);
            }
        }
        return new Rows(all.stream().map(key).toList(), values);
    }
}
