package spoolyard.core.engine;

/**
 * The order of events that share an instant: first declared, first served. Immutable.
 *
 * <p>Two events of one instant and one phase happen in the order in which they were scheduled. Together (tick, phase,
 * sequence) is a total order, so a run never depends on how the agenda is built.
 *
 * @see <a href="../../../../../../../../docs/decisions/0002-order-of-simultaneous-events.md">decision 0002</a>
 */
public enum Phase {
    /**
     * Something that was under way ends: a spool is full, a repair is done, a pallet is closed. First, because what
     * ends at an instant has taken its whole time before it; whoever looks at this instant must find it done.
     */
    FINISH,
    /**
     * What ended gives back what it held: a place on the rack, a crew member, a station. After every
     * {@link #FINISH}, so that all that falls free at an instant is free together and the next taker can choose
     * among all of it; before {@link #CALENDAR}, so that a task done at the stroke of the shift is done in that shift.
     */
    RELEASE,
    /**
     * The time of day changes the plant: a shift starts or ends, a break, a planned stop, a holiday, an hour of the
     * tariff. After the work that ended with the old shift, before any work that starts with the new one.
     */
    CALENDAR,
    /**
     * The next taker is chosen and starts. After {@link #RELEASE} and {@link #CALENDAR}, because the choice needs
     * everything that is free and everyone who is on shift at this instant.
     */
    SERVE,
    /**
     * A level reaches a mark, or a wait runs out: accumulator full, hopper empty, exposure limit. After
     * {@link #SERVE}, so that help which comes at the very instant of the limit still comes in time.
     */
    SIGNAL,
    /**
     * Something new enters: an order is released, a breakdown strikes, a sample is due. After {@link #SERVE} of the
     * same instant, so that a newcomer does not overtake those who were already there.
     */
    ARRIVAL,
    /** Somebody looks and changes nothing: a reading, the end of a reporting period. Last, so that it sees the instant settled. */
    OBSERVE
}
