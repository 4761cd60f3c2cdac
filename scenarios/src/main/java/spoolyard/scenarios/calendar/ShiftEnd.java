package spoolyard.scenarios.calendar;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;

/** When a shift ends. Immutable. */
public sealed interface ShiftEnd {
    /**
     * The end of a shift.
     *
     * @param date date on which it starts
     * @param startOfDay wall-clock start
     * @param start instant of the start
     * @return instant of the end
     */
    ZonedDateTime after(LocalDate date, LocalTime startOfDay, ZonedDateTime start);

    /**
     * Usual length, on a day without a clock change.
     *
     * @param startOfDay wall-clock start
     * @return a time up to 24 h
     */
    Duration usualLength(LocalTime startOfDay);

    /**
     * By the clock on the wall: the shift is an hour longer or shorter over a clock change.
     *
     * @param time time of day; on the next day if not after the start
     */
    record AtClock(LocalTime time) implements ShiftEnd {
        @Override
        public ZonedDateTime after(LocalDate date, LocalTime startOfDay, ZonedDateTime start) {
            LocalDate endDate = time.isAfter(startOfDay) ? date : date.plusDays(1);
            return endDate.atTime(time).atZone(start.getZone());
        }

        @Override
        public Duration usualLength(LocalTime startOfDay) {
            Duration length = Duration.between(startOfDay, time);
            return time.isAfter(startOfDay) ? length : length.plusDays(1);
        }
    }

    /**
     * By the stopwatch: the shift is as long as ever over a clock change.
     *
     * @param length time from start to end
     */
    record AfterLength(Duration length) implements ShiftEnd {
        @Override
        public ZonedDateTime after(LocalDate date, LocalTime startOfDay, ZonedDateTime start) {
            return start.plus(length);
        }

        @Override
        public Duration usualLength(LocalTime startOfDay) {
            return length;
        }
    }
}
