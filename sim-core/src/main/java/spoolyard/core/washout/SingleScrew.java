package spoolyard.core.washout;

/**
 * Melt conveying in the channel of a single screw: each particle circles between an upper and a lower depth. Nothing comes
 * before three quarters of a turnover; far out the old share falls with the square of time only. Immutable.
 *
 * <p>Source: G. Pinto, Z. Tadmor, Mixing and residence time distribution in melt screw extruders, Polymer Engineering and
 * Science 10 (1970) 279-288, with depth {@code xi} of a particle over that of the channel. Written here with
 * {@code u = 1 - xi}, which loses no digits in the tail.
 */
public record SingleScrew() implements Washout {
    private static final double FIRST = 0.75;
    private static final double LOWEST_UPPER_DEPTH = 1.0 / 3;

    @Override
    public double oldShare(double turnovers) {
        return turnovers <= FIRST ? 1 : share(depthAt(turnovers));
    }

    @Override
    public double turnovers(double oldShare) {
        if (oldShare >= 1) {
            return 0;
        }
        return time(Bisection.first(0, LOWEST_UPPER_DEPTH, u -> share(u) >= oldShare));
    }

    private static double depthAt(double turnovers) {
        return Bisection.first(0, LOWEST_UPPER_DEPTH, u -> time(u) <= turnovers);
    }

    private static double share(double u) {
        return u * (6 - 3 * u + root(u)) / 2;
    }

    private static double time(double u) {
        double root = root(u);
        return (2 - 3 * u + 3 * root) / (6 * (1 - u) * (u + root));
    }

    private static double root(double u) {
        return Math.sqrt(u * (4 - 3 * u));
    }
}
