package spoolyard.analysis.experiment;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongSupplier;
import java.util.function.ToDoubleFunction;

/**
 * An experiment that runs replications until an interval is narrow enough, the time is up or a cap is reached.
 *
 * <p>Whether it has enough is asked after each replication in the order of their numbers; replications that ran ahead of
 * the one that sufficed are thrown away. What it gives depends on the number of replications alone, and without a budget
 * of time that number depends on the plant and the seed alone.
 *
 * <p>An interval from such a rule holds the truth a little less often than its level says, since the rule stops rather
 * when the variance happens to look small; the level is approached as the wanted width goes to 0. Source: Y. S. Chow and
 * H. Robbins, On the asymptotic theory of fixed-width sequential confidence intervals for the mean, Annals of
 * Mathematical Statistics 36 (1965) 457-462; A. M. Law, Simulation Modeling and Analysis, 5th ed. 2015, section 9.4.1.
 *
 * <p>For one thread, once.
 *
 * @param <S> what is kept of a replication
 */
public final class SequentialExperiment<S> {
    /** How far beyond what is needed by the present variance to run before looking again. */
    private static final double AHEAD = 0.6;

    private final Source<S> source;
    private final Effort effort;
    private final ToDoubleFunction<List<S>> width;
    private final LongSupplier nanoClock;

    /**
     * Prepares an experiment.
     *
     * @param source gives the replications
     * @param effort when it has enough
     * @param width width of interval over the replications so far, in the unit of the wanted width; not a number where
     *     there is none
     */
    public SequentialExperiment(Source<S> source, Effort effort, ToDoubleFunction<List<S>> width) {
        this(source, effort, width, System::nanoTime);
    }

    SequentialExperiment(Source<S> source, Effort effort, ToDoubleFunction<List<S>> width, LongSupplier nanoClock) {
        this.source = source;
        this.effort = effort;
        this.width = width;
        this.nanoClock = nanoClock;
    }

    /**
     * Runs it.
     *
     * @param progress hears of each run done and of the width after each round
     * @return what it gave
     * @throws ReplicationFailedException if a replication broke off
     */
    public Grown<S> run(Progress progress) {
        long began = nanoClock.getAsLong();
        List<S> taken = new ArrayList<>(source.take(0, effort.fewest(), progress));
        int checked = effort.fewest();
        while (true) {
            for (; checked <= taken.size(); checked++) {
                if (suffices(taken.subList(0, checked))) {
                    return grown(taken.subList(0, checked), Grown.Stop.PRECISE, progress);
                }
            }
            int next = next(taken.size(), width.applyAsDouble(taken), nanoClock.getAsLong() - began);
            if (next == 0) {
                return grown(taken, taken.size() < effort.most() ? Grown.Stop.TIME : Grown.Stop.CAP, progress);
            }
            progress.narrowed(width.applyAsDouble(taken));
            taken.addAll(source.take(taken.size(), next, within(progress, taken.size(), next)));
        }
    }

    private boolean suffices(List<S> observations) {
        return effort.wantedWidth().isPresent()
                && width.applyAsDouble(observations) <= effort.wantedWidth().getAsDouble();
    }

    /** Replications of the next round; 0 if there is none. */
    private int next(int done, double present, long elapsedNanos) {
        long wanted = effort.most() - (long) done;
        if (effort.budget().isPresent()) {
            wanted = Math.min(wanted, affordable(effort.budget().get(), done, elapsedNanos));
        }
        if (effort.wantedWidth().isPresent() && wanted > 0) {
            wanted = Math.min(wanted, ahead(done, present / effort.wantedWidth().getAsDouble()));
        }
        boolean isOver = wanted <= 0;
        return isOver ? 0 : (int) Math.min(Math.max(wanted, effort.round()), effort.most() - (long) done);
    }

    private static long affordable(Duration budget, int done, long elapsedNanos) {
        long left = budget.toNanos() - elapsedNanos;
        return left <= 0 ? 0 : Math.max(1, (long) Math.floor((double) left * done / Math.max(1, elapsedNanos) / 2));
    }

    /** Part of what is lacking if the variance stays as it is; at most as many again. */
    private static long ahead(int done, double ratio) {
        double lacking = done * (ratio * ratio - 1);
        return Double.isNaN(lacking) ? done : Math.max(1, Math.min(done, (long) Math.ceil(AHEAD * lacking)));
    }

    private Grown<S> grown(List<S> observations, Grown.Stop stop, Progress progress) {
        progress.reached(observations.size(), observations.size());
        return new Grown<>(observations, width.applyAsDouble(observations), stop);
    }

    /** Progress of a round, told as part of all; never as if all were done. */
    private static Progress within(Progress progress, int before, int count) {
        return (done, total) ->
                progress.reached(before * (total / count) + done, (before + count) * (total / count) + 1);
    }
}
