package spoolyard.analysis.experiment;

import java.util.List;

/**
 * What an experiment gave that stopped by itself. Immutable.
 *
 * @param <S> what is kept of a replication
 * @param observations one a replication, in order
 * @param width width of interval over them; not a number where there is none
 * @param stop why it stopped
 */
public record Grown<S>(List<S> observations, double width, Stop stop) {
    /** Why an experiment stopped. */
    public enum Stop {
        /** The interval is as narrow as was wanted. */
        PRECISE,
        /** The time was up. */
        TIME,
        /** As many replications as there may be. */
        CAP
    }

    /** Copies the list. */
    public Grown {
        observations = List.copyOf(observations);
    }
}
