package spoolyard.scenarios.capacity;

import java.util.Optional;

/**
 * Work and time of a line. Immutable.
 *
 * @param line its name
 * @param scheduledH hours in which it is meant to run, planned stops taken off
 * @param loadH hours of running at full rate, without any loss, for the orders due in the run, spread over the lines as
 *     evenly as can be
 * @param onlyHereH of these, hours for orders that no other line can make
 * @param spoolsPerH spools in an hour of running, over its load; 0 without load
 * @param attendedHeads people busy with its spools while it runs, over its load; 0 without load
 * @param usual arithmetic of the product it makes most of; empty without load
 * @param hardest arithmetic of the product with the shortest wait among all orders it may get; empty if there are none
 */
public record LineCapacity(
        String line,
        double scheduledH,
        double loadH,
        double onlyHereH,
        double spoolsPerH,
        double attendedHeads,
        Optional<SwapArithmetic> usual,
        Optional<SwapArithmetic> hardest) {
    /**
     * Load as a share of scheduled time.
     *
     * @return 1 is full without any loss; 0 if nothing is scheduled
     */
    public double loadShare() {
        return scheduledH > 0 ? loadH / scheduledH : 0;
    }
}
