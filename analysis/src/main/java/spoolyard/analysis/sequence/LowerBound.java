package spoolyard.analysis.sequence;

import java.util.Arrays;

/**
 * Costs that no plan can go below. A quick one, the sum of two relaxations that touch different parts of the cost:
 *
 * <ul>
 *   <li>changeovers: every order has one predecessor and one successor (an order, or a line's start or end), each change at its
 *       price on the cheapest line that can make both: an assignment problem, in which short circles are allowed;
 *   <li>lateness: every order is made as if it had its best line for itself from its release on, after the shortest changeover.
 * </ul>
 *
 * <p>A better one, {@link SharedHours}, takes about a second, and the best, {@link WholeLines}, as long as it may.
 */
final class LowerBound {
    private static final double NEVER = 1e12;

    private LowerBound() {}

    /** The quick one. */
    static double of(SequencingProblem problem) {
        LineKernel[] kernels = LineKernel.of(problem);
        return changeovers(problem, kernels) + lateness(problem, kernels) + makespan(problem, kernels);
    }

    /** The better one, guided by a good plan; never below the quick one. */
    static double of(SequencingProblem problem, TimedPlan plan) {
        double quick = of(problem);
        boolean isTour = problem.lines().size() == 1 && problem.isPureChangeover();
        double lastS = workedS(problem, plan);
        if (isTour || lastS <= 0 || isReached(plan.cost(), quick)) {
            return quick;
        }
        LineKernel[] kernels = LineKernel.of(problem);
        return Math.max(quick, new SharedHours(kernels, lastS).bound(plan.cost()) + makespan(problem, kernels));
    }

    /**
     * The best one, guided by a good plan. Steps aside, as 0, for one line where only changeovers cost, as no time passes there that
     * would keep sequences from going round in circles, and for plans that cost nothing but the end.
     */
    static double byWholeLines(SequencingProblem problem, TimedPlan plan, Budget budget, int threads) {
        boolean isTour = problem.lines().size() == 1 && problem.isPureChangeover();
        double lastS = workedS(problem, plan);
        if (isTour || lastS <= 0 || isReached(plan.cost() - plan.makespanCost(), 0)) {
            return 0;
        }
        double bound = new WholeLines(problem, plan, lastS).bound(budget, threads);
        return Math.max(0, bound + makespan(problem, LineKernel.of(problem)));
    }

    /** Worked seconds until the last line is done. */
    private static double workedS(SequencingProblem problem, TimedPlan plan) {
        double lastS = 0;
        for (int line = 0; line < problem.lines().size(); line++) {
            WorkingTime hours = problem.lines().get(line).hours();
            for (TimedPlan.TimedJob job : plan.lines().get(line)) {
                lastS = Math.max(lastS, hours.workedUntilS(job.endS()));
            }
        }
        return lastS;
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
        double least = Assignment.of(size, cost).least();
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

    private static double lateness(SequencingProblem problem, LineKernel[] kernels) {
        double total = 0;
        for (int job = 0; job < problem.jobs().size(); job++) {
            double least = Double.POSITIVE_INFINITY;
            for (LineKernel kernel : kernels) {
                if (kernel.canMake(job)) {
                    least = Math.min(least, kernel.lateCost(job, soonestWorkedS(kernel, job)));
                }
            }
            total += least;
        }
        return total;
    }

    /** Until the order that takes longest is made on its best line. */
    private static double makespan(SequencingProblem problem, LineKernel[] kernels) {
        double lastS = 0;
        for (int job = 0; job < problem.jobs().size(); job++) {
            double earliestS = Double.POSITIVE_INFINITY;
            for (LineKernel kernel : kernels) {
                if (kernel.canMake(job)) {
                    earliestS = Math.min(earliestS, kernel.endOfS(soonestWorkedS(kernel, job)));
                }
            }
            lastS = Math.max(lastS, earliestS);
        }
        return lastS * problem.makespanPerS();
    }

    private static double soonestWorkedS(LineKernel kernel, int job) {
        return kernel.releaseS[job] + shortestChangeoverS(kernel, job) + kernel.runS[job];
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
