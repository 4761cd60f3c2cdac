package spoolyard.analysis.sequence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The plan that a search is at, with what it needs to know to judge a change quickly. Changed by moves. For one thread.
 *
 * <p>For each line and place it holds the worked seconds and the cost up to the order there, the cost of all changeovers from
 * there on, and the slack: by how much all that follows may slip before anything more is late.
 */
final class Schedule {
    private static final double LEAST = 1e-6;

    final LineKernel[] kernels;
    final int[][] sequence;
    final int[] length;
    final int[] lineOf;
    final int[] placeOf;
    final double[] lineCost;
    final double[] lineEndS;
    double cost;

    private final double[][] workedS;
    private final double[][] costBefore;
    private final double[][] changeoversAfter;
    private final double[][] slackS;
    private final double makespanPerS;
    private final int[] buffer;

    private double linesCost;
    private double walkedS;
    private double walkedCost;
    private int walkedState;

    Schedule(SequencingProblem problem) {
        kernels = LineKernel.of(problem);
        makespanPerS = problem.makespanPerS();
        int jobs = problem.jobs().size();
        int lines = kernels.length;
        sequence = new int[lines][jobs];
        length = new int[lines];
        lineOf = new int[jobs];
        placeOf = new int[jobs];
        lineCost = new double[lines];
        lineEndS = new double[lines];
        workedS = new double[lines][jobs + 1];
        costBefore = new double[lines][jobs + 1];
        changeoversAfter = new double[lines][jobs + 2];
        slackS = new double[lines][jobs + 1];
        buffer = new int[jobs];
    }

    void set(Plan plan) {
        for (int line = 0; line < kernels.length; line++) {
            List<Integer> jobs = plan.lines().get(line);
            length[line] = jobs.size();
            for (int place = 0; place < jobs.size(); place++) {
                sequence[line][place] = jobs.get(place);
            }
            refresh(line, 0);
        }
        sum();
    }

    Plan plan() {
        List<List<Integer>> lines = new ArrayList<>();
        for (int line = 0; line < kernels.length; line++) {
            lines.add(Arrays.stream(sequence[line], 0, length[line]).boxed().toList());
        }
        return new Plan(lines);
    }

    /** Reckons a line anew from a place on. */
    void refresh(int line, int firstPlace) {
        LineKernel kernel = kernels[line];
        begin(kernel, line, firstPlace);
        for (int place = firstPlace; place < length[line]; place++) {
            int job = sequence[line][place];
            lineOf[job] = line;
            placeOf[job] = place;
            step(kernel, job);
            workedS[line][place + 1] = walkedS;
            costBefore[line][place + 1] = walkedCost;
        }
        lineCost[line] = walkedCost + kernel.cost[walkedState * kernel.states + kernel.atEnd];
        lineEndS[line] = length[line] == 0 ? 0 : kernel.endOfS(walkedS);
        lookBack(kernel, line);
    }

    private void lookBack(LineKernel kernel, int line) {
        int count = length[line];
        int next = kernel.atEnd;
        double slack = Double.POSITIVE_INFINITY;
        double changeovers = 0;
        changeoversAfter[line][count + 1] = 0;
        slackS[line][count] = slack;
        for (int place = count - 1; place >= 0; place--) {
            int job = sequence[line][place];
            changeovers += kernel.cost[kernel.product[job] * kernel.states + next];
            changeoversAfter[line][place + 1] = changeovers;
            double spare = kernel.dueWorkedS[job] - workedS[line][place + 1];
            slack = spare < 0 ? Double.NEGATIVE_INFINITY : Math.min(slack, spare);
            slackS[line][place] = slack;
            next = kernel.product[job];
        }
    }

    /** What all changeovers cost, the way in and the way out included. */
    double changeovers() {
        double sum = 0;
        for (int line = 0; line < kernels.length; line++) {
            LineKernel kernel = kernels[line];
            int first = length[line] == 0 ? kernel.atEnd : kernel.product[sequence[line][0]];
            sum += kernel.cost[kernel.atStart * kernel.states + first] + changeoversAfter[line][1];
        }
        return sum;
    }

