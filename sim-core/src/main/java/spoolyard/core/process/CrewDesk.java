package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import spoolyard.core.activity.ActivePeriods;
import spoolyard.core.engine.Engine;
import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.Crew;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Place;
import spoolyard.core.plant.Role;
import spoolyard.core.quantity.Ticks;

/**
 * Brings calls for work and free people together. Matching happens once an instant, after all that finishes, is released
 * or changes by calendar at that instant, so that the order of those does not decide who is served.
 */
final class CrewDesk {
    private final Engine engine;
    private final Crew description;
    private final List<RoleCrew> roles = new ArrayList<>();
    private final List<Task> waiting = new ArrayList<>();
    private final TimedEvent serve;
    private final Matching matching;

    CrewDesk(Engine engine, Crew description, List<String> lineNames, ActivePeriods active) {
        this.engine = engine;
        this.description = description;
        for (Role role : description.roles()) {
            int relieved = rolesOf(new CrewNeed(role.relieves()));
            roles.add(new RoleCrew(role, roles.size(), this, lineNames, relieved));
        }
        roles.forEach(role -> role.takeDown(active));
        this.matching = new Matching(roles, description.serviceOrder() == Crew.ServiceOrder.NEAREST);
        this.serve = new TimedEvent(engine, Phase.SERVE) {
            @Override
            protected void happen() {
                serve();
            }

            @Override
            public String toString() {
                return "crew is sent to waiting work";
            }
        };
    }

    Engine engine() {
        return engine;
    }

    List<RoleCrew> roles() {
        return roles;
    }

    List<Task> waiting() {
        return waiting;
    }

    /** The roles of a need as a mask over their places in the crew. */
    int rolesOf(CrewNeed need) {
        int mask = 0;
        for (int i = 0; i < description.roles().size(); i++) {
            if (need.roles().contains(description.roles().get(i).name())) {
                mask |= 1 << i;
            }
        }
        return mask;
    }

    long walkTicks(Place from, Place to) {
        double metres = from.distanceM(to);
        return metres == 0 || description.walkingSpeedMPerS() == Double.POSITIVE_INFINITY
                ? 0
                : Ticks.ofSeconds(metres / description.walkingSpeedMPerS());
    }

    /** Calls for a person, unless the task needs nobody: then it is begun at once. */
    void raise(Task task) {
        task.raised(engine.now());
        if (task.roleMask == 0) {
            new UnattendedWork(engine, task).begin();
            return;
        }
        waiting.add(task);
        serveSoon();
    }

    /** A task that a person has left is called again; it keeps its place in time. */
    void waitAgain(Task task) {
        waiting.add(task);
        serveSoon();
    }

    /** Calls a task off, whatever its state. */
    void withdraw(Task task) {
        suspend(task);
        task.close();
    }

    /** Takes a task out of hand for the time being; raised again, it goes on where it stood. */
    void suspend(Task task) {
        if (task.isWaiting()) {
            waiting.remove(task);
            task.close();
        } else if (task.machine() != null) {
            UnattendedWork machine = task.machine();
            task.suspend(machine.tick() - engine.now());
            machine.cancel();
        } else if (!task.isIdle()) {
            Member member = task.member();
            task.suspend(member.leftTicks());
            member.drop();
        }
    }

    /** Whether a person who could go on with more work of one kind is needed more urgently elsewhere. */
    boolean isNeededElsewhere(Member member, Task task) {
        return member.isWantedElsewhere() || matching.hasMoreUrgent(member, task, waiting);
    }

    void freed() {
        if (!waiting.isEmpty()) {
            serveSoon();
        }
    }

    void serveSoon() {
        if (!serve.isScheduled()) {
            serve.at(engine.now());
        }
    }

    /** Whether somebody idle could do something that waits. */
    boolean isIdleBesideWork() {
        return !serve.isScheduled() && matching.findBest(waiting);
    }

    private void serve() {
        while (!waiting.isEmpty() && matching.findBest(waiting)) {
            Task task = matching.task();
            waiting.remove(task);
            matching.member().take(task, matching.relieved());
        }
    }

    /** The people of a shift come in. */
    void arrive(ShiftRun shift) {
        for (RoleCrew role : roles) {
            int heads = shift.heads(role.index());
            for (int place = 0; place < heads; place++) {
                role.absentMember().come(shift, place);
            }
        }
        serveSoon();
    }

    /** The people of a shift go home. */
    void leave(ShiftRun shift) {
        boolean handOver = description.endOfShift() == Crew.EndOfShift.HAND_OVER;
        for (RoleCrew role : roles) {
            for (Member member : role.members()) {
                if (member.shift() == shift && member.state() != Member.State.ABSENT) {
                    member.shiftEnds(handOver);
                }
            }
        }
    }

    void close() {
        for (RoleCrew role : roles) {
            role.members().forEach(Member::book);
        }
    }
}
