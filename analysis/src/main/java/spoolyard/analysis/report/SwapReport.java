package spoolyard.analysis.report;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.analysis.buffer.SwapStory;
import spoolyard.analysis.buffer.SwapStudy;
import spoolyard.analysis.buffer.SwapStudy.SeenSwap;
import spoolyard.analysis.buffer.SwapWaits;
import spoolyard.core.plant.Line;
import spoolyard.core.record.OverflowCause;

/**
 * What became of the swaps of a line. Immutable.
 *
 * @param provenance where it comes from
 * @param setting the plant and its clock
 * @param line the line
 * @param swaps every swap, by replication
 * @param story one overflow in detail; empty if there is none of the rank asked for
 * @param rank its place among the overflows, 1 for the one that lost most
 * @param replications how many
 */
public record SwapReport(
        Provenance provenance,
        Setting setting,
        Line line,
        List<SeenSwap> swaps,
        Optional<SwapStory> story,
        int rank,
        int replications) {
    /** Copies the list. */
    public SwapReport {
        swaps = List.copyOf(swaps);
    }

    SwapWaits waits() {
        return SwapWaits.of(swaps);
    }

    List<SeenSwap> overflows() {
        return SwapStudy.worstFirst(swaps);
    }

    /** Overflows by cause. */
    Map<OverflowCause, Double> counts() {
        Map<OverflowCause, Double> counts = zeros();
        swaps.forEach(seen -> seen.swap().overflow().ifPresent(cause -> counts.merge(cause, 1.0, Double::sum)));
        return Collections.unmodifiableMap(counts);
    }

    /** Metres lost by cause. */
    Map<OverflowCause, Double> lostM() {
        Map<OverflowCause, Double> metres = zeros();
        swaps.forEach(seen -> seen.swap().lostM().forEach((cause, lost) -> metres.merge(cause, lost, Double::sum)));
        return Collections.unmodifiableMap(metres);
    }

    private static Map<OverflowCause, Double> zeros() {
        Map<OverflowCause, Double> zeros = new EnumMap<>(OverflowCause.class);
        for (OverflowCause cause : OverflowCause.values()) {
            zeros.put(cause, 0.0);
        }
        return zeros;
    }
}
