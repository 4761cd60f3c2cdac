package spoolyard.core.plant;

import java.util.List;

/**
 * What electric energy a plant draws. Immutable. Not an average per kilogram: the base load runs whether much or little is
 * made.
 *
 * <p>Source of the form, base load plus a share by mass: R. Kent, "What's your process energy fingerprint?", Plastics
 * Technology.
 *
 * @param baseHotKw load of the whole plant while any line is hot, kW, {@code >= 0}
 * @param baseColdKw load of the whole plant otherwise, kW, {@code >= 0}
 * @param kwhPerKg drawn on top for each kilogram through a die, kWh/kg, {@code >= 0}
 * @param kwhPerKgGround drawn for each kilogram of scrap ground, kWh/kg, {@code >= 0}
 * @param lines what each line draws besides, in plant order
 */
public record EnergyUse(
        double baseHotKw, double baseColdKw, double kwhPerKg, double kwhPerKgGround, List<LineEnergy> lines) {
    /** Copies the list. */
    public EnergyUse {
        lines = List.copyOf(lines);
    }

    /**
     * What a line draws besides base load and mass.
     *
     * @param heatUpKwh from cold to set point, kWh, {@code >= 0}; not asked for where the line is heated by zone
     * @param standbyKw hot, with the screw standing, kW, {@code >= 0}; likewise
     */
    public record LineEnergy(double heatUpKwh, double standbyKw) {}
}
