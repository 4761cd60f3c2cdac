package spoolyard.analysis.buffer;

import java.util.List;
import java.util.OptionalDouble;
import spoolyard.analysis.experiment.Interval;

/**
 * What a search for the smallest capacity found. Immutable.
 *
 * @param target what was to be met
 * @param plan how it was searched
 * @param missesM largest capacity that is sure to miss the target; empty if none is
 * @param meetsM smallest capacity that is sure to meet it; empty if none is
 * @param tested every capacity tested, ascending
 */
public record Finding(
        LossTarget target, SearchPlan plan, OptionalDouble missesM, OptionalDouble meetsM, List<Tested> tested) {
    /** Copies the list. */
    public Finding {
        tested = List.copyOf(tested);
    }

    /** What can be said. */
    public enum Answer {
        /** The smallest capacity of the list that meets the target is known. */
        FOUND,
        /** A capacity meets the target, but so may smaller ones of the list that could not be decided. */
        BETWEEN,
        /** Even the smallest of the list meets it. */
        ALL_MEET,
        /** Even the largest of the list misses it. */
        NONE_MEETS,
        /** None is sure to meet it, and the largest could not be decided. */
        CANNOT_TELL
    }

    /**
     * What can be said.
     *
     * @return the kind of answer
     */
    public Answer answer() {
        List<Double> all = plan.capacitiesM();
        int meets = meetsM.isPresent() ? all.indexOf(meetsM.getAsDouble()) : all.size();
        int misses = missesM.isPresent() ? all.indexOf(missesM.getAsDouble()) : -1;
        if (meets == 0) {
            return Answer.ALL_MEET;
        }
        if (meets == all.size()) {
            return misses == all.size() - 1 ? Answer.NONE_MEETS : Answer.CANNOT_TELL;
        }
        return meets - misses == 1 ? Answer.FOUND : Answer.BETWEEN;
    }

    /**
     * A capacity that was tested.
     *
     * @param capacityM metres
     * @param verdict what the replications said at the last look
     * @param estimate the measure, at the plan's level
     * @param replications how many it took
     */
    public record Tested(double capacityM, Verdict verdict, Interval estimate, int replications) {}
}
