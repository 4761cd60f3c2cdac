package spoolyard.analysis.report;

import java.util.List;

/**
 * A table of one replication.
 *
 * @param keys texts of each row, unique
 * @param values numbers; shape {@code double[keys][columns]}, flat, row-major; not copied
 */
record Rows(List<List<String>> keys, double[] values) {
    /**
     * The same numbers with keys held once for all replications, to save memory.
     *
     * @param sharedKeys equal keys
     * @return rows
     */
    Rows withKeys(List<List<String>> sharedKeys) {
        return new Rows(sharedKeys, values);
    }
}
