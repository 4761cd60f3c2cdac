package spoolyard.scenarios.capacity;

import java.util.List;
import spoolyard.core.plant.Plant;

/**
 * Load against capacity, by mean values and without any loss: what a plant engineer works out on paper before simulating.
 * Immutable.
 *
 * @param lines a row for each line, in plant order
 * @param crew a row for each role that attends winders and each shift name, in the order of roles and of first shifts
 * @param stations a row for each finishing station, in plant order
 */
public record CapacitySummary(List<LineCapacity> lines, List<CrewCapacity> crew, List<StationCapacity> stations) {
    /** Copies the lists. */
    public CapacitySummary {
        lines = List.copyOf(lines);
        crew = List.copyOf(crew);
        stations = List.copyOf(stations);
    }

    /**
     * Works the summary out.
     *
     * @param plant a sound plant
     * @return the summary; O(orders * lines + shifts * (lines + stations))
     */
    public static CapacitySummary of(Plant plant) {
        List<LineCapacity> lines = LineLoads.of(plant);
        return new CapacitySummary(lines, CrewLoads.of(plant, lines), StationLoads.of(plant, lines));
    }
}
