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
import java.util.function.IntFunction;

/**
 * Numbered pieces of work done on several threads at once, their outcomes in the order of the numbers.
 *
 * <p>Where each piece depends on its number alone, the outcomes are the same for any number of threads.
 *
 * <p>May be cancelled from any thread; otherwise for one thread. May run again and again until cancelled.
 */
final class SideBySide {
    private final int threads;
    private volatile boolean cancelled;

    /**
     * Prepares to work.
     *
     * @param threads pieces at once, {@code >= 1}
     */
    SideBySide(int threads) {
        this.threads = threads;
    }

    /**
     * Does all pieces on a pool of their own.
     *
     * @param <S> what comes of a piece
     * @param count how many, {@code >= 1}
     * @param work does the piece of a number, from 0; called on the pool's threads, several at once
     * @param progress hears of each piece done
     * @return the outcomes, in the order of the numbers
     * @throws CancellationException if cancelled or interrupted before the last was done
     * @throws ReplicationFailedException if a piece broke off, with its number; those not yet begun are not done
     */
    <S> List<S> run(int count, IntFunction<S> work, Progress progress) {
        ExecutorService pool = Executors.newFixedThreadPool(Math.min(threads, count), SideBySide::worker);
        boolean isWhole = false;
        try {
            CompletionService<S> finished = new ExecutorCompletionService<>(pool);
            Map<Future<S>, Integer> numbers = new IdentityHashMap<>();
            for (int i = 0; i < count; i++) {
                int number = i;
                numbers.put(finished.submit(() -> attempt(number, work)), number);
            }
            List<S> outcomes = collect(finished, numbers, progress);
            isWhole = true;
            return outcomes;
        } finally {
            cancelled |= !isWhole;
            pool.shutdownNow();
        }
    }

    /** Begins no further piece. Those under way run to their end, unheard. */
    void cancel() {
        cancelled = true;
    }

    private <S> S attempt(int number, IntFunction<S> work) {
        if (cancelled) {
            throw new CancellationException("cancelled before replication " + number);
        }
        return work.apply(number);
    }

    private static <S> List<S> collect(
            CompletionService<S> finished, Map<Future<S>, Integer> numbers, Progress progress) {
        int count = numbers.size();
        List<S> outcomes = new ArrayList<>(Collections.nCopies(count, null));
        progress.reached(0, count);
        for (int done = 1; done <= count; done++) {
            Future<S> next = next(finished);
            int number = numbers.remove(next);
            outcomes.set(number, outcome(next, number));
            progress.reached(done, count);
        }
        return Collections.unmodifiableList(outcomes);
    }

    private static <S> Future<S> next(CompletionService<S> finished) {
        try {
            return finished.take();
        } catch (InterruptedException interruption) {
            throw interrupted();
        }
    }

    private static <S> S outcome(Future<S> ended, int number) {
        try {
            return ended.get();
        } catch (InterruptedException interruption) {
            throw interrupted();
        } catch (ExecutionException failure) {
            if (failure.getCause() instanceof CancellationException cancellation) {
                throw cancellation;
            }
            throw new ReplicationFailedException(number, failure.getCause());
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
