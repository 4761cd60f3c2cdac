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
 * @param rotas who works which shift; may leave shifts out
 */
public record ShiftPlan(
        Cycle cycle,
        List<PatternShift> pattern,
        Set<LocalDate> holidays,
        List<Extra> extras,
        List<Change> changes,
        List<Rota> rotas) {
    /** Copies the collections. */
    public ShiftPlan {
        pattern = List.copyOf(pattern);
        holidays = Set.copyOf(holidays);
        extras = List.copyOf(extras);
        changes = List.copyOf(changes);
        rotas = List.copyOf(rotas);
    }

    /**
     * A plan that does not say who works which shift.
     *
     * @param cycle as above
     * @param pattern as above
     * @param holidays as above
     * @param extras as above
     * @param changes as above
     */
    public ShiftPlan(
            Cycle cycle,
            List<PatternShift> pattern,
            Set<LocalDate> holidays,
            List<Extra> extras,
            List<Change> changes) {
        this(cycle, pattern, holidays, extras, changes, List.of());
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
     * @param workedBy name of the crew that works it; empty if nobody says
     */
    public record Extra(ShiftTemplate template, List<LocalDate> dates, Optional<String> workedBy) {
        /** Copies the list. */
        public Extra {
            dates = List.copyOf(dates);
        }

        /**
         * An extra shift of which nobody says who works it.
         *
         * @param template as above
         * @param dates as above
         */
        public Extra(ShiftTemplate template, List<LocalDate> dates) {
            this(template, dates, Optional.empty());
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

    /**
     * A shift of the pattern as it is on a date on which it falls.
     *
     * @param usual the shift
     * @param date the date
     * @return what takes its place; empty if it falls out
     */
    Optional<ShiftTemplate> onDate(ShiftTemplate usual, LocalDate date) {
        return changes.stream()
                .filter(change ->
                        change.shift().equals(usual.name()) && change.dates().contains(date))
                .findFirst()
                .map(Change::instead)
                .orElse(Optional.of(usual));
    }
}
