package spoolyard.scenarios.calendar;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import spoolyard.scenarios.fault.Origin;

/**
 * Which shifts the people of a crew work, day after day. Immutable.
 *
 * @param crew name of the crew
 * @param origin where it is written
 * @param days shift of the pattern for each day, empty for a day off; the first is day 1 of the pattern's cycle, and after
 *     the last it begins again
 */
public record Rota(String crew, Origin origin, List<Optional<String>> days) {
    /** Copies the list. */
    public Rota {
        days = List.copyOf(days);
    }

    /**
     * The shift that the crew works.
     *
     * @param date date on which the shift starts
     * @param cycle the pattern's cycle
     * @return name of the shift; empty on a day off
     */
    public Optional<String> shiftOn(LocalDate date, Cycle cycle) {
        long day = ChronoUnit.DAYS.between(cycle.firstDay(), date);
        return days.get((int) Math.floorMod(day, (long) days.size()));
    }
}
