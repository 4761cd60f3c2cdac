package spoolyard.analysis.experiment;

/**
 * Observes one alternative in one replication. Called from several threads at once, so it must not share mutable state
 * between calls.
 *
 * @param <S> what is observed
 */
@FunctionalInterface
public interface Trial<S> {
    /**
     * Runs a replication of an alternative. The same numbers give the same observation, whatever else runs; the same
     * replication of two alternatives has the same luck wherever they agree.
     *
     * @param alternative number of the alternative, from 0
     * @param replication number of the replication, from 0
     * @return what was observed
     */
    S observe(int alternative, int replication);
}
