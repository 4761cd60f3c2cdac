package spoolyard.core.plant;

import java.util.List;

/**
 * Purge estimated for each pair of colours, in melt volumes, so that it holds for every line. Immutable.
 *
 * @param pairs each pair of different colours once
 */
public record PurgeEstimate(List<Pair> pairs) implements PurgeRule {
    /** Copies the list. */
    public PurgeEstimate {
        pairs = List.copyOf(pairs);
    }

    /**
     * A pair.
     *
     * @param fromColour colour code before
     * @param toColour colour code after
     * @param holdUps mass run to waste over the hold-up of the line, {@code >= 0}
     */
    public record Pair(String fromColour, String toColour, double holdUps) {}
}
