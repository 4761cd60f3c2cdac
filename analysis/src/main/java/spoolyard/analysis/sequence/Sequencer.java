package spoolyard.analysis.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Finds a good plan, or the best: the exact programme for small books, local search in several chains for all others, and a
 * lower bound, a quick one with the plan and better ones when asked for. The plan is never dearer than any that it is given
 * to start from.
 *
 * <p>Purges at the end of weeks are not seen by the chains: the plans that they find are reckoned with them, and the best is
 * made cheaper by moves that see them.
 *
 * <p>A search goes in rounds. In each, every chain anneals from the best plan so far with its own seed; the chains meet at
 * the end of the round. Chains and rounds depend on the limit and the seed alone.
 */
public final class Sequencer {
    private static final double[] USUAL_SHARES = {0.1, 0.3, 0.6};
    private static final double[] SHARES_OF_MANY_ORDERS = {0.3, 0.7};
    private static final double BOUND_SHARE = 0.25;
    private static final long REPORT_MS = 200;

    private final SequencingProblem problem;
    private final SearchSettings settings;
    private final Stop stop;
    private final SearchProgress progress;
    private final double[] roundShares;
    private final Optional<LineTour> tour;
    private volatile double bestCost;
    private double bound;

    /**
     * Prepares a search.
     *
     * @param problem what is to be solved
     * @param settings how
     * @param stop ends the search early when it is asked to
     * @param progress hears of it
     */
    public Sequencer(SequencingProblem problem, SearchSettings settings, Stop stop, SearchProgress progress) {
        this.problem = problem;
        this.settings = settings;
        this.stop = stop;
        this.progress = progress;
        tour = LineTour.isFor(problem) ? Optional.of(new LineTour(problem)) : Optional.empty();
        roundShares = Annealing.hasManyOrders(problem) ? SHARES_OF_MANY_ORDERS : USUAL_SHARES;
    }

    /**
     * Searches.
     *
     * @param starts plans to begin with; may be empty
     * @return the best plan found
     * @throws IllegalArgumentException if a start isn't a plan of the problem
     */
    public Solution solve(List<Plan> starts) {
        return bySharedHours(find(starts));
    }

    /**
     * Searches, with the quick bound alone.
     *
     * @param starts plans to begin with; may be empty
     * @return the best plan found; {@link #bounded} makes its bound better
     * @throws IllegalArgumentException if a start isn't a plan of the problem
     */
    public Solution find(List<Plan> starts) {
        if (ExactProgramme.isFor(problem) && !problem.hasWeekEnds()) {
            TimedPlan plan = TimedPlan.of(problem, ExactProgramme.solve(problem));
            return new Solution(plan, plan.cost(), true);
        }
        bound = LowerBound.of(problem.withoutWeekEnds());
        TimedPlan best = search(starts);
        return solution(best, bound);
    }

    /**
     * Seeks a better bound for a plan that was found, for at most a quarter of the limit of the search.
     *
     * @param found what a search came to
     * @return the same plan, with a bound that is no lower
     */
    public Solution bounded(Solution found) {
        Solution shared = bySharedHours(found);
        if (shared.isProvedBest()) {
            return shared;
        }
        Budget budget = new Budget(settings.limit(), BOUND_SHARE, stop);
        TimedPlan plan = found.plan();
        double better = LowerBound.byWholeLines(problem.withoutWeekEnds(), plan, budget, settings.threads());
        return solution(plan, Math.max(shared.bound(), better));
    }

    private Solution bySharedHours(Solution found) {
        TimedPlan plan = found.plan();
        return found.isProvedBest() ? found : solution(plan, LowerBound.of(problem.withoutWeekEnds(), plan));
    }

    private static Solution solution(TimedPlan plan, double bound) {
        return new Solution(plan, Math.min(bound, plan.cost()), LowerBound.isReached(plan.cost(), bound));
    }

    private TimedPlan search(List<Plan> starts) {
        List<Plan> all = new ArrayList<>(starts);
        all.add(CheapestInsertion.plan(problem));
        tour.ifPresent(line -> all.add(line.patched()));
        TimedPlan best = cheapest(all);
        bestCost = best.cost();
        ExecutorService pool = Executors.newFixedThreadPool(settings.threads(), Sequencer::worker);
        try {
            SplittableRandom seeds = new SplittableRandom(settings.seed());
            for (int round = 0; round < roundShares.length; round++) {
                List<Plan> found = new ArrayList<>(round(pool, best.plan(), round, seeds));
                found.add(0, best.plan());
                best = cheapest(found);
                bestCost = best.cost();
            }
        } finally {
            pool.shutdownNow();
        }
        return problem.hasWeekEnds() ? underWeekEnds(best.plan(), all) : best;
    }

    private TimedPlan underWeekEnds(Plan best, List<Plan> others) {
        List<Plan> plans = new ArrayList<>(others);
        plans.add(0, best);
        List<Plan> descended = plans.stream()
                .map(plan -> new WeekEndDescent(problem, plan, stop).descend())
                .toList();
        return cheapest(descended);
    }

    private TimedPlan cheapest(List<Plan> plans) {
        return plans.stream()
                .map(plan -> TimedPlan.of(problem, plan))
                .min(Comparator.comparingDouble(TimedPlan::cost))
                .orElseThrow();
    }

    private List<Plan> round(ExecutorService pool, Plan from, int round, SplittableRandom seeds) {
        int waves = (settings.chains() + settings.threads() - 1) / settings.threads();
        boolean isTimed = settings.limit().seconds() < Double.POSITIVE_INFINITY;
        double share = roundShares[round] / (isTimed ? waves : 1);
        List<Future<Plan>> running = new ArrayList<>();
        for (int chain = 0; chain < settings.chains(); chain++) {
            running.add(pool.submit(chain(from, round, share, seeds.nextLong())));
        }
        double before = 0;
        for (int i = 0; i < round; i++) {
            before += roundShares[i];
        }
        List<Plan> plans = new ArrayList<>();
        for (Future<Plan> chain : running) {
            plans.add(await(chain, before));
        }
        return plans;
    }

    private Callable<Plan> chain(Plan from, int round, double share, long seed) {
        return () -> {
            Budget budget = new Budget(settings.limit(), share, stop);
            if (tour.isPresent()) {
                TourSearch search = new TourSearch(tour.get(), seed);
                search.run(from, budget, this::found);
                return search.best();
            }
            if (LateLine.isFor(problem)) {
                LateSearch search = new LateSearch(problem, seed);
                search.run(from, budget, this::found);
                return search.best();
            }
            Annealing search = new Annealing(problem, seed);
            if (problem.lines().size() == 1 && round > 0) {
                search.descend(from, budget, this::found);
            } else {
                search.run(from, budget, this::found);
            }
            return search.best();
        };
    }

    private synchronized void found(double cost) {
        bestCost = Math.min(bestCost, cost);
    }

    private Plan await(Future<Plan> chain, double share) {
        while (true) {
            try {
                return chain.get(REPORT_MS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException notYet) {
                progress.reached(bestCost, bound, share);
            } catch (InterruptedException interruption) {
                stop.ask();
                Thread.currentThread().interrupt();
                throw new IllegalStateException("the search was interrupted", interruption);
            } catch (ExecutionException failure) {
                throw new IllegalStateException("the search broke off: " + failure.getCause(), failure.getCause());
            }
        }
    }

    static Thread worker(Runnable work) {
        Thread thread = new Thread(work, "sequencing");
        thread.setDaemon(true);
        return thread;
    }
}
