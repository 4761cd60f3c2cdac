package spoolyard.scenarios.check;

import java.util.List;
import java.util.Map;
import spoolyard.core.plant.Plant;
import spoolyard.scenarios.calendar.PlantClock;
import spoolyard.scenarios.fault.Origin;

/**
 * A plant as read, with what a report needs beside it. Immutable.
 *
 * @param plant the plant
 * @param description what its author says about it; may be empty
 * @param clock start and end of the run
 * @param shiftNames names of the shifts of the pattern, in file order
 * @param orderOrigins where each order is due, by its id
 * @param purge what a study of its purges needs
 */
public record ReadPlant(
        Plant plant,
        String description,
        PlantClock clock,
        List<String> shiftNames,
        Map<String, Origin> orderOrigins,
        PurgeInputs purge) {
    /** Copies the lists. */
    public ReadPlant {
        shiftNames = List.copyOf(shiftNames);
        orderOrigins = Map.copyOf(orderOrigins);
    }
}
