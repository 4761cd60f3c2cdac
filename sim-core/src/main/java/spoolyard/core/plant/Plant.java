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
 * @param economy what it draws and costs
 * @param materials what it has in store
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
        DryingRoom drying,
        Economy economy,
        Materials materials) {
    /** Copies the lists. */
    public Plant {
        lines = List.copyOf(lines);
        shifts = List.copyOf(shifts);
    }

    /**
     * A plant whose material needs no preparation and never runs out, and whose energy and money nobody asks for.
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
        this(
                name,
                horizonTicks,
                lines,
                crew,
                shifts,
                changeovers,
                finishing,
                book,
                DryingRoom.NONE,
                Economy.NONE,
                Materials.NONE);
    }

    /**
     * Spools of an order that lines have yet to make at the start of the run.
     *
     * @param order one of the book
     * @return those ordered less those that stand in racks
     */
    public int toMake(Order order) {
        return order.spools() - finishing.openingSpools(order.id());
    }

    /**
     * The same plant, valued otherwise.
     *
     * @param other what it draws and costs
     * @return a plant that runs alike
     */
    public Plant with(Economy other) {
        return new Plant(
                name, horizonTicks, lines, crew, shifts, changeovers, finishing, book, drying, other, materials);
    }

    /**
     * The same plant with another store.
     *
     * @param other what it has in store
     * @return the plant
     */
    public Plant with(Materials other) {
        return new Plant(name, horizonTicks, lines, crew, shifts, changeovers, finishing, book, drying, economy, other);
    }

    /**
     * The same plant with other orders.
     *
     * @param other the orders and how they are chosen
     * @return the plant
     */
    public Plant with(OrderBook other) {
        return new Plant(
                name, horizonTicks, lines, crew, shifts, changeovers, finishing, other, drying, economy, materials);
    }
}
