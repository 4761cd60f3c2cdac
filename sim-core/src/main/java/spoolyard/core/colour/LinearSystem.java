package spoolyard.core.colour;

import java.util.Optional;

/** Solves a small dense system by Gauss's elimination with partial pivoting. */
final class LinearSystem {
    private LinearSystem() {}

    /**
     * Solves {@code matrix x = right}; overwrites both.
     *
     * @param matrix <b>Shape</b>: {@code double[n][n]}
     * @param right <b>Shape</b>: {@code double[n]}
     * @return x; empty if the matrix is singular or something in it is no number. Cost: O(n^3)
     */
    static Optional<double[]> solution(double[][] matrix, double[] right) {
        int n = right.length;
        for (int column = 0; column < n; column++) {
            int pivot = pivot(matrix, column);
            if (!(Math.abs(matrix[pivot][column]) > 0)) {
                return Optional.empty();
            }
            swap(matrix, right, column, pivot);
            for (int row = column + 1; row < n; row++) {
                subtract(matrix, right, column, row);
            }
        }
        return Optional.of(substituted(matrix, right));
    }

    private static int pivot(double[][] matrix, int column) {
        int pivot = column;
        for (int row = column + 1; row < matrix.length; row++) {
            if (Math.abs(matrix[row][column]) > Math.abs(matrix[pivot][column])) {
                pivot = row;
            }
        }
        return pivot;
    }

    private static void swap(double[][] matrix, double[] right, int one, int other) {
        double[] row = matrix[one];
        matrix[one] = matrix[other];
        matrix[other] = row;
        double value = right[one];
        right[one] = right[other];
        right[other] = value;
    }

    private static void subtract(double[][] matrix, double[] right, int from, int row) {
        double factor = matrix[row][from] / matrix[from][from];
        if (factor == 0) {
            return;
        }
        for (int column = from; column < right.length; column++) {
            matrix[row][column] -= factor * matrix[from][column];
        }
        right[row] -= factor * right[from];
    }

    private static double[] substituted(double[][] matrix, double[] right) {
        double[] x = new double[right.length];
        for (int row = x.length - 1; row >= 0; row--) {
            double sum = right[row];
            for (int column = row + 1; column < x.length; column++) {
                sum -= matrix[row][column] * x[column];
            }
            x[row] = sum / matrix[row][row];
        }
        return x;
    }
}
