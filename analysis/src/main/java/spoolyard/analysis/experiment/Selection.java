package spoolyard.analysis.experiment;

import java.util.List;

/**
 * Which of several systems is the best. Immutable.
 *
 * @param best number of the system selected
 * @param means mean of each system over its observations
 * @param counts number of observations of each system
 * @param isDecided false if it stopped at the most observations there may be: the system with the best mean so far, without
 *     a guarantee
 * @param course how each system stood at each look, by the number of observations
 */
public record Selection(int best, List<Double> means, List<Integer> counts, boolean isDecided, List<Standing> course) {
    /** Copies the lists. */
    public Selection {
        means = List.copyOf(means);
        counts = List.copyOf(counts);
        course = List.copyOf(course);
    }

    /**
     * Observations of all systems together.
     *
     * @return their number
     */
    public int total() {
        return counts.stream().mapToInt(Integer::intValue).sum();
    }
}
