package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import spoolyard.core.activity.ActivePeriods;
import spoolyard.core.plant.Break;
import spoolyard.core.plant.Role;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.record.Activity;

/** All persons of a role. */
final class RoleCrew {
    private final Role description;
    private final int index;
    private final CrewDesk desk;
    private final long[] zoneMasks;
    private final int[] rank = new int[TaskKind.values().length];
    private final int relievedMask;
    private final int reachMask;
    private final List<Member> members = new ArrayList<>();
    private ActivePeriods periods;
    private int activity;
    private boolean wasActive;
    private int idle;
    private int busy;
    private int onRelievedBreak;
    private int reliefsAtWork;

    RoleCrew(Role description, int index, CrewDesk desk, List<String> lineNames, int relievedMask) {
        this.description = description;
        this.index = index;
        this.desk = desk;
        this.relievedMask = relievedMask;
        this.reachMask = relievedMask | 1 << index;
        this.zoneMasks = description.zones().stream()
                .mapToLong(zone -> maskOf(zone, lineNames))
                .toArray();
        int place = 0;
        for (TaskKind kind : description.priorities()) {
            rank[kind.ordinal()] = place++;
        }
        for (TaskKind kind : TaskKind.values()) {
            if (!description.priorities().contains(kind)) {
                rank[kind.ordinal()] = place++;
            }
        }
    }

    private static long maskOf(List<String> zone, List<String> lineNames) {
        long mask = 0;
        for (String line : zone) {
            mask |= 1L << lineNames.indexOf(line);
        }
        return mask;
    }

    /** Lines that the person at a place among those present looks after. */
    long zonesOf(int place, int present) {
        if (zoneMasks.length == 0) {
            return -1;
        }
        long mask = 0;
        for (int zone = place % Math.max(1, Math.min(present, zoneMasks.length));
                zone < zoneMasks.length;
                zone += present) {
            mask |= zoneMasks[zone];
        }
        return mask;
    }

    void takeDown(ActivePeriods active) {
        periods = active;
        activity = active.add(Activity.Kind.CREW, description.name());
    }

    /** A person goes from one state to another; the role is active while somebody is at work and nobody idle. */
    void personTurns(Member.State from, Member.State to) {
        idle += (to == Member.State.IDLE ? 1 : 0) - (from == Member.State.IDLE ? 1 : 0);
        busy += (to.isActive() ? 1 : 0) - (from.isActive() ? 1 : 0);
        boolean isActive = busy > 0 && idle == 0;
        if (isActive != wasActive) {
            wasActive = isActive;
            periods.set(activity, isActive, desk.engine().now());
        }
    }

    boolean hasIdle() {
        return idle > 0;
    }

    String name() {
        return description.name();
    }

    int index() {
        return index;
    }

    boolean zonesAreStrict() {
        return description.zonesAreStrict();
    }

    int rank(TaskKind kind) {
        return rank[kind.ordinal()];
    }

    /** Break lengths by which this role's break comes later because it stands in for others first. */
    int turnsAfterTheRelieved(ShiftRun shift, Break due) {
        if (!due.relieved() || relievedMask == 0) {
            return 0;
        }
        int turns = 1;
        for (RoleCrew other : desk.roles()) {
            if (due.staggered() && (relievedMask >>> other.index() & 1) != 0) {
                turns = Math.max(turns, shift.heads(other.index()));
            }
        }
        return turns;
    }

    /** Roles, as a mask, that this role may stand in for. */
    int relievedMask() {
        return relievedMask;
    }

    /** Roles, as a mask, whose work this role may ever do: its own and those it stands in for. */
    int reachMask() {
        return reachMask;
    }

    List<Member> members() {
        return members;
    }

    /** A person who is not at work, made if there is none. */
    Member absentMember() {
        for (Member member : members) {
            if (member.state() == Member.State.ABSENT) {
                return member;
            }
        }
        Member made = new Member(desk, this, members.size() + 1);
        members.add(made);
        return made;
    }

    void breakBegins() {
        onRelievedBreak++;
    }

    void breakEnds() {
        onRelievedBreak--;
    }

    void reliefBegins() {
        reliefsAtWork++;
    }

    void reliefEnds() {
        reliefsAtWork--;
    }

    /** Whether somebody's place is empty for a break and nobody stands in yet. */
    boolean needsRelief() {
        return onRelievedBreak > reliefsAtWork;
    }
}
