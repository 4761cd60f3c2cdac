package spoolyard.analysis.experiment;

/**
 * How a system stood when a selection looked at it. Immutable.
 *
 * @param count observations of it so far
 * @param system its number
 * @param mean over them; larger is better
 * @param dropsBelow the mean below which it is dropped; not a number where nothing is dropped
 */
public record Standing(int count, int system, double mean, double dropsBelow) {
    /**
     * Whether it is out from now on.
     *
     * @return true if it is dropped at this look
     */
    public boolean isDropped() {
        return mean < dropsBelow;
    }
}
