package spoolyard.core.process;

import spoolyard.core.plant.Line;
import spoolyard.core.plant.Product;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.Activity;
import spoolyard.core.record.LineState;

/** Time in state of a line, with what it would have made in its running time, and the time of its heaters. */
final class LineClock {
    private static final int NONE = -1;

    private final World world;
    private final LineLedger ledger;
    private final Line line;
    private final HeatLedger heat;
    private final StateClock<LineState> states = new StateClock<>(LineState.values(), LineState.NOT_SCHEDULED);
    private final int activity;
    private final int drying;
    private boolean heldUp;
    private double ratedKgPerS;
    private double actualKgPerS;
    private long last;

    LineClock(World world, LineLedger ledger, Line line) {
        this.world = world;
        this.ledger = ledger;
        this.line = line;
        this.heat = new HeatLedger(world, line);
        this.activity = world.active().add(Activity.Kind.LINE, line.name());
        this.drying = line.supply().isPresent() ? world.active().add(Activity.Kind.DRYER, line.name()) : NONE;
        line.onLineNow().ifPresent(this::turnTo);
    }

    HeatLedger heat() {
        return heat;
    }

    /** From now on the line's time and what it takes in belong to a product. */
    void turnTo(Product product) {
        book();
        ledger.materials.turnTo(product, line.rateKgPerH(product) / 3600);
    }

    LineState state() {
        return states.state();
    }

    void enter(LineState state) {
        book();
        states.enter(state, world.now());
        showActivity();
        if (drying != NONE) {
            world.active().set(drying, state == LineState.WAITING_FOR_MATERIAL, world.now());
        }
    }

    /** All that the line makes is lost until somebody takes off a full spool: it waits, although the screw turns. */
    void holdUp(boolean isHeldUp) {
        heldUp = isHeldUp;
        showActivity();
    }

    private void showActivity() {
        world.active().set(activity, states.state().isActive() && !heldUp, world.now());
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
        ledger.materials.passed(seconds, state);
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
