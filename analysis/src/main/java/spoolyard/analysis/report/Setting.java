package spoolyard.analysis.report;

import java.util.List;
import spoolyard.core.plant.Plant;

/**
 * What was run: needed beside a result to name things and to know what was planned. Immutable.
 *
 * @param plant the plant
 * @param clock its wall clock
 * @param labourFlags what in its roster labour law may not allow, a sentence or two each
 */
public record Setting(Plant plant, PlantClock clock, List<String> labourFlags) {
    /** Copies the list. */
    public Setting {
        labourFlags = List.copyOf(labourFlags);
    }

    /**
     * A plant with a roster beyond doubt.
     *
     * @param plant as above
     * @param clock as above
     */
    public Setting(Plant plant, PlantClock clock) {
        this(plant, clock, List.of());
    }
}
