package spoolyard.analysis.buffer;

import java.util.EnumMap;
import java.util.Map;
import spoolyard.core.record.OverflowCause;

/** Losses as tests need them. */
final class SketchedLoss {
    private SketchedLoss() {}

    /** A replication of one shift with so many swaps, of which so many overflow, each wasting a kilogram. */
    static Loss of(long swaps, long overflows) {
        return of(swaps, overflows, overflows);
    }

    /** A replication of one shift with so many swaps, of which so many overflow, wasting so much together. */
    static Loss of(long swaps, long overflows, double wasteKg) {
        Map<OverflowCause, Long> causes = new EnumMap<>(OverflowCause.class);
        for (OverflowCause cause : OverflowCause.values()) {
            causes.put(cause, cause == OverflowCause.SWAP_TOO_SLOW ? overflows : 0L);
        }
        return new Loss(1, swaps, overflows, causes, wasteKg, 2 * wasteKg, Double.NaN);
    }
}
