package spoolyard.scenarios.calendar;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spoolyard.scenarios.fault.Origin;

/**
 * A shift pattern with its exceptions. Immutable.
 *
 * @param cycle days after which it repeats
 * @param pattern the shifts of the cycle
 * @param holidays dates on which no shift of the pattern starts
 * @param extras shifts besides the pattern, on holidays too
 * @param changes shifts of the pattern that differ on single dates
 */
public record ShiftPlan(
        Cycle cycle, List<PatternShift> pattern, Set<LocalDate> holidays, List<Extra> extras, List<Change> changes) {
    /** Copies the collections. */
    public ShiftPlan {
        pattern = List.copyOf(pattern);
        holidays = Set.copyOf(holidays);
        extras = List.copyOf(extras);
        changes = List.copyOf(changes);
    }

    /**
     * A shift of the cycle.
     *
     * @param template the shift
     * @param days on which dates it starts
     */
    public record PatternShift(ShiftTemplate template, DayRule days) {}

    /**
     * A shift besides the pattern, for example overtime.
     *
     * @param template the shift
     * @param dates dates on which it starts
     */
    public record Extra(ShiftTemplate template, List<LocalDate> dates) {
        /** Copies the list. */
        public Extra {
            dates = List.copyOf(dates);
        }
    }

    /**
     * A shift of the pattern that differs on single dates.
     *
     * @param shift name of the shift in the pattern
     * @param origin where the change is written
     * @param dates dates on which the shift starts
     * @param instead what takes its place; empty if it falls out
     */
    public record Change(String shift, Origin origin, List<LocalDate> dates, Optional<ShiftTemplate> instead) {
        /** Copies the list. */
        public Change {
            dates = List.copyOf(dates);
        }
    }

    /**
     * Whether a shift of the pattern starts on a date, changes aside.
     *
     * @param shift the shift
     * @param date the date
     * @return true if the cycle says so and the date is no holiday
     */
    boolean fallsOn(PatternShift shift, LocalDate date) {
        return !holidays.contains(date) && shift.days().fallsOn(date, cycle);
    }
}
