package spoolyard.analysis.report;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/**
 * From ticks since the start of the run to the clock on the plant's wall. Immutable.
 *
 * @param start the instant of tick 0 in the plant's time zone
 */
public record PlantClock(ZonedDateTime start) {
    private static final DateTimeFormatter TO_THE_MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
    private static final DateTimeFormatter TO_THE_MILLISECOND =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss.SSS", Locale.ROOT);

    /**
     * The wall-clock instant.
     *
     * @param tick ticks since the start of the run, any sign
     * @return date, time and zone; clock changes are heeded
     */
    public ZonedDateTime at(long tick) {
        return start.plus(tick, ChronoUnit.MICROS);
    }

    /**
     * Date and time to the minute.
     *
     * @param tick ticks since the start of the run
     * @return for example {@code 2027-03-01 06:00}
     */
    public String minute(long tick) {
        return at(tick).format(TO_THE_MINUTE);
    }

    /**
     * Date and time to the millisecond.
     *
     * @param tick ticks since the start of the run
     * @return for example {@code 2027-03-01 06:00:12.345}
     */
    public String millisecond(long tick) {
        return at(tick).format(TO_THE_MILLISECOND);
    }
}
