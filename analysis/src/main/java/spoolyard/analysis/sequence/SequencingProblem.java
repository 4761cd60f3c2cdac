package spoolyard.analysis.sequence;

import java.util.List;
import java.util.Optional;

/**
 * Orders to be assigned to lines and put in order so that changeovers and lateness cost least. Immutable.
 *
 * <p>The cost of a plan is the sum over all lines of the money of each changeover, the way in and the way out included,
 * plus {@code latePerS} times the seconds each order is late, plus {@code makespanPerS} times the instant at which the last
 * line is done.
 *
 * @param jobs the orders
 * @param lines the lines
 * @param makespanPerS what each second until all is made costs, money, {@code >= 0}
 */
public record SequencingProblem(List<Job> jobs, List<SequencedLine> lines, double makespanPerS) {
    /**
     * Copies the lists and looks for conflicts.
     *
     * @throws InfeasibleBookException if an order has no line, or a frozen order is frozen twice or on a line that can't
     *     make it
     */
    public SequencingProblem {
        jobs = List.copyOf(jobs);
        lines = List.copyOf(lines);
        requireALineFor(jobs);
        checkFrozen(jobs, lines);
    }

    private static void requireALineFor(List<Job> jobs) {
        for (Job job : jobs) {
            if (job.runS().stream().noneMatch(run -> run < Double.POSITIVE_INFINITY)) {
                throw new InfeasibleBookException("Order " + job.id() + " can be made on no line.");
            }
        }
    }

    private static void checkFrozen(List<Job> jobs, List<SequencedLine> lines) {
        int[] frozenOn = new int[jobs.size()];
        for (int line = 0; line < lines.size(); line++) {
            for (int job : lines.get(line).frozen()) {
                String what = "Order " + jobs.get(job).id() + " is frozen on line "
                        + lines.get(line).name();
                if (!jobs.get(job).canRunOn(line)) {
                    throw new InfeasibleBookException(what + ", which cannot make it.");
                }
                if (frozenOn[job] > 0) {
                    throw new InfeasibleBookException(what + " and already on line "
                            + lines.get(frozenOn[job] - 1).name() + ".");
                }
                frozenOn[job] = line + 1;
            }
        }
    }

    /**
     * Whether only changeovers cost: then time doesn't matter.
     *
     * @return true if no order that is due costs anything when late, and neither does the end
     */
    public boolean isPureChangeover() {
        return makespanPerS == 0
                && jobs.stream().allMatch(job -> job.latePerS() == 0 || job.dueS() == Double.POSITIVE_INFINITY);
    }

    /**
     * Whether lines are purged at the end of a week: then what a changeover costs depends on when it is.
     *
     * @return true if any line is
     */
    public boolean hasWeekEnds() {
        return lines.stream().anyMatch(line -> !line.weekEnds().areNone());
    }

    /**
     * A problem that costs no more, whatever the plan, and in which changeovers depend on no time: each is the cheaper and the
     * shorter of that from the product before and that from a clean line.
     *
     * @return this, if no line is purged at the end of a week
     */
    SequencingProblem withoutWeekEnds() {
        return hasWeekEnds()
                ? new SequencingProblem(
                        jobs, lines.stream().map(SequencedLine::withoutWeekEnds).toList(), makespanPerS)
                : this;
    }

    /**
     * Looks for an order.
     *
     * @param id its name
     * @return its number
     */
    public Optional<Integer> numberOf(String id) {
        for (int job = 0; job < jobs.size(); job++) {
            if (jobs.get(job).id().equals(id)) {
                return Optional.of(job);
            }
        }
        return Optional.empty();
    }
}