    void sum() {
        double total = 0;
        double lastS = 0;
        for (int line = 0; line < kernels.length; line++) {
            total += lineCost[line];
            lastS = Math.max(lastS, lineEndS[line]);
        }
        linesCost = total;
        cost = total + lastS * makespanPerS;
    }

    private void begin(LineKernel kernel, int line, int place) {
        walkedS = workedS[line][place];
        walkedCost = costBefore[line][place];
        walkedState = place == 0 ? kernel.atStart : kernel.product[sequence[line][place - 1]];
    }

    private void step(LineKernel kernel, int job) {
        int to = kernel.product[job];
        int entry = walkedState * kernel.states + to;
        double begin = Math.max(walkedS, kernel.releaseS[job]);
        walkedS = begin + kernel.timeS[entry] + kernel.runS[job];
        walkedCost += kernel.cost[entry];
        if (walkedS > kernel.dueWorkedS[job]) {
            walkedCost += kernel.lateCost(job, walkedS);
        }
        walkedState = to;
    }

    /** Cost of a line as the pieces make it; infinite as soon as it is above the limit. */
    double lineCost(int line, Pieces pieces, double limit) {
        LineKernel kernel = kernels[line];
        begin(kernel, line, pieces.kept);
        for (int i = 0; i < pieces.count; i++) {
            boolean isOwnTail = i == pieces.count - 1 && pieces.line[i] == line && pieces.to[i] == length[line];
            boolean isWithin = isOwnTail
                    ? walkTail(kernel, line, pieces.from[i], limit)
                    : walk(kernel, sequence[pieces.line[i]], pieces.from[i], pieces.to[i], limit);
            if (!isWithin) {
                return Double.POSITIVE_INFINITY;
            }
        }
        return walkedCost + kernel.cost[walkedState * kernel.states + kernel.atEnd];
    }

    private boolean walk(LineKernel kernel, int[] jobs, int from, int to, double limit) {
        for (int place = from; place < to; place++) {
            step(kernel, jobs[place]);
            if (walkedCost > limit) {
                return false;
            }
        }
        return true;
    }

    /** Walks what follows unchanged, until it is clear that the rest costs what it did. */
    private boolean walkTail(LineKernel kernel, int line, int from, double limit) {
        for (int place = from; place < length[line]; place++) {
            step(kernel, sequence[line][place]);
            if (walkedCost > limit) {
                return false;
            }
            double slipS = walkedS - workedS[line][place + 1];
            if (slipS >= 0 && walkedCost + costAfter(line, place + 1) > limit + LEAST) {
                return false;
            }
            boolean isAsBefore = slipS == 0 || makespanPerS == 0 && slipS <= slackS[line][place + 1];
            if (isAsBefore) {
                return skip(kernel, line, place + 1, slipS);
            }
        }
        return true;
    }

    /** What the orders from a place on cost now: no less if they begin later, as no order gets cheaper by that. */
    private double costAfter(int line, int place) {
        return lineCost[line] - costBefore[line][place];
    }

    private boolean skip(LineKernel kernel, int line, int place, double slipS) {
        int last = length[line] - 1;
        int end = kernel.product[sequence[line][last]] * kernel.states + kernel.atEnd;
        if (slipS == 0) {
            walkedCost += costBefore[line][last + 1] - costBefore[line][place];
        } else {
            walkedCost += changeoversAfter[line][place] - kernel.cost[end];
        }
        walkedS = workedS[line][last + 1];
        walkedState = kernel.product[sequence[line][last]];
        return true;
    }

