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

    private final EventHeap heap;
    private final Turn turn = new Turn(this);
    private Runnable hook = NO_HOOK;
    private long now;
    private long end;
    private long executed;

    Clock() {
        this(new EventHeap());
    }

    private Clock(EventHeap heap) {
        super(new Agenda(heap));
        this.heap = heap;
        ((Agenda) eventList).belongTo(this);
    }

    long now() {
        return now;
    }

    long executed() {
        return executed;
    }

    void afterEach(Runnable newHook) {
        hook = newHook;
    }

    long tickOf(TimedEvent event) {
        return heap.tickOf(event);
    }

    void add(TimedEvent event, long tick) {
        requireReachable(event, tick);
        heap.add(event, tick);
    }

    void move(TimedEvent event, long tick) {
        requireReachable(event, tick);
        heap.move(event, tick);
    }

    void take(TimedEvent event) {
        heap.take(event);
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
        if (heap.size() > 0) {
            start();
        }
        advanceTo(endTick);
    }

    /** Called by SSJ's loop; an answer of null ends the loop, of {@link Turn} takes the first event. */
    @Override
    protected Event removeFirstEvent() {
        long tick = heap.firstTick();
        if (stopped || tick > end) {
            return null;
        }
        advanceTo(tick);
        executed++;
        return turn;
    }

    private void advanceTo(long tick) {
        if (tick < now) {
            throw new IllegalStateException("The clock would go back from tick " + now + " to " + tick + ".");
        }
        now = tick;
        currentTime = tick;
    }

    private void requireReachable(TimedEvent event, long tick) {
        if (tick < now || tick > LATEST) {
            throw unreachable(event, tick);
        }
    }

    private IllegalStateException unreachable(TimedEvent event, long tick) {
        return new IllegalStateException(
                event + ": tick = " + tick + ". Must be >= now = " + now + " and <= " + LATEST + ".");
    }

    /** The event whose turn it is, for SSJ's loop: one object for them all. */
    private static final class Turn extends Event {
        private final Clock clock;

        Turn(Clock clock) {
            super(clock);
            this.clock = clock;
        }

        @Override
        public void actions() {
            clock.heap.takeFirst().happen();
            if (clock.hook != NO_HOOK) {
                clock.hook.run();
            }
        }
    }
}
