package spoolyard.core.process;

import java.util.List;
import java.util.Optional;
import spoolyard.core.engine.Engine;
import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.Break;

/** The breaks of one person in one shift: which is next, which is owed because a task was in hand. */
final class BreakPlan {
    private final Engine engine;
    private final RoleCrew role;
    private final TimedEvent due;
    private final Runnable onDue;
    private ShiftRun shift;
    private int turn;
    private int next;
    private Optional<Break> owed = Optional.empty();

    BreakPlan(Engine engine, RoleCrew role, int number, Runnable onDue) {
        this.engine = engine;
        this.role = role;
        this.onDue = onDue;
        this.due = new TimedEvent(engine, Phase.CALENDAR) {
            @Override
            protected void happen() {
                fallsDue();
            }

            @Override
            public String toString() {
                return role.name() + " " + number + " break";
            }
        };
    }

    /** Plans the breaks of a shift for the person at a place among those present. */
    void begin(ShiftRun itsShift, int place) {
        shift = itsShift;
        turn = place;
        next = 0;
        owed = Optional.empty();
        plan();
    }

    private void plan() {
        List<Break> breaks = shift.breaks();
        while (next < breaks.size() && !isAhead(startOf(breaks.get(next)))) {
            next++;
        }
        if (next < breaks.size()) {
            due.moveTo(startOf(breaks.get(next)));
        }
    }

    private boolean isAhead(long start) {
        return start >= engine.now() && start < shift.endTick();
    }

    private long startOf(Break rest) {
        long turns = (rest.staggered() ? turn : 0) + role.turnsAfterTheRelieved(shift, rest);
        return shift.startTick() + rest.offsetTicks() + turns * rest.lengthTicks();
    }

    private void fallsDue() {
        owed = Optional.of(shift.breaks().get(next));
        next++;
        plan();
        onDue.run();
    }

    boolean isOwed() {
        return owed.isPresent();
    }

    /** The break that is owed; it is taken now. */
    Break take() {
        Break taken = owed.orElseThrow();
        owed = Optional.empty();
        return taken;
    }

    /** The shift is over for this person. */
    void end() {
        due.cancel();
        owed = Optional.empty();
    }
}
