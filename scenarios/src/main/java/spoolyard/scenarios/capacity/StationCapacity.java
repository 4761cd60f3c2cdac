package spoolyard.scenarios.capacity;

/**
 * Work and time of a finishing station, with spools as a steady flow. Immutable.
 *
 * @param station its name
 * @param spoolsPerH spools an hour with every place at work, on the order book's mix of spool sizes
 * @param capacitySpools spools it can do in the run with the people there are
 * @param demandSpools spools that come to it in the run, or stand before it at the start
 * @param longestClosedH longest stretch in which nobody works there, hours
 * @param peakWaiting most spools waiting at any time
 * @param roomSpools spools that can wait for it: its own rack and those of the stations before it
 */
public record StationCapacity(
        String station,
        double spoolsPerH,
        double capacitySpools,
        double demandSpools,
        double longestClosedH,
        double peakWaiting,
        double roomSpools) {}
