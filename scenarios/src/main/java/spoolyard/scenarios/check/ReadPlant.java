package spoolyard.scenarios.check;

import java.util.List;
import spoolyard.core.plant.Plant;
import spoolyard.scenarios.calendar.DatedShift;
import spoolyard.scenarios.calendar.PlantClock;

/**
 * A plant as read, with what a report needs beside it. Immutable.
 *
 * @param plant the plant
 * @param description what its author says about it; may be empty
 * @param clock start and end of the run
 * @param shiftNames names of the shifts of the pattern, in file order
 * @param shifts all shifts with their dates, by start
 */
public record ReadPlant(
        Plant plant, String description, PlantClock clock, List<String> shiftNames, List<DatedShift> shifts) {
    /** Copies the lists. */
    public ReadPlant {
        shiftNames = List.copyOf(shiftNames);
        shifts = List.copyOf(shifts);
    }
}
