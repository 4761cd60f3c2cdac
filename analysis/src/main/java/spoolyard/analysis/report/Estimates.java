package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.analysis.experiment.Interval;

/** A table over all replications: an interval in each cell. Immutable. */
final class Estimates {
    private final Sheet<?> sheet;
    private final Map<List<String>, List<Interval>> cells;

    private Estimates(Sheet<?> sheet, Map<List<String>, List<Interval>> cells) {
        this.sheet = sheet;
        this.cells = cells;
    }

    /**
     * Estimates every cell.
     *
     * @param sheet the table
     * @param replications its rows in each replication
     * @param order order of the rows; those it does not tell apart stay in order of first appearance
     * @param level level of confidence, in (0, 1)
     * @return the estimates
     */
    static Estimates of(Sheet<?> sheet, List<Rows> replications, Comparator<List<String>> order, double level) {
        Map<List<String>, double[][]> samples = new LinkedHashMap<>();
        for (int replication = 0; replication < replications.size(); replication++) {
            spread(sheet, replications.get(replication), replication, replications.size(), samples);
        }
        Map<List<String>, List<Interval>> cells = new LinkedHashMap<>();
        samples.entrySet().stream()
                .sorted(Map.Entry.comparingByKey(order))
                .forEach(row -> cells.put(row.getKey(), intervals(row.getValue(), level)));
        return new Estimates(sheet, cells);
    }

    /**
     * The table.
     *
     * @return what its columns mean
     */
    Sheet<?> sheet() {
        return sheet;
    }

    /**
     * The rows.
     *
     * @return their texts, in order
     */
    List<List<String>> keys() {
        return List.copyOf(cells.keySet());
    }

    /**
     * A row.
     *
     * @param key its texts
     * @return an interval for each column
     * @throws IllegalArgumentException if there is no such row
     */
    List<Interval> row(List<String> key) {
        return Optional.ofNullable(cells.get(key))
                .orElseThrow(() -> new IllegalArgumentException(sheet.name() + " has no row " + key));
    }

    /**
     * A cell.
     *
     * @param key texts of the row
     * @param column the column
     * @return its interval
     * @throws IllegalArgumentException if there is no such row or column
     */
    Interval at(List<String> key, Column<?> column) {
        int place = sheet.columns().indexOf(column);
        if (place < 0) {
            throw new IllegalArgumentException(sheet.name() + " has no column " + column.name());
        }
        return row(key).get(place);
    }

    private static void spread(
            Sheet<?> sheet, Rows rows, int replication, int replications, Map<List<String>, double[][]> samples) {
        int columns = sheet.columns().size();
        for (int row = 0; row < rows.keys().size(); row++) {
            double[][] sample = samples.computeIfAbsent(rows.keys().get(row), key -> absent(sheet, replications));
            for (int column = 0; column < columns; column++) {
                sample[column][replication] = rows.values()[row * columns + column];
            }
        }
    }

    private static double[][] absent(Sheet<?> sheet, int replications) {
        double[][] sample = new double[sheet.columns().size()][replications];
        for (int column = 0; column < sample.length; column++) {
            Arrays.fill(sample[column], sheet.columns().get(column).absent());
        }
        return sample;
    }

    private static List<Interval> intervals(double[][] sample, double level) {
        List<Interval> intervals = new ArrayList<>();
        for (double[] values : sample) {
            intervals.add(Interval.of(values, level));
        }
        return List.copyOf(intervals);
    }
}
