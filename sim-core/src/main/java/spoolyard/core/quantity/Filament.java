package spoolyard.core.quantity;

/**
 * Geometry of a round strand. Immutable.
 *
 * <p>Example: PLA (1240 kg/m3) at 1.75 mm weighs 2.983 g/m, so 1 kg is 335 m.
 *
 * @param densityKgPerM3 density of the solid polymer in kg/m3, {@code > 0}
 * @param diameterMm filament diameter in mm, {@code > 0}
 */
public record Filament(double densityKgPerM3, double diameterMm) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if either value is not finite and positive
     */
    public Filament {
        if (!(densityKgPerM3 > 0
                && densityKgPerM3 < Double.POSITIVE_INFINITY
                && diameterMm > 0
                && diameterMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "density = " + densityKgPerM3 + " kg/m3, diameter = " + diameterMm + " mm. Both must be > 0.");
        }
    }

    /**
     * Mass of one metre. Source: geometry, rho * pi * d^2 / 4.
     *
     * @return kg/m
     */
    public double kgPerM() {
        double diameterM = diameterMm / 1000;
        return densityKgPerM3 * Math.PI * diameterM * diameterM / 4;
    }

    /**
     * Length of a mass.
     *
     * @param massKg mass in kg
     * @return metres
     */
    public double lengthM(double massKg) {
        return massKg / kgPerM();
    }

    /**
     * Speed of one strand that carries a mass rate.
     *
     * @param rateKgPerH mass rate of this strand in kg/h
     * @return m/s
     */
    public double speedMPerS(double rateKgPerH) {
        return rateKgPerH / 3600 / kgPerM();
    }

    /**
     * Mass rate of one strand at a speed.
     *
     * @param speedMPerS speed in m/s
     * @return kg/h
     */
    public double rateKgPerH(double speedMPerS) {
        return speedMPerS * 3600 * kgPerM();
    }
}
