package spoolyard.core.washout;

import java.util.function.DoublePredicate;

/** Finds where a statement about a number becomes true, to the last bit. */
final class Bisection {
    private Bisection() {}

    /**
     * The first number for which it holds.
     *
     * @param low for which it does not hold, {@code >= 0}
     * @param high for which it holds
     * @param isBeyond the statement, false below some number and true from it on
     * @return that number
     */
    static double first(double low, double high, DoublePredicate isBeyond) {
        double below = low;
        double beyond = high;
        double middle = (below + beyond) / 2;
        while (middle > below && middle < beyond) {
            if (isBeyond.test(middle)) {
                beyond = middle;
            } else {
                below = middle;
            }
            middle = (below + beyond) / 2;
        }
        return beyond;
    }
}
