package spoolyard.core.process;

import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.Break;
import spoolyard.core.plant.Place;
import spoolyard.core.quantity.Ticks;

/** One person of a role for the length of a shift; the object serves again in later shifts. */
final class Member {
    /** What the person is doing. */
    enum State {
        ABSENT,
        IDLE,
        WALKING,
        WORKING,
        ON_BREAK
    }

    final RoleCrew role;
    final int number;
    private final CrewDesk desk;
    private final TimedEvent next;
    private final TimedEvent breakDue;
    private State state = State.ABSENT;
    private Place at = Place.ORIGIN;
    private ShiftRun shift;
    private long zones;
    private Task task;
    private RoleCrew relieving;
    private int nextBreak;
    private Break owedBreak;
    private boolean leaving;
    private long since;

    Member(CrewDesk desk, RoleCrew role, int number) {
        this.desk = desk;
        this.role = role;
        this.number = number;
        this.next = event(Phase.FINISH, "work", this::nextHappens);
        this.breakDue = event(Phase.CALENDAR, "break", this::breakHappens);
    }

    private TimedEvent event(Phase phase, String what, Runnable action) {
        return new TimedEvent(desk.engine(), phase) {
            @Override
            protected void happen() {
                action.run();
            }

            @Override
            public String toString() {
                return role.name() + " " + number + " " + what;
            }
        };
    }

    State state() {
        return state;
    }

    boolean isIdle() {
        return state == State.IDLE;
    }

    boolean isLeaving() {
        return leaving;
    }

    /** The task in hand or on the way to; null if there is none. */
    Task task() {
        return task;
    }

    Place at() {
        return at;
    }

    long since() {
        return since;
    }

    ShiftRun shift() {
        return shift;
    }

    boolean looksAfter(int line) {
        return line == Task.NO_LINE || (zones >>> line & 1) != 0;
    }

    /** Comes to work. */
    void come(ShiftRun itsShift, int place) {
        shift = itsShift;
        zones = role.zonesOf(place, itsShift.heads(role.index()));
        leaving = false;
        owedBreak = null;
        enter(State.IDLE);
        nextBreak = -1;
        planBreak(place);
    }

    private void planBreak(int place) {
        nextBreak++;
        if (nextBreak < shift.breaks().size()) {
            Break due = shift.breaks().get(nextBreak);
            long turns = (due.staggered() ? place : 0) + role.turnsAfterTheRelieved(shift, due);
            long start = shift.startTick() + due.offsetTicks() + turns * due.lengthTicks();
            if (start >= desk.engine().now() && start < shift.endTick()) {
                breakDue.moveTo(start);
            } else {
                planBreak(place);
            }
        }
        placeInShift = place;
    }

    private int placeInShift;

    private void breakHappens() {
        Break due = shift.breaks().get(nextBreak);
        if (state == State.IDLE) {
            beginBreak(due);
        } else if (state != State.ABSENT) {
            owedBreak = due;
        }
        planBreak(placeInShift);
    }

    private void beginBreak(Break taken) {
        owedBreak = null;
        enter(State.ON_BREAK);
        next.in(taken.lengthTicks());
        onRelievedBreak = taken.relieved();
        if (onRelievedBreak) {
            role.breakBegins();
            desk.serveSoon();
        }
    }

    private boolean onRelievedBreak;

    private void endBreak() {
        if (onRelievedBreak) {
            onRelievedBreak = false;
            role.breakEnds();
        }
        becomeFree();
    }

    /** Goes to a task. */
    void take(Task its, RoleCrew inPlaceOf) {
        task = its;
        relieving = inPlaceOf;
        if (relieving != null) {
            relieving.reliefBegins();
        }
        its.assigned(this);
        long walk = desk.walkTicks(at, its.place);
        if (walk > 0) {
            enter(State.WALKING);
            next.in(walk);
        } else {
            arrive();
        }
    }

    private void nextHappens() {
        switch (state) {
            case WALKING -> arrive();
            case WORKING -> stageEnds();
            case ON_BREAK -> endBreak();
            case IDLE, ABSENT -> throw new IllegalStateException(next + " happened while " + state);
        }
    }

    private void arrive() {
        enter(State.WORKING);
        at = task.place;
        shift.ledger(role.index()).waited(desk.engine().now() - task.raisedTick());
        next.in(atPace(task.arrived()));
    }

    private long atPace(long ticks) {
        return shift.pace() == 1 ? ticks : Ticks.ofSeconds(Ticks.toSeconds(ticks) * shift.pace());
    }

    private void stageEnds() {
        long ticks = task.nextStage();
        if (ticks != Task.DONE) {
            next.in(atPace(ticks));
            return;
        }
        Task done = task;
        shift.ledger(role.index()).tasks++;
        letGo();
        done.close();
        becomeFree();
        done.ended();
    }

    private void letGo() {
        task = null;
        if (relieving != null) {
            relieving.reliefEnds();
            relieving = null;
        }
    }

    private void becomeFree() {
        if (leaving) {
            go();
        } else if (owedBreak != null) {
            beginBreak(owedBreak);
        } else {
            enter(State.IDLE);
            desk.freed();
        }
    }

    /** Whether the person must stop after the task in hand. */
    boolean isWantedElsewhere() {
        return leaving || owedBreak != null;
    }

    /** Drops a task that its station has withdrawn. */
    void drop() {
        next.cancel();
        letGo();
        becomeFree();
    }

    /** The shift ends for this person. */
    void shiftEnds(boolean handOver) {
        breakDue.cancel();
        if (state == State.WORKING || state == State.WALKING) {
            if (handOver || state == State.WALKING) {
                putTaskBack();
                go();
            } else {
                leaving = true;
            }
        } else {
            next.cancel();
            if (onRelievedBreak) {
                onRelievedBreak = false;
                role.breakEnds();
            }
            go();
        }
    }

    private void putTaskBack() {
        long left = Task.DONE;
        if (state == State.WORKING) {
            left = Ticks.ofSeconds(Ticks.toSeconds(next.tick() - desk.engine().now()) / shift.pace());
        }
        next.cancel();
        Task unfinished = task;
        letGo();
        unfinished.putBack(left);
        desk.waitAgain(unfinished);
    }

    private void go() {
        enter(State.ABSENT);
        at = Place.ORIGIN;
        leaving = false;
    }

    private void enter(State nextState) {
        book();
        state = nextState;
    }

    /** Books the time in the present state. */
    void book() {
        long now = desk.engine().now();
        if (shift != null) {
            shift.ledger(role.index()).spent(state, now - since);
        }
        since = now;
    }
}
