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

    /**
     * An experiment that stops by itself knows its interval so far. Called on the thread that runs the experiment.
     *
     * @param width width of the interval over the replications so far, a part of one; not a number where there is none
     */
    default void narrowed(double width) {}
}