    /** What the plan would cost with one line changed; infinite if above the limit. */
    double costWith(int line, Pieces pieces, double limit) {
        double others = othersCost(line, line);
        double changed = lineCost(line, pieces, limit - others);
        return changed == Double.POSITIVE_INFINITY
                ? changed
                : others + changed + makespan(line, lineEnd(line), line, 0);
    }

    /** What the plan would cost with two lines changed; infinite if above the limit. */
    double costWith(int one, Pieces ofOne, int other, Pieces ofOther, double limit) {
        double others = othersCost(one, other);
        double first = lineCost(one, ofOne, limit - others);
        if (first == Double.POSITIVE_INFINITY) {
            return first;
        }
        double firstEndS = lineEnd(one);
        double second = lineCost(other, ofOther, limit - others - first);
        if (second == Double.POSITIVE_INFINITY) {
            return second;
        }
        return others + first + second + makespan(one, firstEndS, other, lineEnd(other));
    }

    private double othersCost(int one, int other) {
        return linesCost - lineCost[one] - (one == other ? 0 : lineCost[other]);
    }

    private double lineEnd(int line) {
        return makespanPerS == 0 || walkedState == kernels[line].atStart ? 0 : kernels[line].endOfS(walkedS);
    }

    private double makespan(int one, double oneEndS, int other, double otherEndS) {
        if (makespanPerS == 0) {
            return 0;
        }
        double lastS = Math.max(oneEndS, otherEndS);
        for (int line = 0; line < kernels.length; line++) {
            lastS = line == one || line == other ? lastS : Math.max(lastS, lineEndS[line]);
        }
        return lastS * makespanPerS;
    }

    /** Makes the change on one line. */
    void apply(int line, Pieces pieces) {
        length[line] = pieces.kept + copyOut(pieces, 0);
        System.arraycopy(buffer, 0, sequence[line], pieces.kept, length[line] - pieces.kept);
        refresh(line, pieces.kept);
        sum();
    }

    /** Makes the change on two lines. */
    void apply(int one, Pieces ofOne, int other, Pieces ofOther) {
        int first = copyOut(ofOne, 0);
        int second = copyOut(ofOther, first);
        length[one] = ofOne.kept + first;
        length[other] = ofOther.kept + second;
        System.arraycopy(buffer, 0, sequence[one], ofOne.kept, first);
        System.arraycopy(buffer, first, sequence[other], ofOther.kept, second);
        refresh(one, ofOne.kept);
        refresh(other, ofOther.kept);
        sum();
    }

    private int copyOut(Pieces pieces, int offset) {
        int next = offset;
        for (int i = 0; i < pieces.count; i++) {
            int count = pieces.to[i] - pieces.from[i];
            System.arraycopy(sequence[pieces.line[i]], pieces.from[i], buffer, next, count);
            next += count;
        }
        return next - offset;
    }

    /** Takes an order out without a look at the cost; {@link #refresh} and {@link #sum} must follow. */
    void takeOut(int job) {
        int line = lineOf[job];
        int place = placeOf[job];
        System.arraycopy(sequence[line], place + 1, sequence[line], place, length[line] - place - 1);
        length[line]--;
        for (int i = place; i < length[line]; i++) {
            placeOf[sequence[line][i]] = i;
        }
        lineOf[job] = -1;
    }

    /** Puts an order in and reckons the line. */
    void putIn(int job, int line, int place) {
        System.arraycopy(sequence[line], place, sequence[line], place + 1, length[line] - place);
        sequence[line][place] = job;
        length[line]++;
        refresh(line, place);
    }

    /** What a line would cost with an order put in; infinite if above the limit. */
    double costOfInsertion(int job, int line, int place, double limit) {
        LineKernel kernel = kernels[line];
        begin(kernel, line, place);
        step(kernel, job);
        boolean isWithin = walkedCost <= limit && walkTail(kernel, line, place, limit);
        return isWithin
                ? walkedCost + kernel.cost[walkedState * kernel.states + kernel.atEnd]
                : Double.POSITIVE_INFINITY;
    }
}
