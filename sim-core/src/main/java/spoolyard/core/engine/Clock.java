package spoolyard.core.engine;

import spoolyard.core.quantity.Ticks;
import umontreal.ssj.simevents.Event;
import umontreal.ssj.simevents.Simulator;

/**
 * SSJ's simulator with whole ticks, an end that can be moved on, and a check that time never goes back. The engine
 * changes it, nobody else.
 */
final class Clock extends Simulator {
    /** Last instant an event may be scheduled for: 2<sup>53</sup>, the last up to which a double counts exactly. */
    private static final long LATEST = 2 * Ticks.NEVER;

    private static final Runnable NO_HOOK = () -> {};

    private final Agenda agenda;
    private Runnable hook = NO_HOOK;
    private long now;
    private long end;
    private long executed;

    Clock() {
        this(new Agenda());
    }

    private Clock(Agenda agenda) {
        super(agenda);
        this.agenda = agenda;
    }

    long now() {
        return now;
    }

    long executed() {
        return executed;
    }

    void afterEach(Runnable hook) {
        this.hook = hook;
    }

    void add(Appointment appointment, long tick) {
        requireReachable(appointment, tick);
        agenda.add(appointment, tick);
    }

    void move(Appointment appointment, long tick) {
        requireReachable(appointment, tick);
        agenda.remove(appointment);
        agenda.add(appointment, tick);
    }

    void remove(Appointment appointment) {
        agenda.remove(appointment);
    }

    void runUntil(long endTick) {
        if (simulating) {
            throw new IllegalStateException("runUntil(" + endTick + ") at tick " + now + ". Not allowed in an event.");
        }
        if (endTick < now || endTick > Ticks.NEVER) {
            throw new IllegalArgumentException(
                    "endTick = " + endTick + ". Must be >= now = " + now + " and <= " + Ticks.NEVER + ".");
        }
        end = endTick;
        if (!agenda.isEmpty()) {
            start();
        }
        advanceTo(endTick);
    }

    /** Called by SSJ's loop; an answer of null ends the loop. */
    @Override
    protected Event removeFirstEvent() {
        if (stopped || agenda.firstTick() > end) {
            return null;
        }
        Appointment next = agenda.removeFirst();
        advanceTo(next.tick());
        executed++;
        return next;
    }

    void happened() {
        if (hook != NO_HOOK) {
            hook.run();
        }
    }

    private void advanceTo(long tick) {
        if (tick < now) {
            throw new IllegalStateException("The clock would go back from tick " + now + " to " + tick + ".");
        }
        now = tick;
        currentTime = tick;
    }

    private void requireReachable(Appointment appointment, long tick) {
        if (tick < now || tick > LATEST) {
            throw new IllegalStateException(
                    appointment + ": tick = " + tick + ". Must be >= now = " + now + " and <= " + LATEST + ".");
        }
    }
}
