package spoolyard.analysis.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * Finds what lateness costs in changeovers: plans of which none is at least as good as another in both.
 *
 * <p>It first searches for either end, the one part before all else, then again and again between the two neighbours that are
 * farthest apart, weighing the parts so that both cost the same (the dichotomic scheme of Aneja and Nair, Management Science 25
 * (1979) 73-78). Chains begin at the one neighbour and at the other. As weighing alone misses plans that lie behind a
 * straight line between others, every plan that a chain passes is kept if none beats it.
 *
 * <p>Small books are solved exactly.
 *
 * <p>For one thread, once. The outcome depends on the problem, the settings and the starts alone if iterations are limited.
 */
public final class TradeOff {
    private static final double ABOVE_ALL = 1e4;

    private final SequencingProblem problem;
    private final SearchSettings settings;
    private final int steps;
    private final Stop stop;
    private final SplittableRandom seeds;
    private final List<TimedPlan> best = new ArrayList<>();
    private final List<List<TimedPlan>> searched = new ArrayList<>();

    /** Hears how far a search has come. */
    @FunctionalInterface
    public interface Watch {
        /**
         * A step is done.
         *
         * @param plans number of plans so far that no other beats
         * @param share of the steps that are done, 0 to 1
         */
        void reached(int plans, double share);
    }

    /**
     * Prepares a search.
     *
     * @param problem its changeovers' costs in the unit of the one part, its {@code latePerS} in that of the other; no cost of
     *     makespan
     * @param settings how; the limit is that of all steps together
     * @param steps searches between neighbours after those for both ends, {@code >= 0}
     * @param stop ends it early
     * @throws IllegalArgumentException if the makespan costs anything
     */
    public TradeOff(SequencingProblem problem, SearchSettings settings, int steps, Stop stop) {
        if (problem.makespanPerS() != 0) {
            throw new IllegalArgumentException("makespanPerS = " + problem.makespanPerS() + ". Must be 0.");
        }
        this.problem = problem;
        this.settings = settings;
        this.steps = steps;
        this.stop = stop;
        seeds = new SplittableRandom(settings.seed());
    }

    /**
     * Searches.
     *
     * @param starts plans to begin with; may be empty
     * @param watch hears of each step
     * @return from the least changeovers to the least lateness, in the units of the problem
     */
    public List<TimedPlan> solve(List<Plan> starts, Watch watch) {
        if (isExact()) {
            merge(ExactTradeOff.solve(problem));
            return List.copyOf(best);
        }
        return search(starts, watch);
    }

    /**
     * Whether the book is so small that the outcome is proved: no plan is left out that nothing beats.
     *
     * @return true for up to eight orders
     */
    public boolean isExact() {
        return ExactTradeOff.isFor(problem);
    }

    List<TimedPlan> search(List<Plan> starts, Watch watch) {
        List<Plan> all = new ArrayList<>(starts);
        all.add(CheapestInsertion.plan(problem));
        merge(all);
        double parity = parity(best.get(0));
        ExecutorService pool = Executors.newFixedThreadPool(settings.threads(), Sequencer::worker);
        try {
            search(pool, parity / ABOVE_ALL, List.of(best.get(0)));
            search(pool, parity * ABOVE_ALL, List.of(best.get(best.size() - 1)));
            for (int step = 0; step < steps && best.size() > 1; step++) {
                watch.reached(best.size(), (step + 2) / (steps + 2.0));
                List<TimedPlan> apart = farthestApart();
                search(pool, price(apart), apart);
                searched.add(apart);
            }
        } finally {
            pool.shutdownNow();
        }
        return List.copyOf(best);
    }

    /** The weight of lateness at which both parts of a plan cost the same. */
    private static double parity(TimedPlan plan) {
        return (1 + plan.changeoverCost()) / (1 + plan.lateCost());
    }

    private static double price(List<TimedPlan> apart) {
        TimedPlan first = apart.get(0);
        TimedPlan last = apart.get(1);
        return (last.changeoverCost() - first.changeoverCost()) / (first.lateCost() - last.lateCost());
    }

    /** The neighbours with the largest corner between them; those between which nothing was found come last. */
    private List<TimedPlan> farthestApart() {
        List<List<TimedPlan>> neighbours = new ArrayList<>();
        for (int i = 1; i < best.size(); i++) {
            neighbours.add(List.of(best.get(i - 1), best.get(i)));
        }
        return neighbours.stream()
                .max(Comparator.<List<TimedPlan>, Boolean>comparing(each -> !searched.contains(each))
                        .thenComparingDouble(TradeOff::corner))
                .orElseThrow();
    }

    private static double corner(List<TimedPlan> apart) {
        TimedPlan first = apart.get(0);
        TimedPlan last = apart.get(1);
        return (last.changeoverCost() - first.changeoverCost()) * (first.lateCost() - last.lateCost());
    }

    private void search(ExecutorService pool, double price, List<TimedPlan> from) {
        SequencingProblem weighed = weighed(price);
        List<Future<Archive>> running = new ArrayList<>();
        for (int chain = 0; chain < settings.chains(); chain++) {
            Plan start = from.get(chain % from.size()).plan();
            running.add(pool.submit(chain(weighed, price, start, seeds.nextLong())));
        }
        List<Plan> found = new ArrayList<>();
        running.forEach(chain -> found.addAll(await(chain).plans()));
        merge(found);
    }

    private SequencingProblem weighed(double price) {
        List<Job> jobs = problem.jobs().stream()
                .map(job -> new Job(
                        job.id(), job.product(), job.releaseS(), job.dueS(), job.latePerS() * price, job.runS()))
                .toList();
        return new SequencingProblem(jobs, problem.lines(), 0);
    }

    private Callable<Archive> chain(SequencingProblem weighed, double price, Plan start, long seed) {
        int waves = (settings.chains() + settings.threads() - 1) / settings.threads();
        boolean isTimed = settings.limit().seconds() < Double.POSITIVE_INFINITY;
        double share = 1.0 / (steps + 2) / (isTimed ? waves : 1);
        return () -> {
            Archive archive = new Archive();
            new Annealing(weighed, seed, schedule -> {
                        double changeovers = schedule.changeovers();
                        archive.show(changeovers, (schedule.cost - changeovers) / price, schedule::plan);
                    })
                    .run(start, new Budget(settings.limit(), share, stop), SearchWatch.UNHEARD);
            return archive;
        };
    }

    /** Plans of a chain may be beaten by those of another; their exact parts decide. */
    private void merge(List<Plan> found) {
        Archive archive = new Archive();
        best.forEach(timed -> archive.show(timed.changeoverCost(), timed.lateCost(), timed::plan));
        for (Plan plan : found) {
            TimedPlan timed = TimedPlan.of(problem, plan);
            archive.show(timed.changeoverCost(), timed.lateCost(), () -> plan);
        }
        best.clear();
        archive.plans().forEach(plan -> best.add(TimedPlan.of(problem, plan)));
    }

    private Archive await(Future<Archive> chain) {
        try {
            return chain.get();
        } catch (InterruptedException interruption) {
            stop.ask();
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the search was interrupted", interruption);
        } catch (ExecutionException failure) {
            throw new IllegalStateException("the search broke off: " + failure.getCause(), failure.getCause());
        }
    }
}
