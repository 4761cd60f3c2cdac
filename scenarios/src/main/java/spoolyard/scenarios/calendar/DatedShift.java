package spoolyard.scenarios.calendar;

import java.time.LocalDate;
import spoolyard.core.plant.Shift;

/**
 * A shift on a date. Immutable.
 *
 * @param template the shift
 * @param date date on which it starts
 * @param startTick begin, ticks since the start of the run; negative if it begins before
 * @param endTick end, ticks since the start of the run
 */
public record DatedShift(ShiftTemplate template, LocalDate date, long startTick, long endTick) {
    /**
     * The shift as the plant knows it.
     *
     * @return the record
     */
    public Shift toShift() {
        Staffing staffing = template.staffing();
        return new Shift(
                template.name(),
                startTick,
                endTick,
                staffing.heads(),
                staffing.breaks(),
                staffing.handOverTicks(),
                staffing.handOverOverlaps(),
                staffing.pace());
    }

    /**
     * Whether any of the shift is in the run.
     *
     * @param horizonTicks length of the run, ticks
     * @return false if it lies before or after, even if it touches the run
     */
    public boolean overlapsRun(long horizonTicks) {
        return endTick > 0 && startTick < horizonTicks;
    }

    /**
     * Name and date for people.
     *
     * @return for example {@code N of 2027-03-12}
     */
    public String label() {
        return template.name() + " of " + date;
    }
}
