package spoolyard.analysis.sequence;

import java.util.List;

/**
 * A line as the sequencer sees it. Immutable.
 *
 * @param name its name
 * @param hours when it works
 * @param changeovers what it costs and takes between products
 * @param frozen numbers of the orders that it makes first, in this order, whatever they cost
 * @param weekEnds when it is purged clean
 */
public record SequencedLine(
        String name, WorkingTime hours, Changeovers changeovers, List<Integer> frozen, WeekEnds weekEnds) {
    /** Copies the list. */
    public SequencedLine {
        frozen = List.copyOf(frozen);
    }

    /**
     * A line that is never purged clean.
     *
     * @param name as above
     * @param hours as above
     * @param changeovers as above
     * @param frozen as above
     */
    public SequencedLine(String name, WorkingTime hours, Changeovers changeovers, List<Integer> frozen) {
        this(name, hours, changeovers, frozen, WeekEnds.NONE);
    }

    SequencedLine withoutWeekEnds() {
        return new SequencedLine(name, hours, weekEnds.areNone() ? changeovers : weekEnds.least(changeovers), frozen);
    }
}
