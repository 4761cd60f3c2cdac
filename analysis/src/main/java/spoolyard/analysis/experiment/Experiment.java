package spoolyard.analysis.experiment;

import java.util.List;
import java.util.concurrent.CancellationException;
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
    private final SideBySide sideBySide;

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
        this.sideBySide = new SideBySide(threads);
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
        return sideBySide.run(replications, number -> summarise.apply(replicator.replicate(number)), progress);
    }

    /** Begins no further replication. Those under way run to their end, unheard. */
    public void cancel() {
        sideBySide.cancel();
    }
}
