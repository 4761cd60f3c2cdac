package spoolyard.analysis.sequence;

import java.util.List;

/**
 * Which line makes which orders, in which order. Immutable.
 *
 * @param lines for each line, in the order of the lines, the numbers of its orders from the first to the last
 */
public record Plan(List<List<Integer>> lines) {
    /** Copies the lists. */
    public Plan {
        lines = lines.stream().map(List::copyOf).toList();
    }

    /**
     * Checks that it is a plan of a problem.
     *
     * @param problem the problem
     * @throws IllegalArgumentException if an order is missing, twice there, on a line that can't make it, or a frozen order is
     *     not in its place
     */
    public void check(SequencingProblem problem) {
        boolean[] seen = new boolean[problem.jobs().size()];
        for (int line = 0; line < lines.size(); line++) {
            for (int job : lines.get(line)) {
                require(!seen[job], problem, job, "is there twice");
                require(problem.jobs().get(job).canRunOn(line), problem, job, "is on a line that cannot make it");
                seen[job] = true;
            }
            List<Integer> frozen = problem.lines().get(line).frozen();
            boolean isKept = lines.get(line).size() >= frozen.size()
                    && lines.get(line).subList(0, frozen.size()).equals(frozen);
            if (!isKept) {
                throw new IllegalArgumentException(
                        "line " + problem.lines().get(line).name() + " does not begin with its frozen orders.");
            }
        }
        for (int job = 0; job < seen.length; job++) {
            require(seen[job], problem, job, "is missing");
        }
    }

    private static void require(boolean holds, SequencingProblem problem, int job, String otherwise) {
        if (!holds) {
            throw new IllegalArgumentException(
                    "order " + problem.jobs().get(job).id() + " " + otherwise + ".");
        }
    }
}
