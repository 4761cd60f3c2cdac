package spoolyard.core.record;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A line over one replication. Immutable. Mass balance: {@code fedKg = goodKg + all scrap + inProcessKg}, to rounding.
 *
 * @param line line name
 * @param stateS time in each state, seconds; sums to the horizon
 * @param goodSpools good spools, less those lost behind the line
 * @param rejectedSpools full spools rejected at the winder
 * @param goodKg mass on those good spools, kg
 * @param scrapKg scrap by cause, kg
 * @param fedKg mass through the die, kg
 * @param inProcessKg mass in accumulators and on spools in progress or waiting to be taken off at the end, kg
 * @param ratedKg mass the line would have made in its RUNNING and SLOWED time at the rate of the product, kg
 * @param swaps spool changes
 * @param overflows spool changes in which the accumulator filled, by cause
 * @param overflowM metres lost to overflow, by cause
 * @param slowedLossKg output lost to running below the rate of the product: slowed, or limited by the dryer, kg
 * @param blockedS strand-seconds with a full spool waiting for room in the rack
 * @param peakLevelM highest accumulator level of any strand, metres
 * @param meanSwapWaitS mean time from full spool to the person's arrival, seconds; 0 if none
 * @param longestSwapWaitS longest such time, seconds
 * @param stoppages by cause, in plant order
 * @param activePeriods number of unbroken active periods (see {@link LineState#isActive()})
 */
public record LineResult(
        String line,
        Map<LineState, Double> stateS,
        long goodSpools,
        long rejectedSpools,
        double goodKg,
        Map<ScrapCause, Double> scrapKg,
        double fedKg,
        double inProcessKg,
        double ratedKg,
        long swaps,
        Map<OverflowCause, Long> overflows,
        Map<OverflowCause, Double> overflowM,
        double slowedLossKg,
        double blockedS,
        double peakLevelM,
        double meanSwapWaitS,
        double longestSwapWaitS,
        List<StoppageResult> stoppages,
        long activePeriods) {
    /** Copies the collections; every enum constant must be a key. */
    public LineResult {
        stateS = Collections.unmodifiableMap(new EnumMap<>(stateS));
        scrapKg = Collections.unmodifiableMap(new EnumMap<>(scrapKg));
        overflows = Collections.unmodifiableMap(new EnumMap<>(overflows));
        overflowM = Collections.unmodifiableMap(new EnumMap<>(overflowM));
        stoppages = List.copyOf(stoppages);
    }

    /**
     * Scrap of all causes.
     *
     * @return kg
     */
    public double totalScrapKg() {
        return scrapKg.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /**
     * Time in all active states.
     *
     * @return seconds
     */
    public double activeS() {
        return stateS.entrySet().stream()
                .filter(entry -> entry.getKey().isActive())
                .mapToDouble(Map.Entry::getValue)
                .sum();
    }

    /**
     * A cause of stoppage.
     *
     * @param name its name
     * @param count how often it struck
     * @param stoodS time from strike to put right, waiting for crew included, seconds
     * @param waitS of this, waiting for crew, seconds
     */
    public record StoppageResult(String name, long count, double stoodS, double waitS) {}
}
