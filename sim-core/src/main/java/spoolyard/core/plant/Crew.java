package spoolyard.core.plant;

import java.util.List;

/**
 * The roles and the rules they work by. Immutable.
 *
 * @param roles all roles
 * @param walkingSpeedMPerS walking speed in m/s, {@code > 0}; infinity means that nobody needs time to walk
 * @param serviceOrder which of several equally urgent calls a free person takes
 * @param endOfShift what happens to work in hand when the shift ends
 */
public record Crew(List<Role> roles, double walkingSpeedMPerS, ServiceOrder serviceOrder, EndOfShift endOfShift) {
    /** Copies the list. */
    public Crew {
        roles = List.copyOf(roles);
    }

    /** Which of several equally urgent calls a free person takes. */
    public enum ServiceOrder {
        /** The one that has waited longest. */
        LONGEST_WAITING,
        /** The nearest on foot; ties by wait. */
        NEAREST
    }

    /** What happens to work in hand when the shift ends. */
    public enum EndOfShift {
        /** The person finishes the task, then goes. */
        FINISH_TASK,
        /** The person goes at once; somebody of the next shift takes the task over with what is left of it. */
        HAND_OVER
    }
}
