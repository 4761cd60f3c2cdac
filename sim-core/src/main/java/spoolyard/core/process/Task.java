package spoolyard.core.process;

import spoolyard.core.plant.Place;
import spoolyard.core.plant.TaskKind;

/**
 * A piece of work for one person, in one or more stages. The object is kept by the station that needs the work and used
 * again and again.
 */
abstract class Task {
    /** What {@link #nextStage()} gives when there is no further stage. */
    static final long DONE = -1;
    /** Line index of work that belongs to no line, so to no zone. */
    static final int NO_LINE = -1;

    private enum Status {
        IDLE,
        WAITING,
        ON_THE_WAY,
        IN_HAND
    }

    final TaskKind kind;
    final int roleMask;
    final int line;
    final Place place;
    private Status status = Status.IDLE;
    private Member member;
    private UnattendedWork machine;
    private long raisedTick;
    private long waitingTick;
    private long leftTicks = DONE;

    Task(TaskKind kind, int roleMask, int line, Place place) {
        this.kind = kind;
        this.roleMask = roleMask;
        this.line = line;
        this.place = place;
    }

    /** A person has arrived: duration of the first stage at normal pace, ticks. */
    abstract long begin();

    /** A stage is over: duration of the next one at normal pace, or {@link #DONE}. */
    abstract long nextStage();

    /** All stages are over and the task may be raised again. */
    void ended() {}

    /** The person has left it unfinished at the end of the shift; it waits for another. */
    void interrupted() {}

    /** Another person has arrived and goes on with what is left of the stage. */
    void resumed() {}

    final boolean isIdle() {
        return status == Status.IDLE;
    }

    final boolean isInHand() {
        return status == Status.IN_HAND;
    }

    final boolean isWaiting() {
        return status == Status.WAITING;
    }

    final long raisedTick() {
        return raisedTick;
    }

    /** Whether somebody has begun it and left it unfinished. */
    final boolean isLeft() {
        return leftTicks != DONE;
    }

    /** Since when it waits for a person: from the call, or from when it was left unfinished. */
    final long waitingTick() {
        return waitingTick;
    }

    final Member member() {
        return member;
    }

    /** The machine that does it; null if a person does. */
    final UnattendedWork machine() {
        return machine;
    }

    final void raised(long now) {
        if (status != Status.IDLE) {
            throw new IllegalStateException(kind + " task was raised while " + status);
        }
        status = Status.WAITING;
        raisedTick = now;
        waitingTick = now;
    }

    /** A machine does it. */
    final void assigned(UnattendedWork to) {
        status = Status.ON_THE_WAY;
        machine = to;
    }

    final void assigned(Member to) {
        status = Status.ON_THE_WAY;
        member = to;
    }

    /** The member has arrived: what there is to do in this stage at normal pace, ticks. */
    final long arrived() {
        status = Status.IN_HAND;
        if (leftTicks == DONE) {
            return begin();
        }
        long ticks = leftTicks;
        leftTicks = DONE;
        resumed();
        return ticks;
    }

    /** Back to waiting, with part of the stage left, or {@link #DONE} if it has not begun. */
    final void putBack(long now, long left) {
        status = Status.WAITING;
        member = null;
        if (left != DONE) {
            leftTicks = left;
            waitingTick = now;
        }
        interrupted();
    }

    /** Out of hand for the time being; when raised again it goes on with what is left of the stage. */
    final void suspend(long left) {
        close();
        leftTicks = left;
    }

    final void close() {
        status = Status.IDLE;
        member = null;
        machine = null;
        leftTicks = DONE;
    }
}
