package spoolyard.analysis.experiment;

/** Hears how far an experiment has come. */
@FunctionalInterface
public interface Progress {
    /** Hears nothing. */
    Progress UNHEARD = (done, total) -> {};

    /**
     * Another replication is done. Called on the thread that runs the experiment, never twice at once.
     *
     * @param done replications done, from 0 at the start to {@code total}
     * @param total replications in all
     */
    void reached(int done, int total);
}
