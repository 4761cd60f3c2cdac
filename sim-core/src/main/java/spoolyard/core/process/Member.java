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
        ABSENT("goes home"),
        IDLE("is free"),
        WALKING("walks"),
        WORKING("works"),
        ON_BREAK("takes a break");

        private final String label;

        State(String label) {
            this.label = label;
        }

        String label() {
            return label;
        }

        boolean isActive() {
            return this == WALKING || this == WORKING;
        }
    }

    final RoleCrew role;
    private final CrewDesk desk;
    private final TimedEvent next;
    private final BreakPlan breaks;
    private final String who;
    private State state = State.ABSENT;
    private Place at = Place.ORIGIN;
    private ShiftRun shift;
    private long zones;
    private Task task;
    private RoleCrew standingInFor;
    private boolean breakIsRelieved;
    private boolean leaving;
    private long since;

    Member(CrewDesk desk, RoleCrew role, int number) {
        this.desk = desk;
        this.role = role;
        this.who = role.name() + " " + number;
        this.breaks = new BreakPlan(desk.engine(), role, number, this::breakFallsDue);
        this.next = new TimedEvent(desk.engine(), Phase.FINISH) {
            @Override
            protected void happen() {
                nextHappens();
            }

            @Override
            public String toString() {
                return who + " next step";
            }
        };
    }

    State state() {
        return state;
    }

    boolean isIdle() {
        return state == State.IDLE;
    }

    /** Goes home as soon as the task in hand is done. */
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

    /** Since when the person is in the present state. */
    long since() {
        return since;
    }

    ShiftRun shift() {
        return shift;
    }

    boolean looksAfter(int line) {
        return line == Task.NO_LINE || (zones >>> line & 1) != 0;
    }

    /** Whether the person must stop after the task in hand. */
    boolean isWantedElsewhere() {
        return leaving || breaks.isOwed();
    }

    /** Comes to work, at a place among those present. */
    void come(ShiftRun itsShift, int place) {
        shift = itsShift;
        zones = role.zonesOf(place, itsShift.heads(role.index()));
        leaving = false;
        enter(State.IDLE);
        breaks.begin(itsShift, place);
    }

    /** Goes to a task, in place of a role on break or, with null, as the own work. */
    void take(Task its, RoleCrew inPlaceOf) {
        task = its;
        standingInFor = inPlaceOf;
        if (standingInFor != null) {
            standingInFor.reliefBegins();
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
            case ON_BREAK -> {
                endRelief();
                becomeFree();
            }
            case IDLE, ABSENT -> throw new IllegalStateException(next + " happened while " + state);
        }
    }

    private void arrive() {
        enter(State.WORKING);
        at = task.place;
        shift.ledger(role.index()).waited(desk.engine().now() - task.waitingTick(), task.isLeft());
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
        Task done = letGo();
        shift.ledger(role.index()).tasks++;
        done.close();
        becomeFree();
        done.ended();
    }

    private Task letGo() {
        Task let = task;
        task = null;
        if (standingInFor != null) {
            standingInFor.reliefEnds();
            standingInFor = null;
        }
        return let;
    }

    private void becomeFree() {
        if (leaving) {
            go();
        } else if (breaks.isOwed()) {
            beginBreak();
        } else {
            enter(State.IDLE);
            desk.freed();
        }
    }

    private void breakFallsDue() {
        if (state == State.IDLE) {
            beginBreak();
        }
    }

    private void beginBreak() {
        Break taken = breaks.take();
        enter(State.ON_BREAK);
        next.in(taken.lengthTicks());
        breakIsRelieved = taken.relieved();
        if (breakIsRelieved) {
            role.breakBegins();
            desk.serveSoon();
        }
    }

    private void endRelief() {
        if (breakIsRelieved) {
            breakIsRelieved = false;
            role.breakEnds();
        }
    }

    /** Drops a task that its station has withdrawn. */
    void drop() {
        next.cancel();
        letGo();
        becomeFree();
    }

    /** The shift ends for this person: the task in hand is finished or handed over, one not reached is given back. */
    void shiftEnds(boolean handOver) {
        breaks.end();
        if (state == State.WORKING && !handOver) {
            leaving = true;
        } else {
            if (task != null) {
                putTaskBack();
            }
            next.cancel();
            endRelief();
            go();
        }
    }

    /** What is left of the stage in hand at normal pace; {@link Task#DONE} if it has not begun. */
    long leftTicks() {
        return state == State.WORKING
                ? Ticks.ofSeconds(Ticks.toSeconds(next.tick() - desk.engine().now()) / shift.pace())
                : Task.DONE;
    }

    private void putTaskBack() {
        long left = leftTicks();
        Task unfinished = letGo();
        unfinished.putBack(desk.engine().now(), left);
        desk.waitAgain(unfinished);
    }

    private void go() {
        enter(State.ABSENT);
        at = Place.ORIGIN;
        leaving = false;
    }

    private void enter(State nextState) {
        book();
        role.personTurns(state, nextState);
        state = nextState;
        desk.tell(who, state, state.isActive() ? task : null);
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
