package spoolyard.scenarios.field;

/**
 * The range of a number, with its ends as a person writes them. Immutable.
 *
 * @param low lowest value
 * @param isLowOpen true: the lowest value itself is not allowed
 * @param high highest value, allowed itself
 * @param lowText lowest value as written
 * @param highText highest value as written
 */
record Bounds(double low, boolean isLowOpen, double high, String lowText, String highText) {
    boolean hold(double value) {
        return (isLowOpen ? value > low : value >= low) && value <= high;
    }

    String text() {
        return (isLowOpen ? "> " : ">= ") + lowText + " and <= " + highText;
    }

    /** A value inside. */
    double inside() {
        return isLowOpen ? Math.min(high, low + 1) : low;
    }
}
