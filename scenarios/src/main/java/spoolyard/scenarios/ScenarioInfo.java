package spoolyard.scenarios;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import spoolyard.core.quantity.Ticks;

/**
 * What reports need to know of a scenario beside the plant. Immutable.
 *
 * @param name the plant's name
 * @param description what its author says about it; may be empty
 * @param start start of the run by the plant's clock
 * @param end end of the run by the plant's clock
 * @param shiftNames names of the shifts of the pattern, in file order
 * @param files every file that was read, as a person would type it, in the order of reading
 * @param sets values set from the command line
 * @param contentHash SHA-256 over names (last part only) and bytes of all files and over the sets, in hexadecimal
 */
public record ScenarioInfo(
        String name,
        String description,
        ZonedDateTime start,
        ZonedDateTime end,
        List<String> shiftNames,
        List<String> files,
        List<String> sets,
        String contentHash) {
    /** Copies the lists. */
    public ScenarioInfo {
        shiftNames = List.copyOf(shiftNames);
        files = List.copyOf(files);
        sets = List.copyOf(sets);
    }

    /**
     * The plant's time zone.
     *
     * @return the zone
     */
    public ZoneId zone() {
        return start.getZone();
    }

    /**
     * Wall-clock time of an instant of the run.
     *
     * @param tick ticks since the start of the run; may be negative
     * @return date and time in the plant's zone
     */
    public ZonedDateTime at(long tick) {
        return start.plusSeconds(Math.floorDiv(tick, Ticks.PER_SECOND))
                .plusNanos(Math.floorMod(tick, Ticks.PER_SECOND) * (1_000_000_000L / Ticks.PER_SECOND));
    }
}
