package spoolyard.analysis.crew;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How often winders call and how long the work takes, for the published curves. Immutable.
 *
 * <p>From the time a winder is looked after, its calls, their waits and their work: a cycle is run, wait and work, so the
 * mean run is what is left of a cycle.
 *
 * @param winders winders that call, N, {@code >= 1}
 * @param runS mean time from the end of one work to the next call of a winder, U, seconds
 * @param workS mean time of a work, walking included, T, seconds
 */
public record CrewLoad(int winders, double runS, double workS) {
    /** What the plant as it is shows. */
    static CrewLoad of(int winders, List<CrewOutcome> now) {
        double calls = sum(now, CrewOutcome::calls);
        double workS = sum(now, CrewOutcome::workS) / calls;
        double cycleS = sum(now, CrewOutcome::winderS) / calls;
        return new CrewLoad(winders, cycleS - workS - sum(now, CrewOutcome::waitS) / calls, workS);
    }

    private static double sum(List<CrewOutcome> outcomes, ToDoubleFunction<CrewOutcome> value) {
        return outcomes.stream().mapToDouble(value).sum();
    }

    /**
     * Whether the curves can be drawn.
     *
     * @return false if nothing calls, or calls take no time, or more than there is
     */
    public boolean isSound() {
        return runS > 0 && workS > 0 && runS + workS < Double.POSITIVE_INFINITY;
    }

    /**
     * Peck and Hazelwood's service factor.
     *
     * @return X = T / (T + U)
     */
    public double serviceFactor() {
        return workS / (workS + runS);
    }
}
