package spoolyard.core.plant;

/**
 * A planned stop at a known time. Immutable.
 *
 * @param name what it is for
 * @param startTick begin, ticks since the start of the run
 * @param endTick end, {@code > startTick}
 */
public record Window(String name, long startTick, long endTick) {}
