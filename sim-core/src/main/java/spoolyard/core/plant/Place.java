package spoolyard.core.plant;

/**
 * Where a station stands on the floor, for walking. Immutable.
 *
 * @param xM metres along the hall
 * @param yM metres across the hall
 */
public record Place(double xM, double yM) {
    /** The corner from which places are measured. */
    public static final Place ORIGIN = new Place(0, 0);

    /**
     * Walking distance along aisles.
     *
     * @param other the other place
     * @return metres, |dx| + |dy|
     */
    public double distanceM(Place other) {
        return Math.abs(xM - other.xM) + Math.abs(yM - other.yM);
    }
}
