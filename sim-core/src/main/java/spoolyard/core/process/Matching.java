package spoolyard.core.process;

import java.util.List;

/**
 * Chooses which idle person goes to which waiting task. Best is, in this order: kind of work by the role's priorities;
 * own zone before others; longest wait or shortest way as the scenario says, then the other of the two; longest idle;
 * first in the list. Holds the last choice, so that choosing allocates nothing.
 */
final class Matching {
    private final List<RoleCrew> roles;
    private final boolean nearestFirst;
    private Task task;
    private Member member;
    private RoleCrew relieved;

    Matching(List<RoleCrew> roles, boolean nearestFirst) {
        this.roles = roles;
        this.nearestFirst = nearestFirst;
    }

    Task task() {
        return task;
    }

    Member member() {
        return member;
    }

    /** The role whose place the chosen person takes during a break, or null if it is the person's own work. */
    RoleCrew relieved() {
        return relieved;
    }

    /** Looks for the best pair; false if there is none. */
    boolean findBest(List<Task> waiting) {
        member = null;
        int wanted = 0;
        for (int t = 0; t < waiting.size(); t++) {
            wanted |= waiting.get(t).roleMask;
        }
        for (int r = 0; r < roles.size(); r++) {
            if (roles.get(r).hasIdle() && (roles.get(r).reachMask() & wanted) != 0) {
                tryMembers(roles.get(r).members(), waiting);
            }
        }
        return member != null;
    }

    private void tryMembers(List<Member> members, List<Task> waiting) {
        for (int m = 0; m < members.size(); m++) {
            if (members.get(m).isIdle()) {
                tryTasks(members.get(m), waiting);
            }
        }
    }

    private void tryTasks(Member candidate, List<Task> waiting) {
        for (int t = 0; t < waiting.size(); t++) {
            Task call = waiting.get(t);
            if ((call.roleMask & candidate.role.reachMask()) != 0) {
                tryTask(candidate, call);
            }
        }
    }

    private void tryTask(Member candidate, Task call) {
        RoleCrew inPlaceOf = relievedFor(candidate, call);
        if (may(candidate, call, inPlaceOf) && (member == null || isBetter(candidate, call))) {
            member = candidate;
            task = call;
            relieved = inPlaceOf;
        }
    }

    private boolean may(Member candidate, Task call, RoleCrew inPlaceOf) {
        boolean own = (call.roleMask >>> candidate.role.index() & 1) != 0;
        if (!own) {
            return inPlaceOf != null;
        }
        return !candidate.role.zonesAreStrict() || candidate.looksAfter(call.line);
    }

    private RoleCrew relievedFor(Member candidate, Task call) {
        if ((call.roleMask >>> candidate.role.index() & 1) != 0) {
            return null;
        }
        int mask = call.roleMask & candidate.role.relievedMask();
        while (mask != 0) {
            RoleCrew away = roles.get(Integer.numberOfTrailingZeros(mask));
            if (away.needsRelief()) {
                return away;
            }
            mask &= mask - 1;
        }
        return null;
    }

    private boolean isBetter(Member candidate, Task call) {
        int order = Integer.compare(candidate.role.rank(call.kind), member.role.rank(task.kind));
        if (order == 0) {
            order = Boolean.compare(member.looksAfter(task.line), candidate.looksAfter(call.line));
        }
        if (order == 0) {
            int wait = Long.compare(call.raisedTick(), task.raisedTick());
            int way = Double.compare(
                    candidate.at().distanceM(call.place), member.at().distanceM(task.place));
            order = nearestFirst ? (way != 0 ? way : wait) : (wait != 0 ? wait : way);
        }
        return order == 0 ? candidate.since() < member.since() : order < 0;
    }

    /** Whether a waiting task ranks above the one a person has in hand. */
    boolean hasMoreUrgent(Member candidate, Task inHand, List<Task> waiting) {
        for (int t = 0; t < waiting.size(); t++) {
            Task call = waiting.get(t);
            if (may(candidate, call, relievedFor(candidate, call))
                    && candidate.role.rank(call.kind) < candidate.role.rank(inHand.kind)) {
                return true;
            }
        }
        return false;
    }
}
