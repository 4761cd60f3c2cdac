package spoolyard.scenarios.calendar;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import spoolyard.core.plant.Break;
import spoolyard.core.quantity.Ticks;
import spoolyard.scenarios.fault.Origin;

/**
 * The shifts that the same people work over some weeks. Immutable.
 *
 * @param name name of the crew, or of the shift where no rota says who works it
 * @param isCrew true: a crew with a rota; false: whoever works the shift of that name
 * @param origin where it is written
 * @param weeks whole weeks looked at
 * @param stints by start
 */
public record CrewWork(String name, boolean isCrew, Origin origin, int weeks, List<Stint> stints) {
    /** A break of at least this length is no working time. Source: 29 CFR 785.19, from memory. */
    private static final long MEAL_TICKS = 30 * 60 * Ticks.PER_SECOND;

    private static final LocalTime NIGHT_BEGINS = LocalTime.of(23, 0);
    private static final LocalTime NIGHT_ENDS = LocalTime.of(6, 0);

    /** Copies the list. */
    public CrewWork {
        stints = List.copyOf(stints);
    }

    /**
     * A shift that somebody works on some date.
     *
     * @param shift the shift
     * @param isExtra true: besides the pattern
     */
    record Attendance(ShiftTemplate shift, boolean isExtra) {}

    /**
     * A shift as one person works it, with the hand-over before it.
     *
     * @param label shift and date
     * @param week week in which it starts, from 0
     * @param start begin
     * @param end end
     * @param atWork time at work, meal breaks left out
     * @param isExtra true: besides the pattern, for example overtime; false: of the pattern
     */
    public record Stint(
            String label, int week, ZonedDateTime start, ZonedDateTime end, Duration atWork, boolean isExtra) {
        static Stint of(Attendance attendance, LocalDate date, int week, PlantClock clock) {
            ShiftTemplate shift = attendance.shift();
            ZonedDateTime begin = clock.at(date.atTime(shift.start()));
            ZonedDateTime end = shift.end().after(date, shift.start(), begin);
            Staffing staffing = shift.staffing();
            long briefingTicks = staffing.handOverOverlaps() ? staffing.handOverTicks() : 0;
            ZonedDateTime start = begin.minus(duration(briefingTicks));
            long mealTicks = staffing.breaks().stream()
                    .mapToLong(Break::lengthTicks)
                    .filter(ticks -> ticks >= MEAL_TICKS)
                    .sum();
            Duration atWork = Duration.between(start, end).minus(duration(mealTicks));
            return new Stint(shift.name() + " of " + date, week, start, end, atWork, attendance.isExtra());
        }

        private static Duration duration(long ticks) {
            return Duration.ofNanos(ticks * (1_000_000_000L / Ticks.PER_SECOND));
        }

        /**
         * Hours at work.
         *
         * @return hours
         */
        public double atWorkH() {
            return atWork.toMillis() / 3.6e6;
        }

        /**
         * Hours from begin to end.
         *
         * @return hours, breaks included
         */
        public double lengthH() {
            return Duration.between(start, end).toMillis() / 3.6e6;
        }

        /**
         * Whether it is night work: at least three hours of it lie in night time. Source: Directive 2003/88/EC, Article 2
         * (3) and (4); night time is left to national law there, at least seven hours with midnight to 5 o'clock among
         * them; here it is 23:00 to 06:00.
         *
         * @return true for night work
         */
        public boolean isNight() {
            Duration atNight = Duration.ZERO;
            for (LocalDate date = start.toLocalDate().minusDays(1); !date.isAfter(end.toLocalDate()); ) {
                ZonedDateTime from = date.atTime(NIGHT_BEGINS).atZone(start.getZone());
                date = date.plusDays(1);
                ZonedDateTime to = date.atTime(NIGHT_ENDS).atZone(start.getZone());
                Duration common = Duration.between(from.isAfter(start) ? from : start, to.isBefore(end) ? to : end);
                atNight = common.isNegative() ? atNight : atNight.plus(common);
            }
            return atNight.toHours() >= 3;
        }
    }
}
