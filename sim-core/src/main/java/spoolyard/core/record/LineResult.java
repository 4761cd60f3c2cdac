package spoolyard.core.record;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A line over one replication. Immutable. Mass balance: {@code fedKg = goodKg + gauge.bGradeKg + all scrap +
 * inProcessKg}, to rounding.
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
 * @param stepWasteKg of the scrap, what ran to waste in a step of a program (start, purge, restart) and so outside
 *     production time, kg by cause
 * @param gauge what excursions out of tolerance cost
 * @param use heat and materials it took
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
        Map<ScrapCause, Double> stepWasteKg,
        GaugeResult gauge,
        LineUse use) {
    /** Copies the collections; every enum constant must be a key. */
    public LineResult {
        stateS = Collections.unmodifiableMap(new EnumMap<>(stateS));
        scrapKg = Collections.unmodifiableMap(new EnumMap<>(scrapKg));
        stepWasteKg = Collections.unmodifiableMap(new EnumMap<>(stepWasteKg));
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
     * What excursions out of tolerance cost.
     *
     * @param excursions excursions begun, all strands
     * @param outS strand-seconds out of tolerance
     * @param cutSpools spools cut short and taken off
     * @param bGradeSpools full spools of second quality
     * @param bGradeKg mass on them, kg; neither good nor scrap
     * @param flaggedSpools full, well wound or not, with filament out of tolerance on them
     * @param flaggedRejectedSpools of these, rejected for it and taken off
     */
    public record GaugeResult(
            long excursions,
            double outS,
            long cutSpools,
            long bGradeSpools,
            double bGradeKg,
            long flaggedSpools,
            long flaggedRejectedSpools) {
        /** Never out of tolerance. */
        public static final GaugeResult NONE = new GaugeResult(0, 0, 0, 0, 0, 0, 0);
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
