package spoolyard.analysis.sequence;

import java.util.Arrays;

/**
 * The cheapest way to give each row a column of its own. O(n^3). Never changed once solved.
 *
 * <p>Source: shortest augmenting paths with potentials, Jonker and Volgenant, Computing 38 (1987).
 */
final class Assignment {
    private final int size;
    private final double[] cost;
    private final double[] rowPotential;
    private final double[] columnPotential;
    private final int[] rowOf;
    private final double[] shortest;
    private final int[] previous;
    private final boolean[] isDone;

    private Assignment(int size, double[] cost) {
        this.size = size;
        this.cost = cost;
        rowPotential = new double[size + 1];
        columnPotential = new double[size + 1];
        rowOf = new int[size + 1];
        shortest = new double[size + 1];
        previous = new int[size + 1];
        isDone = new boolean[size + 1];
    }

    /**
     * Solves it.
     *
     * @param size rows and columns
     * @param cost row-major; a pair that may not be has a large cost
     * @return the solution
     */
    static Assignment of(int size, double[] cost) {
        Assignment assignment = new Assignment(size, cost);
        for (int row = 1; row <= size; row++) {
            assignment.add(row);
        }
        return assignment;
    }

    /** The least sum. */
    double least() {
        double total = 0;
        for (int column = 1; column <= size; column++) {
            total += cost[(rowOf[column] - 1) * size + column - 1];
        }
        return total;
    }

    /** The column of each row, from 0. */
    int[] columns() {
        int[] columns = new int[size];
        for (int column = 1; column <= size; column++) {
            columns[rowOf[column] - 1] = column - 1;
        }
        return columns;
    }

    /**
     * What each row is worth in the dual: no pair costs less than the sum of its two numbers, and those of the cheapest assignment
     * just as much.
     *
     * @return a number for each row, of either sign
     */
    double[] rowPotentials() {
        return Arrays.copyOfRange(rowPotential, 1, size + 1);
    }

    /** What each column is worth in the dual; see {@link #rowPotentials}. */
    double[] columnPotentials() {
        return Arrays.copyOfRange(columnPotential, 1, size + 1);
    }

    private void add(int row) {
        rowOf[0] = row;
        Arrays.fill(shortest, Double.POSITIVE_INFINITY);
        Arrays.fill(isDone, false);
        int column = 0;
        while (rowOf[column] != 0) {
            column = reach(column);
        }
        while (column != 0) {
            rowOf[column] = rowOf[previous[column]];
            column = previous[column];
        }
    }

    /** Goes on from a column that has a row; returns the next nearest column. */
    private int reach(int from) {
        isDone[from] = true;
        int row = rowOf[from];
        int next = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int column = 1; column <= size; column++) {
            if (!isDone[column]) {
                double reduced = cost[(row - 1) * size + column - 1] - rowPotential[row] - columnPotential[column];
                if (reduced < shortest[column]) {
                    shortest[column] = reduced;
                    previous[column] = from;
                }
                if (shortest[column] < least) {
                    least = shortest[column];
                    next = column;
                }
            }
        }
        shiftPotentials(least);
        return next;
    }

    private void shiftPotentials(double least) {
        for (int column = 0; column <= size; column++) {
            if (isDone[column]) {
                rowPotential[rowOf[column]] += least;
                columnPotential[column] -= least;
            } else {
                shortest[column] -= least;
            }
        }
    }
}
