package spoolyard.core.plant;

import java.util.Optional;

/**
 * Full spools that stand in the rack of a finishing station when the run starts. No line of the run made them. Immutable.
 *
 * @param station name of the station
 * @param order id of the order that they are for; empty if they are for none
 * @param spoolKg net mass of each, kg
 * @param polymer what is on them, which sets their exposure limit; empty means that it does not matter
 * @param spools how many, {@code >= 1}
 * @param ageS how long they have stood in moist air before the start, seconds, {@code >= 0}
 */
public record OpeningSpools(
        String station, Optional<String> order, double spoolKg, Optional<Polymer> polymer, int spools, double ageS) {}
