package spoolyard.analysis.experiment;

/** A replication broke off; the cause says why. */
public final class ReplicationFailedException extends RuntimeException {
    private final int replication;

    /**
     * Says which replication broke off.
     *
     * @param replication its number, from 0
     * @param cause why
     */
    ReplicationFailedException(int replication, Throwable cause) {
        super("replication " + replication + ": " + cause.getMessage(), cause);
        this.replication = replication;
    }

    /**
     * Which replication.
     *
     * @return its number, from 0
     */
    public int replication() {
        return replication;
    }
}
