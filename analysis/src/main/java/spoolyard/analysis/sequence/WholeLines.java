package spoolyard.analysis.sequence;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;

/**
 * A bound on changeovers and lateness together that prices whole sequences of lines. For one thread, which has others work for it.
 *
 * <p>Give each order a worth {@code u}, of either sign. A plan makes each order once, so that its cost is the sum of all worths, plus, for
 * each line, what the changeovers and the lateness of the line's sequence cost less what the orders of the sequence are worth. No line's
 * term is less than that of the cheapest sequence of any of the orders that the line can make, each once at most, by real
 * changeovers, releases, hours and due dates ({@link CheapestSequence}, which gives a bound on it if it takes too long). So the sum of the worths and
 * of these least terms is a bound for any worths. {@link WorthSteps} seeks the best. Orders that are frozen are made first
 * on their line; what they cost is added, and no other sequence makes them.
 *
 * <p>All that this leaves out of a plan is that sequences of different lines are each others' business only by way of the worths: by
 * linear programming duality the best worths give the cost of the best plan in which each line may follow several sequences, each for
 * a share, and each order is made once in all.
 *
 * <p>The reckoning ends when its budget is used up, when it is clear that little is left to gain, or when the bound
 * reaches what the plan costs. It depends on no clock unless the budget does.
 *
 * <p>Source, from memory: relaxation of parallel machines into sequences, each machine's by a dynamic programme over time: Pessoa, Uchoa,
 * Poggi de Aragão and Rodrigues, Mathematical Programming Computation 2 (2010); Lagrangian duality: Geoffrion, Mathematical
 * Programming Study 2 (1974).
 */
final class WholeLines {
    private static final double LONGER = 1.3;
    private static final double REACH = 4;
    private static final double MOST_REACH = 150;
    private static final double LEAST_REACH = 0.006;
    private static final double NEXT_REACH = 1.2;
    private static final double TOLERANCE = 5e-6;
    private static final double ENOUGH = 0.1;
    private static final double MUCH = 0.5;
    private static final double FARTHER = 1.5;
    private static final double NEARER = 0.7;
    private static final int MOST_FAILURES = 3;
    /** With fewer, the bound of a large book is still far below 0. */
    private static final double STEPS_AN_ORDER = 0.1;

    private static final double STALLED = 5e-4;
    private static final double ROUNDING = 1e-10;

    private final TimedPlan plan;
    private final List<LineOrders> lines;
    private final double lastS;
    private final double planCost;
    private final double perOrder;
    private final WorthSteps steps;
    private final ConcurrentLinkedDeque<PartialSequences> stores = new ConcurrentLinkedDeque<>();
    private double best = Double.NEGATIVE_INFINITY;
    private double settled;
    private double model;
    private int failures;
    private double work;

    /**
     * Prepares it.
     *
     * @param problem without week ends
     * @param plan a good plan, whose changeovers and lateness cost more than 0; guides the search for the worths
     * @param lastS worked seconds until its last line is done, {@code > 0}
     */
    WholeLines(SequencingProblem problem, TimedPlan plan, double lastS) {
        this.plan = plan;
        planCost = plan.changeoverCost() + plan.lateCost();
        this.lastS = lastS * LONGER;
        lines = LineOrders.of(problem);
        boolean[] isFree = new boolean[problem.jobs().size()];
        lines.forEach(line -> IntStream.range(0, isFree.length)
                .filter(order -> line.productOf[order] >= 0)
                .forEach(order -> isFree[order] = true));
        long free =
                IntStream.range(0, isFree.length).filter(order -> isFree[order]).count();
        perOrder = planCost / Math.max(1, free);
        double[] start = FirstWorths.of(lines, plan.plan(), isFree);
        steps = new WorthSteps(start, isFree, lines.size(), TOLERANCE * planCost);
    }

