package spoolyard.analysis.buffer;

import java.util.ArrayList;
import java.util.List;

/**
 * How a search is run, so that all its answers together are wrong with a probability of at most {@code 1 - level}.
 * Immutable.
 *
 * <p>Bonferroni: the chance of error is shared evenly by all looks at all capacities that the search may have to test.
 *
 * @param capacitiesM what may be chosen, ascending, at least one
 * @param level confidence in the answer, in (0, 1)
 * @param firstLook replications at the first look, {@code >= 2}
 * @param most replications at the last look, {@code >= firstLook}
 */
public record SearchPlan(List<Double> capacitiesM, double level, int firstLook, int most) {
    /** Copies the list and checks the ranges. */
    public SearchPlan {
        capacitiesM = List.copyOf(capacitiesM);
        if (capacitiesM.isEmpty() || !(level > 0 && level < 1) || firstLook < 2 || most < firstLook) {
            throw new IllegalArgumentException("capacities = " + capacitiesM.size() + ", level = " + level
                    + ", firstLook = " + firstLook + ", most = " + most
                    + ". Must be >= 1, between 0 and 1, >= 2 and >= firstLook.");
        }
    }

    /**
     * Capacities that are tested at most: a bisection, and another where the first met one that stayed open.
     *
     * @return count
     */
    int mostTests() {
        int halvings = 32 - Integer.numberOfLeadingZeros(capacitiesM.size());
        return 2 * halvings;
    }

    /**
     * Replications in all at each look: doubled from look to look.
     *
     * @param firstLook at the first, {@code >= 1}
     * @param most at the last, {@code >= firstLook}
     * @return ascending
     */
    public static List<Integer> looks(int firstLook, int most) {
        List<Integer> looks = new ArrayList<>();
        for (int count = firstLook; count < most; count *= 2) {
            looks.add(count);
        }
        looks.add(most);
        return looks;
    }

    List<Integer> looks() {
        return looks(firstLook, most);
    }

    /** Chance of error at a look. */
    double alphaEach() {
        return (1 - level) / (mostTests() * looks().size());
    }
}
