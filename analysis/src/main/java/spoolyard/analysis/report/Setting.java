package spoolyard.analysis.report;

import spoolyard.core.plant.Plant;

/**
 * What was run: needed beside a result to name things and to know what was planned. Immutable.
 *
 * @param plant the plant
 * @param clock its wall clock
 */
public record Setting(Plant plant, PlantClock clock) {}
