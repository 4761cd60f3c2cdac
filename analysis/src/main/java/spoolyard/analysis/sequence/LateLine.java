package spoolyard.analysis.sequence;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The sequence that a search is at, for one line that works day and night and where nothing but lateness costs. Orders have
 * numbers of their own here, from 0; what is frozen lies before all of them. Changed by moves. For one thread.
 *
 * <p>Without releases and pauses everything behind a change slips by the same time, and what it then costs is a convex function
 * of the slip: the tangent at the present times is a bound, reckoned at once.
 */
final class LateLine {
    final int count;
    final double[] stepS;
    /** The least of an order's steps, whatever comes before it. */
    final double[] leastStepS;

    final double[] dueS;
    final double[] latePerS;
    final int[] order;
    /** When all before a place is made. */
    final double[] endS;
    /** What the orders before a place cost. */
    final double[] costBefore;
    /** What a second more costs for the late orders from a place on. */
    final double[] latePerFrom;
    /** By how much the orders from a place on may slip before one is late; below 0 if one is. */
    final double[] slackS;

    double cost;
    private final int[] jobs;
    private final List<Integer> frozen;
    private final int[] buffer;

    LateLine(SequencingProblem problem) {
        LineKernel kernel = new LineKernel(problem, 0);
        frozen = problem.lines().get(0).frozen();
        jobs = IntStream.range(0, problem.jobs().size())
                .filter(job -> !frozen.contains(job))
                .toArray();
        count = jobs.length;
        dueS = Arrays.stream(jobs).mapToDouble(job -> kernel.dueS[job]).toArray();
        latePerS = Arrays.stream(jobs).mapToDouble(job -> kernel.latePerS[job]).toArray();
        stepS = new double[(count + 1) * count];
        leastStepS = new double[count];
        order = new int[count];
        endS = new double[count + 1];
        costBefore = new double[count + 1];
        latePerFrom = new double[count + 1];
        slackS = new double[count + 1];
        buffer = new int[count];
        begin(kernel);
    }

    static boolean isFor(SequencingProblem problem) {
        if (problem.lines().size() > 1 || problem.makespanPerS() > 0 || problem.isPureChangeover()) {
            return false;
        }
        SequencedLine line = problem.lines().get(0);
        boolean isAlways = line.hours().totalS() == Double.POSITIVE_INFINITY
                && line.hours().startOfS(0) == 0;
        return isAlways
                && problem.jobs().stream().allMatch(job -> job.releaseS() <= 0)
                && Arrays.stream(line.changeovers().costs()).allMatch(cost -> cost == 0)
                && problem.jobs().size() - line.frozen().size() >= 5;
    }

    private void begin(LineKernel kernel) {
        int state = kernel.atStart;
        for (int job : frozen) {
            endS[0] += kernel.timeS[state * kernel.states + kernel.product[job]] + kernel.runS[job];
            costBefore[0] += kernel.lateCost(job, endS[0]);
            state = kernel.product[job];
        }
        Arrays.fill(leastStepS, Double.POSITIVE_INFINITY);
        for (int from = 0; from <= count; from++) {
            int row = from == count ? state : kernel.product[jobs[from]];
            for (int to = 0; to < count; to++) {
                double changeoverS = kernel.timeS[row * kernel.states + kernel.product[jobs[to]]];
                stepS[from * count + to] = changeoverS + kernel.runS[jobs[to]];
                leastStepS[to] = Math.min(leastStepS[to], stepS[from * count + to]);
            }
        }
    }

    void set(Plan plan) {
        List<Integer> sequence = plan.lines().get(0);
        for (int place = 0; place < count; place++) {
            order[place] = Arrays.binarySearch(jobs, sequence.get(frozen.size() + place));
        }
        refresh(0);
    }

    void set(int[] sequence) {
        System.arraycopy(sequence, 0, order, 0, count);
        refresh(0);
    }

    Plan plan(int[] sequence) {
        Stream<Integer> free = Arrays.stream(sequence).mapToObj(each -> jobs[each]);
        return new Plan(List.of(Stream.concat(frozen.stream(), free).toList()));
    }

    /** The order before a place, or {@code count} for the start of the line. */
    int before(int place) {
        return place == 0 ? count : order[place - 1];
    }

    /** What an order costs that ends then. */
    double lateCost(int each, double atS) {
        return atS > dueS[each] ? latePerS[each] * (atS - dueS[each]) : 0;
    }

    /** What the orders of some places cost at least if they all slip by a time: the tangent. */
    double leastOf(int from, int to, double slipS) {
        return Math.max(0, costBefore[to] - costBefore[from] + slipS * (latePerFrom[from] - latePerFrom[to]));
    }

    /** What they cost. */
    double costOf(int from, int to, double slipS) {
        double total = 0;
        for (int place = from; place < to; place++) {
            total += lateCost(order[place], endS[place + 1] + slipS);
        }
        return total;
    }

    /** Exchanges the blocks {@code a} (in) to {@code b} (out) and {@code c} to {@code d}; what is between them stays so. */
    void exchange(int a, int b, int c, int d) {
        System.arraycopy(order, c, buffer, 0, d - c);
        System.arraycopy(order, b, buffer, d - c, c - b);
        System.arraycopy(order, a, buffer, d - b, b - a);
        System.arraycopy(buffer, 0, order, a, d - a);
        refresh(a);
    }

    private void refresh(int first) {
        for (int place = first; place < count; place++) {
            int each = order[place];
            endS[place + 1] = endS[place] + stepS[before(place) * count + each];
            costBefore[place + 1] = costBefore[place] + lateCost(each, endS[place + 1]);
        }
        cost = costBefore[count];
        slackS[count] = Double.POSITIVE_INFINITY;
        for (int place = count - 1; place >= 0; place--) {
            int each = order[place];
            double spareS = dueS[each] - endS[place + 1];
            latePerFrom[place] = latePerFrom[place + 1] + (spareS < 0 ? latePerS[each] : 0);
            slackS[place] = Math.min(slackS[place + 1], spareS);
        }
    }
}
