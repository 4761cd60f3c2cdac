package spoolyard.core.plant;

import java.util.List;

/** How a line comes from cold to its set points. Immutable. */
public sealed interface HeatUp {
    /**
     * It takes its time, however cold the line is.
     *
     * @param timeS from cold to set point, seconds
     */
    record Timed(Law timeS) implements HeatUp {}

    /**
     * Each zone heats from where it stands to its set point, then holds it; the slowest decides.
     *
     * @param zones at least one
     * @param airC temperature of the air, to which the zones cool, degrees Celsius; below every set point
     */
    record Zoned(List<HeatZone> zones, double airC) implements HeatUp {
        /** Copies the list. */
        public Zoned {
            zones = List.copyOf(zones);
        }
    }
}
