package spoolyard.core.engine;

import java.util.Objects;
import spoolyard.core.quantity.Ticks;

/**
 * The clock and the run loop of one simulation run: SSJ's simulator over an agenda of our own. One run, one engine, one
 * thread; used once.
 *
 * <p>Time counts whole ticks from 0, see {@link Ticks}. Events are {@link TimedEvent}s made for this engine; they
 * happen in the order (tick, {@link Phase}, sequence of scheduling). Example:
 *
 * <pre>{@code
 * Engine engine = new Engine();
 * TimedEvent bell = new TimedEvent(engine, Phase.CALENDAR) {
 *     protected void happen() {
 *         in(8 * Ticks.PER_HOUR);
 *     }
 * };
 * bell.at(6 * Ticks.PER_HOUR);
 * engine.runUntil(24 * Ticks.PER_HOUR); // rings at 6, 14 and 22 h
 * }</pre>
 */
public final class Engine {
    private final Clock clock = new Clock();

    /** A clock at tick 0 and an empty agenda. */
    public Engine() {
        // Declared so that it can be documented.
    }

    /**
     * The present instant. It never decreases.
     *
     * @return ticks since the start, {@code 0 ..} {@link Ticks#NEVER}
     */
    public long now() {
        return clock.now();
    }

    /**
     * Lets every event up to and at an instant happen, also those scheduled on the way, then sets the clock to it.
     * Can be called again with the same or a later instant. Cost: O(log n) for each event, n being those pending.
     *
     * @param endTick last instant to run, {@link #now()} {@code ..} {@link Ticks#NEVER}
     * @throws IllegalArgumentException if {@code endTick} is outside that range
     * @throws IllegalStateException if called from an event, or if an event is scheduled in the past
     */
    public void runUntil(long endTick) {
        clock.runUntil(endTick);
    }

    /**
     * Number of events that have happened.
     *
     * @return a count, {@code >= 0}
     */
    public long executed() {
        return clock.executed();
    }

    /**
     * Sets what is called after each event, at the event's instant; replaces what was set before. None by default, and
     * then free of cost. Meant for checking what must always hold; it may look, and must not change the run.
     *
     * @param hook what to call
     */
    public void afterEach(Runnable hook) {
        clock.afterEach(Objects.requireNonNull(hook, "hook"));
    }

    Clock clock() {
        return clock;
    }
}
