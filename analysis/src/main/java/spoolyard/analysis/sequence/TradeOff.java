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
    private static final int HALVINGS = 6;

    private final SequencingProblem problem;
    private final SearchSettings settings;
    private final int steps;
    private final double mostLate;
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
     * @param mostLate plans with more lateness are of no interest; may be infinite
     * @param stop ends it early
     * @throws IllegalArgumentException if the makespan costs anything
     */
    public TradeOff(SequencingProblem problem, SearchSettings settings, int steps, double mostLate, Stop stop) {
        if (problem.makespanPerS() != 0) {
            throw new IllegalArgumentException("makespanPerS = " + problem.makespanPerS() + ". Must be 0.");
        }
        this.problem = problem;
        this.settings = settings;
        this.steps = steps;
        this.mostLate = mostLate;
        this.stop = stop;
        seeds = new SplittableRandom(settings.seed());
    }

    /**
     * Searches.
     *
     * @param starts plans to begin with; may be empty
     * @param watch hears of each step
     * @return from the least changeovers to the least lateness, in the units of the problem; empty if every plan found is too
     *     late
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
        return ExactTradeOff.isFor(problem) && !problem.hasWeekEnds();
    }

    List<TimedPlan> search(List<Plan> starts, Watch watch) {
        List<Plan> all = new ArrayList<>(starts);
        all.add(CheapestInsertion.plan(problem));
        merge(all);
        double parity = parity(TimedPlan.of(problem, all.get(0)));
        ExecutorService pool = Executors.newFixedThreadPool(settings.threads(), Sequencer::worker);
        try {
            search(pool, parity * ABOVE_ALL, starts(all));
            leastChangeovers(pool, parity, starts(all));
            for (int step = 0; step < steps; step++) {
                watch.reached(best.size(), (step + ends()) / (double) (steps + ends()));
                List<TimedPlan> apart = best.size() > 1 ? farthestApart() : best;
                search(pool, best.size() > 1 ? price(apart) : parity, plans(apart));
                searched.add(List.copyOf(apart));
            }
        } finally {
            pool.shutdownNow();
        }
        return List.copyOf(best);
    }

    private List<Plan> starts(List<Plan> otherwise) {
        return best.isEmpty()
                ? otherwise.subList(0, 1)
                : List.of(best.get(best.size() - 1).plan());
    }

    private static List<Plan> plans(List<TimedPlan> timed) {
        return timed.stream().map(TimedPlan::plan).toList();
    }

    /** Number of searches for both ends. */
    private int ends() {
        return mostLate < Double.POSITIVE_INFINITY ? 2 + HALVINGS : 2;
    }

    /** The end with the least changeovers: halves the price between two, one of which makes plans that are too late. */
    private void leastChangeovers(ExecutorService pool, double parity, List<Plan> from) {
        double low = parity / ABOVE_ALL;
        double high = parity * ABOVE_ALL;
        TimedPlan cheapest = search(pool, low, from);
        for (int i = 2; i < ends(); i++) {
            double middle = Math.sqrt(low * high);
            boolean isTooLate = search(
                                    pool,
                                    middle,
                                    List.of(
                                            cheapest.plan(),
                                            best.isEmpty()
                                                    ? cheapest.plan()
                                                    : best.get(0).plan()))
                            .lateCost()
                    > mostLate;
            low = isTooLate ? middle : low;
            high = isTooLate ? high : middle;
        }
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

    /** Searches at a price of lateness; returns what is best at that price, be it too late or not. */
    private TimedPlan search(ExecutorService pool, double price, List<Plan> from) {
        SequencingProblem weighed = weighed(price);
        List<Future<Archive>> running = new ArrayList<>();
        for (int chain = 0; chain < settings.chains(); chain++) {
            Plan start = from.get(chain % from.size());
            running.add(pool.submit(chain(weighed, price, start, seeds.nextLong())));
        }
        List<Plan> found = new ArrayList<>(from);
        running.forEach(chain -> found.addAll(await(chain).plans()));
        merge(found);
        return found.stream()
                .map(plan -> TimedPlan.of(problem, plan))
                .min(Comparator.comparingDouble(plan -> plan.changeoverCost() + price * plan.lateCost()))
                .orElseThrow();
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
        double share = 1.0 / (steps + ends()) / (isTimed ? waves : 1);
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
            if (timed.lateCost() <= mostLate) {
                archive.show(timed.changeoverCost(), timed.lateCost(), () -> plan);
            }
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
