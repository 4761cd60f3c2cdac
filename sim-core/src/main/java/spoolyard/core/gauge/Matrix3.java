package spoolyard.core.gauge;

/** Square matrices of three rows, row-major. */
final class Matrix3 {
    private static final int N = 3;
    private static final double SAME = 1e-15;

    private Matrix3() {}

    static double[][] times(double[][] a, double[][] b) {
        double[][] product = new double[N][N];
        for (int i = 0; i < N; i++) {
            for (int j = 0; j < N; j++) {
                product[i][j] = a[i][0] * b[0][j] + a[i][1] * b[1][j] + a[i][2] * b[2][j];
            }
        }
        return product;
    }

    static double[][] plus(double[][] a, double[][] b) {
        double[][] sum = new double[N][N];
        for (int i = 0; i < N; i++) {
            for (int j = 0; j < N; j++) {
                sum[i][j] = a[i][j] + b[i][j];
            }
        }
        return sum;
    }

    static double[][] transposed(double[][] a) {
        double[][] turned = new double[N][N];
        for (int i = 0; i < N; i++) {
            for (int j = 0; j < N; j++) {
                turned[i][j] = a[j][i];
            }
        }
        return turned;
    }

    /** Whether two matrices agree but for rounding. */
    static boolean isSame(double[][] a, double[][] b) {
        for (int i = 0; i < N; i++) {
            for (int j = 0; j < N; j++) {
                if (Math.abs(a[i][j] - b[i][j]) > SAME * Math.abs(a[i][j])) {
                    return false;
                }
            }
        }
        return true;
    }
}
