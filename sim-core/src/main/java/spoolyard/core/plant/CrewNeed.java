package spoolyard.core.plant;

import java.util.List;

/**
 * Who may do a piece of work: one person of any of these roles. Immutable.
 *
 * @param roles names of the roles; empty means that nobody is needed
 */
public record CrewNeed(List<String> roles) {
    /** Work that needs nobody. */
    public static final CrewNeed NOBODY = new CrewNeed(List.of());

    /** Copies the list. */
    public CrewNeed {
        roles = List.copyOf(roles);
    }

    /**
     * Whether nobody is needed.
     *
     * @return true if the list of roles is empty
     */
    public boolean isNobody() {
        return roles.isEmpty();
    }
}
