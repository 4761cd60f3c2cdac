package spoolyard.analysis.sequence;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * Simulated annealing over the whole plan: small moves, and now and then a part rebuilt. A change is accepted if the cost
 * rises by no more than the temperature times an exponential draw (which is Metropolis' rule); as the draw comes first, most
 * bad changes are seen to be bad long before their cost is reckoned to the end. For one thread.
 *
 * <p>Source: Kirkpatrick, Gelatt and Vecchi, Science 220 (1983).
 */
final class Annealing {
    private static final int SAMPLES = 2000;
    private static final int DESCENT = 20_000;
    private static final int REBUILD_EVERY = 1000;
    private static final double HOTTEST_QUANTILE = 0.1;
    private static final double COOLED = 1e-3;
    /**
     * With so many orders a start as hot as usual undoes the first plan, and most of the time goes by before it is as good again.
     * Measured with 1000 orders; with 120 it brought nothing.
     */
    private static final int MANY_ORDERS = 400;

    private static final double HOTTEST_OF_MANY = 0.3;
    private static final double COOLED_OF_MANY = 5e-3;

    private final Schedule schedule;
    private final SplittableRandom random;
    private final Moves moves;
    private final Rebuilding rebuilding;
    private final int[] movable;
    private final Consumer<Schedule> passed;
    private final boolean hasManyOrders;
    private Plan best;
    private double bestCost;

    Annealing(SequencingProblem problem, long seed) {
        this(problem, seed, schedule -> {});
    }

    /** One that shows every plan it passes. */
    Annealing(SequencingProblem problem, long seed, Consumer<Schedule> passed) {
        this.passed = passed;
        hasManyOrders = hasManyOrders(problem);
        schedule = new Schedule(problem);
        Neighbours neighbours = new Neighbours(problem, schedule.kernels);
        random = new SplittableRandom(seed);
        boolean[] isFrozen = new boolean[problem.jobs().size()];
        problem.lines().forEach(line -> line.frozen().forEach(job -> isFrozen[job] = true));
        movable = IntStream.range(0, isFrozen.length)
                .filter(job -> !isFrozen[job])
                .toArray();
        moves = new Moves(schedule, neighbours, random, movable);
        rebuilding = new Rebuilding(schedule, neighbours, random, movable);
    }

    /** Whether there are so many on several lines that a search has no time to begin hot. */
    static boolean hasManyOrders(SequencingProblem problem) {
        return problem.lines().size() > 1 && problem.jobs().size() >= MANY_ORDERS;
    }

    Plan best() {
        return best;
    }

    double bestCost() {
        return bestCost;
    }

    /** Searches from a plan. */
    void run(Plan from, Budget budget, SearchWatch watch) {
        schedule.set(from);
        best = from;
        bestCost = schedule.cost;
        if (movable.length == 0) {
            return;
        }
        double hottest = typicalRise(budget) * (hasManyOrders ? HOTTEST_OF_MANY : 1);
        double cooled = hasManyOrders ? COOLED_OF_MANY : COOLED;
        long iteration = 0;
        double temperature = hottest;
        while (budget.goesOn()) {
            if (iteration++ % 256 == 0) {
                temperature = hottest * Math.pow(cooled, budget.progress());
            }
            double before = schedule.cost;
            double limit = before - temperature * Math.log(1 - random.nextDouble());
            if (iteration % REBUILD_EVERY == 0) {
                rebuild(limit);
            } else {
                moves.attempt(limit);
            }
            if (schedule.cost != before) {
                passed.accept(schedule);
            }
            remember(watch);
        }
    }

    /** For one line: searches on by iterated descent. */
    void descend(Plan from, Budget budget, SearchWatch watch) {
        schedule.set(from);
        best = from;
        bestCost = schedule.cost;
        new Descent(schedule, random, budget).run(() -> remember(watch));
    }

    private void remember(SearchWatch watch) {
        if (schedule.cost < bestCost - 1e-9 * Math.abs(bestCost)) {
            bestCost = schedule.cost;
            best = schedule.plan();
            watch.found(bestCost);
        }
    }

    private void rebuild(double limit) {
        Plan before = schedule.plan();
        rebuilding.rebuild();
        if (schedule.cost > limit) {
            schedule.set(before);
        }
    }

    /** After a short descent: how much dearer the plan becomes by a change that makes it dearer, at a low quantile. */
    private double typicalRise(Budget budget) {
        for (int i = 0; i < DESCENT && budget.goesOn(); i++) {
            if (moves.attempt(schedule.cost) < Double.POSITIVE_INFINITY) {
                passed.accept(schedule);
            }
        }
        double[] rises = new double[SAMPLES];
        int count = 0;
        Plan settled = schedule.plan();
        for (int i = 0; i < SAMPLES * 5 && count < SAMPLES; i++) {
            double before = schedule.cost;
            double after = moves.attempt(Double.MAX_VALUE);
            if (after < Double.POSITIVE_INFINITY && after > before) {
                rises[count++] = after - before;
                passed.accept(schedule);
            }
            if (i % 20 == 0) {
                schedule.set(settled);
            }
        }
        schedule.set(settled);
        Arrays.sort(rises, 0, count);
        return count == 0 ? 1 : rises[(int) (HOTTEST_QUANTILE * count)];
    }
}
