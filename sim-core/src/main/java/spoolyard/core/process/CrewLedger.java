package spoolyard.core.process;

import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.RunResult.CrewResult;

/** What a role has done in all shifts of one name. */
final class CrewLedger {
    private final long[] ticks = new long[Member.State.values().length];
    long tasks;
    long paidTicks;
    double ratedPaidTicks;
    private long waits;
    private long waitTicks;
    private long longestWaitTicks;

    void spent(Member.State state, long span) {
        ticks[state.ordinal()] += span;
    }

    /** Pays for a stretch of time. */
    void paid(long span, double payFactor) {
        paidTicks += span;
        ratedPaidTicks += span * payFactor;
    }

    /** A call waited for a person, or waited again for another to go on. */
    void waited(long span, boolean isAgain) {
        waits += isAgain ? 0 : 1;
        waitTicks += span;
        longestWaitTicks = Math.max(longestWaitTicks, span);
    }

    CrewResult result(String role, String shift) {
        long idle = ticks[Member.State.IDLE.ordinal()];
        long walking = ticks[Member.State.WALKING.ordinal()];
        long working = ticks[Member.State.WORKING.ordinal()];
        return new CrewResult(
                role,
                shift,
                Ticks.toSeconds(idle + walking + working),
                Ticks.toSeconds(walking + working),
                Ticks.toSeconds(walking),
                Ticks.toSeconds(ticks[Member.State.ON_BREAK.ordinal()]),
                Ticks.toSeconds(paidTicks),
                tasks,
                waits == 0 ? 0 : Ticks.toSeconds(waitTicks) / waits,
                Ticks.toSeconds(longestWaitTicks),
                ratedPaidTicks / Ticks.PER_SECOND);
    }
}
