package spoolyard.analysis.experiment;

import spoolyard.core.record.RunResult;

/** Makes one replication. Called from several threads at once, so it must not share mutable state between calls. */
@FunctionalInterface
public interface Replicator {
    /**
     * Runs a replication from start to horizon. The same number gives the same result, whatever else runs.
     *
     * @param replication number of the replication, from 0
     * @return what it tells
     */
    RunResult replicate(int replication);
}
