package spoolyard.scenarios.calendar;

import java.time.LocalTime;
import spoolyard.scenarios.fault.Origin;

/**
 * A shift on no particular date. Immutable.
 *
 * @param name its name
 * @param origin where it is written
 * @param start wall-clock start
 * @param end its end
 * @param staffing who is there
 */
public record ShiftTemplate(String name, Origin origin, LocalTime start, ShiftEnd end, Staffing staffing) {}
