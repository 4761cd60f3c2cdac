package spoolyard.scenarios.calendar;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import spoolyard.core.quantity.Ticks;

/**
 * Turns wall-clock times of the plant into ticks since the start of the run. Immutable.
 *
 * <p>A wall-clock time that a clock change skips stands for the time as much later; one that occurs twice stands for the
 * first. Source: the rule of {@link ZonedDateTime#of(LocalDateTime, java.time.ZoneId)}.
 *
 * @param start start of the run
 * @param end end of the run, after the start
 */
public record PlantClock(ZonedDateTime start, ZonedDateTime end) {
    /**
     * The tick of an instant.
     *
     * @param instant the instant
     * @return ticks since the start of the run; negative before it
     */
    public long tick(ZonedDateTime instant) {
        Duration since = Duration.between(start, instant);
        return Math.addExact(
                Math.multiplyExact(since.getSeconds(), Ticks.PER_SECOND),
                since.getNano() / (1_000_000_000L / Ticks.PER_SECOND));
    }

    /**
     * The instant of a wall-clock time.
     *
     * @param wallClock date and time
     * @return the instant in the plant's zone
     */
    public ZonedDateTime at(LocalDateTime wallClock) {
        return wallClock.atZone(start.getZone());
    }

    /**
     * The tick of a wall-clock time.
     *
     * @param wallClock date and time
     * @return ticks since the start of the run; negative before it
     */
    public long tick(LocalDateTime wallClock) {
        return tick(at(wallClock));
    }

    /**
     * Whether a wall-clock time occurs exactly once.
     *
     * @param wallClock date and time
     * @return false if a clock change skips or repeats it
     */
    public boolean isPlain(LocalDateTime wallClock) {
        return start.getZone().getRules().getValidOffsets(wallClock).size() == 1;
    }

    /**
     * Length of the run.
     *
     * @return ticks
     */
    public long horizonTicks() {
        return tick(end);
    }

    /**
     * Date on which the run starts.
     *
     * @return date in the plant's zone
     */
    public LocalDate firstDate() {
        return start.toLocalDate();
    }

    /**
     * Date on which the run ends.
     *
     * @return date in the plant's zone
     */
    public LocalDate lastDate() {
        return end.toLocalDate();
    }
}