    /**
     * The bound.
     *
     * @param budget how long to seek; a step counts as so many changes of a search as take about as long
     * @param threads how many lines are reckoned at once; the bound doesn't depend on it
     * @return money that no plan goes below; minus infinity if the budget is too small for the steps that a book of that size needs
     */
    double bound(Budget budget, int threads) {
        Stage rough = Stage.rough(lines, lastS);
        if (rough.work(lines) * steps.orders() * STEPS_AN_ORDER > budget.iterations()) {
            return best;
        }
        ExecutorService pool = Executors.newFixedThreadPool(threads, Sequencer::worker);
        try {
            boolean goesOn = seek(rough, budget, pool);
            Stage fine = rough.finer();
            while (goesOn) {
                double before = best;
                goesOn = seek(fine, budget, pool) && best - before > STALLED * planCost;
                fine = fine.longer();
            }
        } finally {
            pool.shutdownNow();
        }
        return best;
    }

    /** Returns whether there may be something left to gain in the next stage. */
    private boolean seek(Stage stage, Budget budget, ExecutorService pool) {
        List<CheapestSequence> searches = begin(stage);
        for (int step = 0; step < stage.steps(); step++) {
            if (!budget.goesOn(Math.round(work))) {
                return false;
            }
            double value = value(searches, stage, pool);
            best = Math.max(best, value);
            if (LowerBound.isReached(planCost, best)) {
                return false;
            }
            judge(value);
            model = steps.next();
            if (model - settled < stage.little() * planCost) {
                break;
            }
        }
        return steps.dropNotPossible() || stage.isRough();
    }

    private List<CheapestSequence> begin(Stage stage) {
        steps.back();
        steps.reach(perOrder * (stage.isRough() ? REACH : NEXT_REACH));
        settled = Double.NEGATIVE_INFINITY;
        model = Double.POSITIVE_INFINITY;
        failures = 0;
        List<CheapestSequence> searches = new ArrayList<>();
        for (int line = 0; line < lines.size(); line++) {
            CheapestSequence search = new CheapestSequence(stage.toGo(lines.get(line)));
            int[] planned = lines.get(line).free(plan.plan().lines().get(line));
            search.know(planned);
            steps.add(line, search.sequence(planned));
            searches.add(search);
        }
        return searches;
    }

    /** The bound by the worths now; the sequences found are added. */
    private double value(List<CheapestSequence> searches, Stage stage, ExecutorService pool) {
        double[] worth = steps.worth().clone();
        List<Future<CheapestSequence.Found>> running = new ArrayList<>();
        for (int line = 0; line < lines.size(); line++) {
            CheapestSequence search = searches.get(line);
            int most = stage.most(lines.get(line));
            running.add(pool.submit(() -> find(search, worth, most)));
        }
        double value = steps.sum();
        work = 0;
        for (int line = 0; line < lines.size(); line++) {
            CheapestSequence.Found found = found(running.get(line));
            value += found.least() + lines.get(line).frozenMoney;
            steps.add(line, found.like());
            steps.add(line, found.best());
            steps.dropBelow(line, found.least());
            work += stage.work(lines.get(line), found.continued());
        }
        return value - ROUNDING * planCost;
    }

    private CheapestSequence.Found find(CheapestSequence search, double[] worth, int most) {
        PartialSequences waiting = stores.poll();
        PartialSequences store = waiting == null ? new PartialSequences() : waiting;
        CheapestSequence.Found found = search.find(worth, most, store);
        stores.push(store);
        return found;
    }

    private static CheapestSequence.Found found(Future<CheapestSequence.Found> running) {
        try {
            return running.get();
        } catch (InterruptedException interruption) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the bound was interrupted", interruption);
        } catch (ExecutionException failure) {
            throw new IllegalStateException("the bound broke off: " + failure.getCause(), failure.getCause());
        }
    }

    /** Settles where the bound is better by enough of what the model promised, and fits the reach. */
    private void judge(double value) {
        double promised = model - settled;
        if (settled == Double.NEGATIVE_INFINITY || value - settled > ENOUGH * promised) {
            boolean isMuch = value - settled > MUCH * promised;
            steps.settle();
            settled = value;
            failures = 0;
            steps.reach(isMuch ? Math.min(steps.reach() * FARTHER, MOST_REACH * perOrder) : steps.reach());
        } else if (++failures == MOST_FAILURES || value < settled - promised) {
            steps.reach(Math.max(steps.reach() * NEARER, LEAST_REACH * perOrder));
            failures = 0;
        }
    }
}
