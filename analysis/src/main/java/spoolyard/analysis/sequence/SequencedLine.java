package spoolyard.analysis.sequence;

import java.util.List;

/**
 * A line as the sequencer sees it. Immutable.
 *
 * @param name its name
 * @param hours when it works
 * @param changeovers what it costs and takes between products
 * @param frozen numbers of the orders that it makes first, in this order, whatever they cost
 */
public record SequencedLine(String name, WorkingTime hours, Changeovers changeovers, List<Integer> frozen) {
    /** Copies the list. */
    public SequencedLine {
        frozen = List.copyOf(frozen);
    }
}
