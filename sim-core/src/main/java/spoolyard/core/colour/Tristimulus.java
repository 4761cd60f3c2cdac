package spoolyard.core.colour;

/**
 * CIE tristimulus values, scaled so that {@code y} of the white is 1. Immutable.
 *
 * @param x X
 * @param y Y
 * @param z Z
 */
public record Tristimulus(double x, double y, double z) {}
