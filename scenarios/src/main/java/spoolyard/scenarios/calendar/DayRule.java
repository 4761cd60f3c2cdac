package spoolyard.scenarios.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Set;

/** On which dates a shift of the pattern starts. Immutable. */
public sealed interface DayRule {
    /**
     * Whether the shift starts on a date.
     *
     * @param date the date
     * @param cycle the pattern's cycle
     * @return true if it does
     */
    boolean fallsOn(LocalDate date, Cycle cycle);

    /**
     * By weekday.
     *
     * @param days the weekdays
     */
    record Weekdays(Set<DayOfWeek> days) implements DayRule {
        /** Copies the set. */
        public Weekdays {
            days = Set.copyOf(days);
        }

        @Override
        public boolean fallsOn(LocalDate date, Cycle cycle) {
            return days.contains(date.getDayOfWeek());
        }
    }

    /**
     * By day of the cycle.
     *
     * @param days day numbers, from 1
     */
    record CycleDays(Set<Integer> days) implements DayRule {
        /** Copies the set. */
        public CycleDays {
            days = Set.copyOf(days);
        }

        @Override
        public boolean fallsOn(LocalDate date, Cycle cycle) {
            return days.contains(cycle.dayOf(date));
        }
    }
}
