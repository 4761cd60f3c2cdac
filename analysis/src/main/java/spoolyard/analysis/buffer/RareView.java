package spoolyard.analysis.buffer;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * What it gained to expect overflows rather than to count them. Immutable.
 *
 * @param byCapacity by capacity, metres
 * @param timeRatio time of a replication with expecting over that without, measured
 */
public record RareView(Map<Double, RareGain> byCapacity, double timeRatio) {
    /** Copies the map. */
    public RareView {
        byCapacity = Collections.unmodifiableMap(new TreeMap<>(byCapacity));
    }

    /**
     * How many times as much work counting would be for an interval as narrow.
     *
     * @param capacityM one of the capacities
     * @return ratio of variance times time
     */
    public double speedUp(double capacityM) {
        return byCapacity.get(capacityM).varianceRatio() / timeRatio;
    }
}
