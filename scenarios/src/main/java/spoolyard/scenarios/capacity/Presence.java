package spoolyard.scenarios.capacity;

import java.util.List;
import java.util.function.Predicate;
import spoolyard.core.plant.Crew;
import spoolyard.core.plant.Role;
import spoolyard.core.plant.Shift;

/**
 * How many people are there on average: heads less breaks and hand-over. A break with relief costs nothing if somebody of
 * a role that relieves this one is in the shift.
 *
 * @param crew the roles
 */
record Presence(Crew crew) {
    /** People of a role, on average over a shift. */
    double heads(String role, Shift shift) {
        boolean isRelieved = heads(shift, other -> other.relieves().contains(role)) > 0;
        double awayTicks = shift.breaks().stream()
                .filter(each -> !(each.relieved() && isRelieved))
                .mapToDouble(each -> each.lengthTicks())
                .sum();
        double lostTicks = shift.handOverOverlaps() ? 0 : shift.handOverTicks();
        double lengthTicks = shift.endTick() - shift.startTick();
        double share = Math.max(0, (lengthTicks - awayTicks - lostTicks) / lengthTicks);
        return share * heads(shift, each -> each.name().equals(role));
    }

    /** People of any of several roles, on average over a shift. */
    double heads(List<String> roles, Shift shift) {
        return roles.stream().mapToDouble(role -> heads(role, shift)).sum();
    }

    private int heads(Shift shift, Predicate<Role> isMeant) {
        int heads = 0;
        for (int i = 0; i < shift.heads().size(); i++) {
            heads += isMeant.test(crew.roles().get(i)) ? shift.heads().get(i) : 0;
        }
        return heads;
    }
}
