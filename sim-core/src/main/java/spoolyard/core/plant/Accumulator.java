package spoolyard.core.plant;

/**
 * The dancer store between haul-off and winder, per strand. Immutable.
 *
 * @param homeM filament held at its home position, metres, {@code >= 0}
 * @param capacityM filament held when full, metres, {@code >= homeM}; the store for a swap is capacity less home
 */
public record Accumulator(double homeM, double capacityM) {
    /** Checks the order of the two. */
    public Accumulator {
        if (!(homeM >= 0 && capacityM >= homeM)) {
            throw new IllegalArgumentException("accumulator home = " + homeM + " m, capacity = " + capacityM
                    + " m. Home must be >= 0 and capacity >= home.");
        }
    }

    /**
     * Metres that can be taken up during a swap that starts at home.
     *
     * @return capacity less home, metres
     */
    public double roomM() {
        return capacityM - homeM;
    }
}
