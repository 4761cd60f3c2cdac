package spoolyard.scenarios.calendar;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * The days after which a shift pattern repeats. Immutable.
 *
 * @param days length, {@code >= 1}
 * @param firstDay a date that is day 1
 */
public record Cycle(int days, LocalDate firstDay) {
    /**
     * Day of the cycle.
     *
     * @param date a date, before or after the first day
     * @return 1 to {@code days}
     */
    public int dayOf(LocalDate date) {
        return 1 + (int) Math.floorMod(ChronoUnit.DAYS.between(firstDay, date), (long) days);
    }
}
