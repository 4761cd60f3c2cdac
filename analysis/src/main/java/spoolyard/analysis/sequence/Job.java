package spoolyard.analysis.sequence;

import java.util.List;

/**
 * An order as the sequencer sees it. Immutable.
 *
 * @param id its name
 * @param product number of its product, from 0
 * @param releaseS earliest start of its changeover, seconds since the start of the plan
 * @param dueS latest end that is on time, seconds since the start of the plan; infinite if nobody waits for it
 * @param latePerS what each second after that costs, money, {@code >= 0}
 * @param runS worked seconds it takes on each line, in the order of the lines; infinite where it can't be made
 */
public record Job(String id, int product, double releaseS, double dueS, double latePerS, List<Double> runS) {
    /**
     * Copies the list and checks the ranges.
     *
     * @throws IllegalArgumentException if a number is out of range
     */
    public Job {
        runS = List.copyOf(runS);
        boolean isRight = product >= 0
                && releaseS < Double.POSITIVE_INFINITY
                && !Double.isNaN(dueS)
                && latePerS >= 0
                && latePerS < Double.POSITIVE_INFINITY
                && runS.stream().allMatch(run -> run >= 0);
        if (!isRight) {
            throw new IllegalArgumentException("order " + id + ": a number is out of range.");
        }
    }

    /**
     * Whether a line can make it.
     *
     * @param line number of the line
     * @return true if its time there is finite
     */
    public boolean canRunOn(int line) {
        return runS.get(line) < Double.POSITIVE_INFINITY;
    }
}
