package spoolyard.core.plant;

import java.util.List;

/**
 * All that a run needs to know. Immutable, and checked by whoever made it: a run trusts it.
 *
 * @param name the plant's name
 * @param horizonTicks length of the run, ticks, {@code > 0}
 * @param lines the lines
 * @param crew the roles and their rules
 * @param shifts every shift that overlaps the run, by start; those of one pattern don't overlap each other
 * @param changeovers what a line does between orders
 * @param finishing the way of a spool after the line
 * @param book the orders
 * @param drying what the lines share to prepare material
 */
public record Plant(
        String name,
        long horizonTicks,
        List<Line> lines,
        Crew crew,
        List<Shift> shifts,
        ChangeoverRules changeovers,
        Finishing finishing,
        OrderBook book,
        DryingRoom drying) {
    /** Copies the lists. */
    public Plant {
        lines = List.copyOf(lines);
        shifts = List.copyOf(shifts);
    }

    /**
     * A plant whose material needs no preparation.
     *
     * @param name as above
     * @param horizonTicks as above
     * @param lines as above
     * @param crew as above
     * @param shifts as above
     * @param changeovers as above
     * @param finishing as above
     * @param book as above
     */
    public Plant(
            String name,
            long horizonTicks,
            List<Line> lines,
            Crew crew,
            List<Shift> shifts,
            ChangeoverRules changeovers,
            Finishing finishing,
            OrderBook book) {
        this(name, horizonTicks, lines, crew, shifts, changeovers, finishing, book, DryingRoom.NONE);
    }
}
