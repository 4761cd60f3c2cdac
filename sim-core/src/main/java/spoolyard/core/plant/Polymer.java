package spoolyard.core.plant;

/**
 * A base polymer. Immutable.
 *
 * @param code name used in files, for example {@code PLA}
 * @param densityKgPerM3 density of the solid in kg/m3, {@code > 0}
 * @param rateFactor line rate with this polymer as a share of the line's nominal rate, {@code > 0}
 * @param meltTemperatureC set point of the melt in degrees Celsius; a polymer change waits for the difference
 * @param hotStandbyLimitS how long the melt may stand hot before it must be purged, seconds, {@code >= 0}
 * @param dryingS how long pellets must be in the dryer before they are extruded, seconds, {@code >= 0}
 * @param exposureLimitS how long a wound spool may stand unsealed, seconds, {@code > 0}; infinity for no limit
 */
public record Polymer(
        String code,
        double densityKgPerM3,
        double rateFactor,
        double meltTemperatureC,
        double hotStandbyLimitS,
        double dryingS,
        double exposureLimitS) {
    /**
     * A polymer that needs no drying and that air does not harm.
     *
     * @param code as above
     * @param densityKgPerM3 as above
     * @param rateFactor as above
     * @param meltTemperatureC as above
     * @param hotStandbyLimitS as above
     */
    public Polymer(
            String code, double densityKgPerM3, double rateFactor, double meltTemperatureC, double hotStandbyLimitS) {
        this(code, densityKgPerM3, rateFactor, meltTemperatureC, hotStandbyLimitS, 0);
    }

    /**
     * A polymer that air does not harm once it is wound.
     *
     * @param code as above
     * @param densityKgPerM3 as above
     * @param rateFactor as above
     * @param meltTemperatureC as above
     * @param hotStandbyLimitS as above
     * @param dryingS as above
     */
    public Polymer(
            String code,
            double densityKgPerM3,
            double rateFactor,
            double meltTemperatureC,
            double hotStandbyLimitS,
            double dryingS) {
        this(code, densityKgPerM3, rateFactor, meltTemperatureC, hotStandbyLimitS, dryingS, Double.POSITIVE_INFINITY);
    }
}
