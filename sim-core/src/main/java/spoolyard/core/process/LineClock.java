package spoolyard.core.process;

import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.LineState;

/** Time in state of a line, with what it would have made in its running time. */
final class LineClock {
    private final World world;
    private final LineLedger ledger;
    private final StateClock<LineState> states =
            new StateClock<>(LineState.values(), LineState::isActive, LineState.NOT_SCHEDULED);
    private double ratedKgPerS;
    private double actualKgPerS;
    private long last;

    LineClock(World world, LineLedger ledger) {
        this.world = world;
        this.ledger = ledger;
    }

    LineState state() {
        return states.state();
    }

    void enter(LineState state) {
        book();
        states.enter(state, world.now());
    }

    /** Rate of the line with its product, and at what rate it really makes it, from now on. */
    void rates(double rated, double actual) {
        book();
        ratedKgPerS = rated;
        actualKgPerS = actual;
    }

    /** Books the rated output of the present state up to now. */
    void book() {
        double seconds = Ticks.toSeconds(world.now() - last);
        last = world.now();
        LineState state = states.state();
        if (state == LineState.RUNNING || state == LineState.SLOWED) {
            ledger.ratedKg += seconds * ratedKgPerS;
            ledger.slowedLossKg += seconds * (ratedKgPerS - actualKgPerS);
        }
    }

    /** Books the present state up to now and gives the time in each. */
    StateClock<LineState> close() {
        book();
        states.close(world.now());
        return states;
    }
}
