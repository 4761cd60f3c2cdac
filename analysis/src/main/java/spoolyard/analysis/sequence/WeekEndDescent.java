package spoolyard.analysis.sequence;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Makes a plan cheaper under purges at the end of weeks, which the search does not see: moves one order at a time to where it
 * costs least, or exchanges two, every plan reckoned in full, until neither helps. For one thread, once.
 *
 * <p>Cost: a pass over n orders takes O(n n / lines) steps for each of them.
 */
final class WeekEndDescent {
    private static final double LEAST = 1e-6;

    private final SequencingProblem problem;
    private final Stop stop;
    private final List<List<Integer>> sequences = new ArrayList<>();
    private final double[] cost;

    WeekEndDescent(SequencingProblem problem, Plan from, Stop stop) {
        this.problem = problem;
        this.stop = stop;
        from.lines().forEach(line -> sequences.add(new ArrayList<>(line)));
        cost = new double[sequences.size()];
        for (int line = 0; line < cost.length; line++) {
            cost[line] = cost(line, sequences.get(line));
        }
    }

    /** A place of an order and what the plan then costs more. */
    private record Move(int line, int place, double more) {}

    Plan descend() {
        boolean isBetter = true;
        while (isBetter && !stop.isAsked()) {
            isBetter = false;
            for (int job = 0; job < problem.jobs().size() && !stop.isAsked(); job++) {
                isBetter |= move(job) | exchange(job);
            }
        }
        return new Plan(sequences);
    }

    private double cost(int line, List<Integer> sequence) {
        LineWalk walk = new LineWalk(problem, line).along(sequence);
        return walk.changeoverCost() + walk.lateCost();
    }

    private int lineOf(int job) {
        int line = 0;
        while (!sequences.get(line).contains(job)) {
            line++;
        }
        return line;
    }

    private boolean isFrozen(int job, int line) {
        return problem.lines().get(line).frozen().contains(job);
    }

    /** Takes the first exchange with a later number that helps. */
    private boolean exchange(int job) {
        for (int other = job + 1; other < problem.jobs().size(); other++) {
            int one = lineOf(job);
            int two = lineOf(other);
            boolean isAllowed = !isFrozen(job, one)
                    && !isFrozen(other, two)
                    && problem.jobs().get(job).canRunOn(two)
                    && problem.jobs().get(other).canRunOn(one);
            if (isAllowed && exchange(job, one, other, two)) {
                return true;
            }
        }
        return false;
    }

    private boolean exchange(int job, int one, int other, int two) {
        Collections.replaceAll(sequences.get(one), job, -1);
        Collections.replaceAll(sequences.get(two), other, job);
        Collections.replaceAll(sequences.get(one), -1, other);
        double first = cost(one, sequences.get(one));
        double second = one == two ? 0 : cost(two, sequences.get(two));
        if (first + second < cost[one] + (one == two ? 0 : cost[two]) - LEAST) {
            cost[one] = first;
            cost[two] = one == two ? first : second;
            return true;
        }
        Collections.replaceAll(sequences.get(one), other, -1);
        Collections.replaceAll(sequences.get(two), job, other);
        Collections.replaceAll(sequences.get(one), -1, job);
        return false;
    }

    private boolean move(int job) {
        int line = lineOf(job);
        if (isFrozen(job, line)) {
            return false;
        }
        List<Integer> without = new ArrayList<>(sequences.get(line));
        without.remove(Integer.valueOf(job));
        Move best = new Move(line, 0, -LEAST);
        for (int to = 0; to < sequences.size(); to++) {
            if (problem.jobs().get(job).canRunOn(to)) {
                best = best(job, line, without, to, best);
            }
        }
        if (best.more == -LEAST) {
            return false;
        }
        sequences.set(line, without);
        sequences.get(best.line).add(best.place, job);
        cost[line] = cost(line, sequences.get(line));
        cost[best.line] = cost(best.line, sequences.get(best.line));
        return true;
    }

    private Move best(int job, int line, List<Integer> without, int to, Move soFar) {
        Move best = soFar;
        List<Integer> others = to == line ? without : sequences.get(to);
        double before = to == line ? cost[line] : cost[line] + cost[to] - cost(line, without);
        for (int place = problem.lines().get(to).frozen().size(); place <= others.size(); place++) {
            List<Integer> with = new ArrayList<>(others);
            with.add(place, job);
            double more = cost(to, with) - before;
            best = more < best.more ? new Move(to, place, more) : best;
        }
        return best;
    }
}
