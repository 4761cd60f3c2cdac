package spoolyard.core.plant;

/**
 * What the lines share to prepare material. Immutable.
 *
 * @param mobileDryers dryers on wheels that can stand in for a line's own hopper, {@code >= 0}
 * @param mobileKg content of each, kg
 * @param blenders batches that can be blended at one time by lines that blend first; {@link Integer#MAX_VALUE} means no
 *     limit
 * @param looksAhead true: the material of the next order is prepared while the line still makes the present one
 */
public record DryingRoom(int mobileDryers, double mobileKg, int blenders, boolean looksAhead) {
    /** No shared dryers, blenders without limit, nothing prepared ahead. */
    public static final DryingRoom NONE = new DryingRoom(0, 0, Integer.MAX_VALUE, false);
}
