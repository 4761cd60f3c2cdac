package spoolyard.analysis.experiment;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletionService;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorCompletionService;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import spoolyard.core.record.RunResult;

/**
 * Independent replications of one plant, run side by side on a pool of its own.
 *
 * <p>Each replication is reduced to a summary on the thread that made it and then forgotten, so memory grows with the
 * summaries only. The summaries come back in the order of the replications, and each depends on its number alone: the
 * outcome is the same for any number of threads.
 *
 * <p>May be cancelled from any thread; otherwise for one thread, once.
 */
public final class Experiment {
    private final Replicator replicator;
    private final int replications;
    private final int threads;
    private volatile boolean cancelled;

    /**
     * Prepares an experiment.
     *
     * @param replicator makes a replication
     * @param replications how many, {@code >= 1}
     * @param threads how many at once, {@code >= 1}
     * @throws IllegalArgumentException if either number is below 1
     */
    public Experiment(Replicator replicator, int replications, int threads) {
        if (replications < 1 || threads < 1) {
            throw new IllegalArgumentException(
                    "replications = " + replications + ", threads = " + threads + ". Both must be >= 1.");
        }
        this.replicator = replicator;
        this.replications = replications;
        this.threads = threads;
    }

    /**
     * Runs all replications.
     *
     * @param <S> the summary
     * @param summarise reduces a replication; called on the pool's threads, several at once
     * @param progress hears of each replication done
     * @return the summaries, in the order of the replications
     * @throws CancellationException if cancelled or interrupted before the last was done
     * @throws ReplicationFailedException if a replication broke off; those not yet begun are not run
     */
    public <S> List<S> run(Function<RunResult, S> summarise, Progress progress) {
        ExecutorService pool = Executors.newFixedThreadPool(Math.min(threads, replications), Experiment::worker);
        try {
            CompletionService<S> finished = new ExecutorCompletionService<>(pool);
            Map<Future<S>, Integer> numbers = new IdentityHashMap<>();
            for (int i = 0; i < replications; i++) {
                int replication = i;
                numbers.put(finished.submit(() -> attempt(replication, summarise)), replication);
            }
            return collect(finished, numbers, progress);
        } finally {
            cancelled = true;
            pool.shutdownNow();
        }
    }

    /** Begins no further replication. Those under way run to their end, unheard. */
    public void cancel() {
        cancelled = true;
    }

    private <S> S attempt(int replication, Function<RunResult, S> summarise) {
        if (cancelled) {
            throw new CancellationException("cancelled before replication " + replication);
        }
        return summarise.apply(replicator.replicate(replication));
    }

    private <S> List<S> collect(CompletionService<S> finished, Map<Future<S>, Integer> numbers, Progress progress) {
        List<S> summaries = new ArrayList<>(Collections.nCopies(replications, null));
        progress.reached(0, replications);
        for (int done = 1; done <= replications; done++) {
            Future<S> next = next(finished);
            int replication = numbers.remove(next);
            summaries.set(replication, summary(next, replication));
            progress.reached(done, replications);
        }
        return Collections.unmodifiableList(summaries);
    }

    private static <S> Future<S> next(CompletionService<S> finished) {
        try {
            return finished.take();
        } catch (InterruptedException interruption) {
            throw interrupted();
        }
    }

    private static <S> S summary(Future<S> ended, int replication) {
        try {
            return ended.get();
        } catch (InterruptedException interruption) {
            throw interrupted();
        } catch (ExecutionException failure) {
            if (failure.getCause() instanceof CancellationException cancellation) {
                throw cancellation;
            }
            throw new ReplicationFailedException(replication, failure.getCause());
        }
    }

    private static CancellationException interrupted() {
        Thread.currentThread().interrupt();
        return new CancellationException("interrupted");
    }

    private static Thread worker(Runnable work) {
        Thread thread = new Thread(work, "replications");
        thread.setDaemon(true);
        return thread;
    }
}
