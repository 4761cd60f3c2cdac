package spoolyard.core.record;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.Product;

/**
 * A spool change of one strand, from the full spool until the winder may turn again. Immutable. Instants that never came
 * are {@code Ticks.NEVER}.
 *
 * @param line name of the line
 * @param strand number of the strand, from 1
 * @param product what it winds
 * @param fullTick when the spool was full
 * @param fullLevelM level of the accumulator then, metres above home
 * @param begunTick when the work began that lets the winder turn: somebody arrived, or a two-position winder began to
 *     move the strand
 * @param begunLevelM level then, metres above home
 * @param begunMPerS metres a second that entered the accumulator from then on; 0 if it was full
 * @param disturbedTick first instant after that, until the next spool was full, at which the feed changed or the work
 *     was interrupted; that the line slows for the level of this accumulator alone is none
 * @param turnedTick when the winder could turn again
 * @param peakLevelM highest level until then, metres above home
 * @param overflow what the overflow counts under, if the accumulator filled
 * @param lostM metres lost, by cause
 */
public record Swap(
        String line,
        int strand,
        Product product,
        long fullTick,
        double fullLevelM,
        long begunTick,
        double begunLevelM,
        double begunMPerS,
        long disturbedTick,
        long turnedTick,
        double peakLevelM,
        Optional<OverflowCause> overflow,
        Map<OverflowCause, Double> lostM) {
    /** Copies the map; every cause must be a key. */
    public Swap {
        lostM = Collections.unmodifiableMap(new EnumMap<>(lostM));
    }

    /**
     * Metres lost in all.
     *
     * @return metres
     */
    public double totalLostM() {
        return lostM.values().stream().mapToDouble(Double::doubleValue).sum();
    }
}
