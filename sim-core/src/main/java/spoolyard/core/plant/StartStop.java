package spoolyard.core.plant;

/**
 * How a line starts and stops. Immutable. All durations in seconds.
 *
 * @param heatUp from cold to set point
 * @param soakS at set point before the screw turns
 * @param threadUpS thread one strand through baths, haul-off and accumulator to the winder; strands one after the other
 * @param stabiliseS run to waste until diameter and colour are steady
 * @param startUpHoldUps melt volumes run to waste at a cold start, {@code >= 0}
 * @param shutDownS time of an orderly shut-down
 * @param shutDownHoldUps melt volumes purged at shut-down, {@code >= 0}
 * @param endOfPeriod what to do when the working period ends
 * @param preheatLeadS heating starts by timer this long before the working period, {@code >= 0}
 * @param crew who threads up and shuts down
 */
public record StartStop(
        HeatUp heatUp,
        Law soakS,
        Law threadUpS,
        Law stabiliseS,
        double startUpHoldUps,
        Law shutDownS,
        double shutDownHoldUps,
        EndOfPeriod endOfPeriod,
        double preheatLeadS,
        CrewNeed crew) {}
