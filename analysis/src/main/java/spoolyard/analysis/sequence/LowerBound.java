package spoolyard.analysis.sequence;

import java.util.Arrays;

/**
 * Costs that no plan can go below. The sum of two relaxations that touch different parts of the cost:
 *
 * <ul>
 *   <li>changeovers: every order has one predecessor and one successor (an order, or a line's start or end), each change at its
 *       price on the cheapest line that can make both: an assignment problem, in which short circles are allowed;
 *   <li>changeovers again, as products: every product is begun at least once, from another product at the least price on any
 *       line, or as the first of a line, of which each line has only one. The dearer of the two counts;
 *   <li>lateness: every order is made as if it had its best line for itself from its release on, after the shortest changeover.
 * </ul>
 */
final class LowerBound {
    private static final double NEVER = 1e12;

    private LowerBound() {}

    static double of(SequencingProblem problem) {
        LineKernel[] kernels = LineKernel.of(problem);
        return Math.max(changeovers(problem, kernels), entries(problem, kernels)) + lateness(problem, kernels);
    }

    private static double changeovers(SequencingProblem problem, LineKernel[] kernels) {
        int jobs = problem.jobs().size();
        int size = jobs + kernels.length;
        double[] cost = new double[size * size];
        Arrays.fill(cost, NEVER);
        for (int line = 0; line < kernels.length; line++) {
            cheapen(cost, kernels[line], line, jobs, size);
        }
        for (int job = 0; job < jobs; job++) {
            cost[job * size + job] = NEVER;
        }
        double least = Assignment.least(size, cost);
        return least < NEVER ? least : 0;
    }

    private static void cheapen(double[] cost, LineKernel kernel, int line, int jobs, int size) {
        int start = jobs + line;
        cost[start * size + start] =
                size - jobs == 1 ? NEVER : kernel.cost[kernel.atStart * kernel.states + kernel.atEnd];
        for (int job = 0; job < jobs; job++) {
            if (kernel.canMake(job)) {
                cost[start * size + job] = kernel.cost[kernel.atStart * kernel.states + kernel.product[job]];
                cost[job * size + start] = kernel.cost[kernel.product[job] * kernel.states + kernel.atEnd];
                cheapenRow(cost, kernel, job, size);
            }
        }
    }

    private static void cheapenRow(double[] cost, LineKernel kernel, int from, int size) {
        for (int to = 0; to < kernel.product.length; to++) {
            if (kernel.canMake(to)) {
                double price = kernel.cost[kernel.product[from] * kernel.states + kernel.product[to]];
                cost[from * size + to] = Math.min(cost[from * size + to], price);
            }
        }
    }

    private static double entries(SequencingProblem problem, LineKernel[] kernels) {
        boolean[][] isMade = made(problem, kernels);
        double[] least = new double[kernels[0].atStart];
        double total = 0;
        for (int to = 0; to < least.length; to++) {
            least[to] = leastEntry(kernels, isMade, to);
            total += least[to];
        }
        for (int line = 0; line < kernels.length; line++) {
            total -= mostSaved(kernels[line], isMade[line], least);
        }
        return Math.max(0, total);
    }

    /** Least price to begin a product; 0 if no line makes it. */
    private static double leastEntry(LineKernel[] kernels, boolean[][] isMade, int to) {
        double fromOther = Double.POSITIVE_INFINITY;
        double fromStart = Double.POSITIVE_INFINITY;
        for (int line = 0; line < kernels.length; line++) {
            if (isMade[line][to]) {
                fromOther = Math.min(fromOther, entry(kernels[line], isMade[line], to));
                fromStart = Math.min(fromStart, start(kernels[line], to));
            }
        }
        double least = fromOther == Double.POSITIVE_INFINITY ? fromStart : fromOther;
        return least == Double.POSITIVE_INFINITY ? 0 : least;
    }

    private static double mostSaved(LineKernel kernel, boolean[] isMade, double[] least) {
        double most = 0;
        for (int to = 0; to < least.length; to++) {
            most = isMade[to] ? Math.max(most, least[to] - start(kernel, to)) : most;
        }
        return most;
    }

    private static boolean[][] made(SequencingProblem problem, LineKernel[] kernels) {
        boolean[][] isMade = new boolean[kernels.length][kernels[0].atStart];
        for (int line = 0; line < kernels.length; line++) {
            for (int job = 0; job < problem.jobs().size(); job++) {
                isMade[line][kernels[line].product[job]] |= kernels[line].canMake(job);
            }
        }
        return isMade;
    }

    private static double start(LineKernel kernel, int to) {
        return kernel.cost[kernel.atStart * kernel.states + to];
    }

    /** Least price to come to a product from another one that the line makes. */
    private static double entry(LineKernel kernel, boolean[] isMade, int to) {
        double least = Double.POSITIVE_INFINITY;
        for (int from = 0; from < isMade.length; from++) {
            if (from != to && isMade[from]) {
                least = Math.min(least, kernel.cost[from * kernel.states + to]);
            }
        }
        return least;
    }

    private static double lateness(SequencingProblem problem, LineKernel[] kernels) {
        double total = 0;
        double lastS = 0;
        for (int job = 0; job < problem.jobs().size(); job++) {
            double least = Double.POSITIVE_INFINITY;
            double earliestS = Double.POSITIVE_INFINITY;
            for (LineKernel kernel : kernels) {
                if (kernel.canMake(job)) {
                    double worked = kernel.releaseS[job] + shortestChangeoverS(kernel, job) + kernel.runS[job];
                    least = Math.min(least, kernel.lateCost(job, worked));
                    earliestS = Math.min(earliestS, kernel.endOfS(worked));
                }
            }
            total += least;
            lastS = Math.max(lastS, earliestS);
        }
        return total + lastS * problem.makespanPerS();
    }

    private static double shortestChangeoverS(LineKernel kernel, int job) {
        double least = kernel.timeS[kernel.atStart * kernel.states + kernel.product[job]];
        for (int other = 0; other < kernel.product.length; other++) {
            if (other != job && kernel.canMake(other)) {
                least = Math.min(least, kernel.timeS[kernel.product[other] * kernel.states + kernel.product[job]]);
            }
        }
        return least;
    }

    /** Whether a plan is as cheap as can be, rounding aside. */
    static boolean isReached(double cost, double bound) {
        return cost <= bound + 1e-9 * Math.max(1, Math.abs(bound));
    }
}
