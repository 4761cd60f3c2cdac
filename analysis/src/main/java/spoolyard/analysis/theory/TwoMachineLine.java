package spoolyard.analysis.theory;

/**
 * Steady state of two unreliable machines of equal speed with a buffer between them, material as a fluid. Up and down
 * times are exponential, and a machine fails only while it works (operation-dependent failures). Immutable.
 *
 * <p>Source: G. Zimmern 1956; S. B. Gershwin, I. C. Schick, Continuous model of an unreliable two-stage material flow
 * system with a finite interstage buffer, 1980; D. Dubois, J.-P. Forestier 1982; Gershwin, Manufacturing Systems
 * Engineering, 1994, section 3.3. With levels x from 0 to N in units of one second's flow, the density of the level with
 * one machine down is C e<sup>lambda x</sup>, and lambda = -(p1 + r2) + p2 (r1 + r2) / (p1 + p2) + r1 (p1 + p2) / (r1 +
 * r2).
 *
 * @param first the machine before the buffer
 * @param second the machine after the buffer
 * @param speedPerS speed of both while working, units/s, {@code > 0}
 * @param bufferUnits room of the buffer, units, {@code >= 0}
 */
public record TwoMachineLine(Machine first, Machine second, double speedPerS, double bufferUnits) {
    /** Below this, {@code (e^z (z - 1) + 1) / z^2} is summed as a series: the direct form cancels. */
    private static final double SERIES_BELOW = 0.5;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if an argument is out of range
     */
    public TwoMachineLine {
        Ranges.positive("speedPerS", speedPerS);
        Ranges.notNegative("bufferUnits", bufferUnits);
    }

    /**
     * A machine.
     *
     * @param meanUpS mean working time between failures, seconds, {@code > 0}
     * @param meanDownS mean time to put it right, seconds, {@code > 0}
     */
    public record Machine(double meanUpS, double meanDownS) {
        /**
         * Checks the ranges.
         *
         * @throws IllegalArgumentException if an argument is out of range
         */
        public Machine {
            Ranges.positive("meanUpS", meanUpS);
            Ranges.positive("meanDownS", meanDownS);
        }

        private double failureRate() {
            return 1 / meanUpS;
        }

        private double repairRate() {
            return 1 / meanDownS;
        }
    }

    /**
     * Long-run output of the line.
     *
     * @return units/s, at most the speed
     */
    public double throughputPerS() {
        double p1 = first.failureRate();
        double p2 = second.failureRate();
        double bothUp = integral() * (first.repairRate() + second.repairRate()) / (p1 + p2);
        double secondWorks = bothUp + integral() + weightEmpty() / p2 + weightFull() / p1;
        return speedPerS * secondWorks / total();
    }

    /**
     * Long-run mean of the buffer's level.
     *
     * @return units, 0 to the buffer's room
     */
    public double meanLevelUnits() {
        double inside = firstMoment() * interiorFactor();
        return speedPerS * (inside + roomS() * weightFull() * fullFactor()) / total();
    }

    private double total() {
        double failures = first.failureRate() + second.failureRate();
        double emptyFactor = 1 / second.failureRate() + failures / (second.failureRate() * first.repairRate());
        return integral() * interiorFactor() + weightEmpty() * emptyFactor + weightFull() * fullFactor();
    }

    /** Time with the level inside, all four up-down states, per unit of density with one machine down. */
    private double interiorFactor() {
        double repairs = first.repairRate() + second.repairRate();
        double failures = first.failureRate() + second.failureRate();
        return 2 + repairs / failures + failures / repairs;
    }

    private double fullFactor() {
        double failures = first.failureRate() + second.failureRate();
        return 1 / first.failureRate() + failures / (first.failureRate() * second.repairRate());
    }

    private double roomS() {
        return bufferUnits / speedPerS;
    }

    private double exponent() {
        double repairs = first.repairRate() + second.repairRate();
        double failures = first.failureRate() + second.failureRate();
        return -(first.failureRate() + second.repairRate())
                + second.failureRate() * repairs / failures
                + first.repairRate() * failures / repairs;
    }

    /** Density at the empty end; densities are scaled to 1 at their larger end, so that none overflows. */
    private double weightEmpty() {
        return Math.exp(Math.min(0, -exponent() * roomS()));
    }

    private double weightFull() {
        return Math.exp(Math.min(0, exponent() * roomS()));
    }

    private double integral() {
        double z = -Math.abs(exponent()) * roomS();
        return z == 0 ? roomS() : roomS() * Math.expm1(z) / z;
    }

    /** Integral of level times density. */
    private double firstMoment() {
        double z = exponent() * roomS();
        double fromHighEnd = roomS() * roomS() * momentFromDenseEnd(-Math.abs(z));
        return z <= 0 ? fromHighEnd : roomS() * integral() - fromHighEnd;
    }

    /** Integral of u e^(zu) from 0 to 1, z not positive. */
    private static double momentFromDenseEnd(double z) {
        if (z < -SERIES_BELOW) {
            return (Math.exp(z) * (z - 1) + 1) / (z * z);
        }
        double term = 1;
        double sum = 0.5;
        for (int k = 1; Math.abs(term) > 1e-18; k++) {
            term *= z / k;
            sum += term / (k + 2);
        }
        return sum;
    }
}
