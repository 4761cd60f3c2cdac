package spoolyard.core.plant;

import java.util.List;

/**
 * Purge estimated for pairs of colours, in hold-ups, so that it holds for every line. Immutable.
 *
 * @param pairs pairs of different colours, each once
 * @param otherwise formula for pairs that were not estimated; its {@code classSteps} are empty if there is none
 */
public record PurgeEstimate(List<Pair> pairs, PurgeFormula otherwise) implements PurgeRule {
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
