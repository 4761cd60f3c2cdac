package spoolyard.core.washout;

/**
 * Stirred tanks of equal size one after the other. Immutable.
 *
 * <p>Source: O. Levenspiel, Chemical Reaction Engineering, 3rd ed. 1999, ch. 14.
 *
 * @param tanks their number, 1 to 100
 */
public record TanksInSeries(int tanks) implements Washout {
    @Override
    public double oldShare(double turnovers) {
        double x = tanks * turnovers;
        double term = 1;
        double sum = 1;
        for (int i = 1; i < tanks; i++) {
            term *= x / i;
            sum += term;
        }
        return Math.min(1, sum * Math.exp(-x));
    }

    @Override
    public double turnovers(double oldShare) {
        if (oldShare >= 1) {
            return 0;
        }
        double high = 1;
        while (oldShare(high) > oldShare) {
            high *= 2;
        }
        return Bisection.first(0, high, turnovers -> oldShare(turnovers) <= oldShare);
    }
}
