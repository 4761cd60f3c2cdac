package spoolyard.core.plant;

/**
 * A break in a shift. Immutable. A person at work takes it when the task in hand is done, in full length.
 *
 * @param offsetTicks begin after the start of the shift (for the first person if staggered), ticks
 * @param lengthTicks length, ticks
 * @param staggered true: one person of a role after the other; false: all together
 * @param relieved true: roles that relieve others stand in meanwhile, and take their own break after them
 */
public record Break(long offsetTicks, long lengthTicks, boolean staggered, boolean relieved) {}
