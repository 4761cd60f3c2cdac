package spoolyard.analysis.experiment;

import java.util.List;
import java.util.function.IntFunction;

/**
 * Gives replications by their numbers.
 *
 * @param <S> what is kept of a replication
 */
@FunctionalInterface
public interface Source<S> {
    /**
     * Runs some replications.
     *
     * @param first number of the first, {@code >= 0}
     * @param count how many, {@code >= 1}
     * @param progress hears of each run done
     * @return one for each, in order; the same number gives the same
     * @throws ReplicationFailedException if one broke off
     */
    List<S> take(int first, int count, Progress progress);

    /**
     * Replications run side by side.
     *
     * @param <S> what is kept of a replication
     * @param work runs the replication of a number; called on several threads at once
     * @param threads how many at once, {@code >= 1}
     * @return gives them in order
     */
    static <S> Source<S> of(IntFunction<S> work, int threads) {
        CommonNumbers<S> alone = new CommonNumbers<>((alternative, replication) -> work.apply(replication), threads);
        return (first, count, progress) -> alone.run(1, first, count, progress).stream()
                .map(replication -> replication.get(0))
                .toList();
    }
}
