package spoolyard.core.random;

import umontreal.ssj.probdist.NormalDist;

/** The standard normal law. */
public final class Normal {
    private Normal() {}

    /**
     * Turns a uniform into a standard normal number, by inversion.
     *
     * @param uniform in (0, 1)
     * @return the quantile
     */
    public static double quantile(double uniform) {
        return NormalDist.inverseF01(uniform);
    }

    /**
     * Chance of being above a value.
     *
     * @param x any value
     * @return a probability
     */
    public static double above(double x) {
        return NormalDist.barF01(x);
    }

    /**
     * Density.
     *
     * @param x any value
     * @return the density at it
     */
    public static double density(double x) {
        return NormalDist.density01(x);
    }
}
