package spoolyard.core.engine;

import java.util.Objects;

/**
 * Something that can happen at an instant. One object is one activity and is scheduled again and again, without
 * allocation; it is in the agenda once at most. Belongs to the thread of its engine.
 *
 * <p>Give subclasses a {@code toString()} that names entity and activity: faults carry it.
 */
public abstract class TimedEvent {
    /** The place of an event that is not scheduled. */
    static final int NOWHERE = -1;

    // Read and, but for the phase, written by the heap.
    final int phase;
    int place = NOWHERE;
    long sequence;

    private final Clock clock;

    /**
     * An event that is not scheduled.
     *
     * @param engine the run it belongs to
     * @param phase its place among events of the same instant
     */
    protected TimedEvent(Engine engine, Phase phase) {
        this.clock = engine.clock();
        this.phase = Objects.requireNonNull(phase, "phase").ordinal();
    }

    /** What happens. Called by the engine, at the scheduled instant, when the event has left the agenda. */
    protected abstract void happen();

    /**
     * Schedules the event. Cost: O(log n), n being the events pending.
     *
     * @param tick the instant, from now on and at most 2<sup>53</sup>; the present instant is allowed, and the event
     *     then happens after the one that is happening, whatever its phase
     * @throws IllegalStateException if the event is already scheduled, or the instant is in the past or beyond range
     */
    public final void at(long tick) {
        if (isScheduled()) {
            throw alreadyScheduled(tick);
        }
        clock.add(this, tick);
    }

    /**
     * Schedules the event a while from now; else as {@link #at}.
     *
     * @param ticks the while, {@code >= 0}
     * @throws IllegalStateException if the event is already scheduled, or {@code ticks} is negative or beyond range
     */
    public final void in(long ticks) {
        at(clock.now() + ticks);
    }

    /**
     * Schedules the event, or moves it if it is scheduled. A moved event counts as scheduled now: it goes behind the
     * others of its instant and phase, also when the instant stays the same. Cost: O(log n).
     *
     * @param tick the instant, as in {@link #at}
     * @throws IllegalStateException if the instant is in the past or beyond range; the event then stays as it was
     */
    public final void moveTo(long tick) {
        if (isScheduled()) {
            clock.move(this, tick);
        } else {
            clock.add(this, tick);
        }
    }

    /** Takes the event out of the agenda; does nothing if it is not scheduled. Cost: O(log n). */
    public final void cancel() {
        if (isScheduled()) {
            clock.take(this);
        }
    }

    /**
     * Whether the event is in the agenda.
     *
     * @return false before scheduling, after cancelling, and from the moment it happens
     */
    public final boolean isScheduled() {
        return place >= 0;
    }

    /**
     * The instant the event is scheduled for.
     *
     * @return ticks since the start
     * @throws IllegalStateException if the event is not scheduled
     */
    public final long tick() {
        if (!isScheduled()) {
            throw new IllegalStateException(this + ": tick() at tick " + clock.now() + ". Must be scheduled.");
        }
        return clock.tickOf(this);
    }

    private IllegalStateException alreadyScheduled(long tick) {
        return new IllegalStateException(
                this + ": already scheduled for tick " + tick() + ", at(" + tick + ") at tick " + clock.now() + ".");
    }
}
