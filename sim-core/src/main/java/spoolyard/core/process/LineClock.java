package spoolyard.core.process;

import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.LineState;

/** Time in state of a line, with what it would have made in its running time. */
final class LineClock {
    private final World world;
    private final LineLedger ledger;
    private final StateClock<LineState> states =
            new StateClock<>(LineState.values(), LineState::isActive, LineState.NOT_SCHEDULED);
    private double kgPerS;
    private double share = 1;
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

    /** Rate at full speed from now on. */
    void rate(double itsKgPerS) {
        book();
        kgPerS = itsKgPerS;
    }

    /** Share of full speed from now on. */
    void share(double itsShare) {
        book();
        share = itsShare;
    }

    double speedShare() {
        return share;
    }

    /** Books the rated output of the present state up to now. */
    void book() {
        double seconds = Ticks.toSeconds(world.now() - last);
        last = world.now();
        LineState state = states.state();
        if (state == LineState.RUNNING || state == LineState.SLOWED) {
            ledger.ratedKg += seconds * kgPerS;
            ledger.slowedLossKg += seconds * kgPerS * (1 - share);
        }
    }

    /** Books the present state up to now and gives the time in each. */
    StateClock<LineState> close() {
        book();
        states.close(world.now());
        return states;
    }
}
