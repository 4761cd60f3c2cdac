package spoolyard.core.engine;

import umontreal.ssj.simevents.Event;

/**
 * One event's entry in the agenda: the SSJ event behind a {@link TimedEvent}, which keeps SSJ's own ways of scheduling
 * (relative, in doubles, unchecked) out of reach of the model. Reused for every scheduling of its event.
 */
final class Appointment extends Event {
    private static final int NOWHERE = -1;
    private static final double NOT_SCHEDULED = -10.0; // SSJ's mark, see Event and Simulator

    private final TimedEvent owner;
    private final Clock clock;
    private final int phase;
    private long tick;
    private int place = NOWHERE;

    Appointment(TimedEvent owner, Clock clock, Phase phase) {
        super(clock);
        this.owner = owner;
        this.clock = clock;
        this.phase = phase.ordinal();
        this.priority = this.phase;
    }

    int phase() {
        return phase;
    }

    long tick() {
        return tick;
    }

    boolean isScheduled() {
        return place >= 0;
    }

    int place() {
        return place;
    }

    void moveInAgenda(int newPlace) {
        place = newPlace;
    }

    void enterAgenda(long atTick) {
        tick = atTick;
        eventTime = atTick;
    }

    void leaveAgenda() {
        place = NOWHERE;
        eventTime = NOT_SCHEDULED;
    }

    @Override
    public void actions() {
        owner.happen();
        clock.happened();
    }

    @Override
    public String toString() {
        return owner.toString();
    }
}
