package spoolyard.analysis.sequence;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** For each order, those that it follows at little cost on some line. Never changed once made. */
final class Neighbours {
    private static final int MOST = 12;
    private static final int MOST_OF_A_PRODUCT = 4;

    private final int[][] before;

    Neighbours(SequencingProblem problem, LineKernel[] kernels) {
        int jobs = problem.jobs().size();
        int products = kernels[0].atStart;
        double[] distance = new double[products * products];
        Arrays.fill(distance, Double.POSITIVE_INFINITY);
        for (LineKernel kernel : kernels) {
            for (int from = 0; from < products; from++) {
                for (int to = 0; to < products; to++) {
                    int entry = from * products + to;
                    double effort =
                            kernel.cost[from * kernel.states + to] + 1e-6 * kernel.timeS[from * kernel.states + to];
                    distance[entry] = Math.min(distance[entry], effort);
                }
            }
        }
        int[] product = kernels[0].product;
        before = new int[jobs][];
        for (int job = 0; job < jobs; job++) {
            int to = product[job];
            int itself = job;
            Integer[] others = IntStream.range(0, jobs)
                    .filter(other -> other != itself)
                    .boxed()
                    .toArray(Integer[]::new);
            Arrays.sort(others, Comparator.comparingDouble(other -> distance[product[other] * products + to]));
            before[job] = nearest(others, product, products);
        }
    }

    private static int[] nearest(Integer[] byDistance, int[] product, int products) {
        int[] taken = new int[products];
        return Arrays.stream(byDistance)
                .mapToInt(Integer::intValue)
                .filter(job -> taken[product[job]]++ < MOST_OF_A_PRODUCT)
                .limit(MOST)
                .toArray();
    }

    /** Orders that may well come right before this one, the best first; may be empty. */
    int[] before(int job) {
        return before[job];
    }
}
