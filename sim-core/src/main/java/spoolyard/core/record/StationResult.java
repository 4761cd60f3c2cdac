package spoolyard.core.record;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * A finishing station over one replication. Immutable.
 *
 * @param station station name
 * @param servers work places
 * @param stateS server-seconds in each state; sums to servers times horizon
 * @param spools spools done
 * @param repeats cycles done again
 * @param meanWaitS mean time a spool waited before its cycle began, seconds, over spools begun; 0 if none
 * @param longestWaitS longest such time, seconds
 * @param meanWaiting time-average number of waiting spools
 * @param peakWaiting largest number of waiting spools
 * @param waitedShare share of the spools begun that had to wait at all
 */
public record StationResult(
        String station,
        int servers,
        Map<ServerState, Double> stateS,
        long spools,
        long repeats,
        double meanWaitS,
        double longestWaitS,
        double meanWaiting,
        int peakWaiting,
        double waitedShare) {
    /** Copies the map; every state must be a key. */
    public StationResult {
        stateS = Collections.unmodifiableMap(new EnumMap<>(stateS));
    }
}
