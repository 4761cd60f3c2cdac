package spoolyard.core.washout;

/**
 * Laminar flow of a power-law melt in a round pipe without mixing across it: {@code (1 / 2t)^2} for a Newtonian melt.
 * Immutable.
 *
 * <p>Source: O. Levenspiel, Chemical Reaction Engineering, 3rd ed. 1999, ch. 15; Z. Tadmor, C. G. Gogos, Principles of Polymer
 * Processing. With {@code y} the speed over that in the middle, the slower part carries {@code 1 - (1 - y)^b (1 + b y)} of the
 * flow, {@code b = 2n / (n + 1)}.
 *
 * @param powerLawIndex n, in (0, 1]; 1 is Newtonian
 */
public record LaminarPipe(double powerLawIndex) implements Washout {
    @Override
    public double oldShare(double turnovers) {
        return turnovers <= first() ? 1 : share(first() / turnovers);
    }

    @Override
    public double turnovers(double oldShare) {
        if (oldShare >= 1) {
            return 0;
        }
        return first() / Bisection.first(0, 1, speed -> share(speed) >= oldShare);
    }

    /** When the middle of the flow arrives, turnovers. */
    private double first() {
        return (powerLawIndex + 1) / (3 * powerLawIndex + 1);
    }

    private double share(double speed) {
        double b = 2 * powerLawIndex / (powerLawIndex + 1);
        return -Math.expm1(b * Math.log1p(-speed) + Math.log1p(b * speed));
    }
}
