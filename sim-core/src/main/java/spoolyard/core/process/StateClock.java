package spoolyard.core.process;

import java.util.EnumMap;
import java.util.Map;
import spoolyard.core.quantity.Ticks;

/**
 * Time in state of one station. Exact: the ticks over all states sum to the time since the start.
 *
 * @param <S> the states
 */
final class StateClock<S extends Enum<S>> {
    private final S[] states;
    private final long[] ticks;
    private S state;
    private long since;

    StateClock(S[] states, S initial) {
        this.states = states;
        this.ticks = new long[states.length];
        this.state = initial;
    }

    S state() {
        return state;
    }

    /** Enters a state; entering the present one changes nothing. */
    void enter(S next, long now) {
        if (next == state) {
            return;
        }
        close(now);
        state = next;
    }

    /** Books the time in the present state up to now. */
    void close(long now) {
        ticks[state.ordinal()] += now - since;
        since = now;
    }

    long ticksIn(S which) {
        return ticks[which.ordinal()];
    }

    /** Seconds in each state; every state is a key. */
    Map<S, Double> seconds() {
        Map<S, Double> seconds = new EnumMap<>(state.getDeclaringClass());
        for (S each : states) {
            seconds.put(each, Ticks.toSeconds(ticks[each.ordinal()]));
        }
        return seconds;
    }
}
