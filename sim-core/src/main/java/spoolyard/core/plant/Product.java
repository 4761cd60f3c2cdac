package spoolyard.core.plant;

import spoolyard.core.quantity.Filament;

/**
 * What an order asks for and a line is set up for. Immutable.
 *
 * @param polymer the base polymer
 * @param colour the colour
 * @param diameterMm filament diameter in mm
 * @param spoolKg net filament mass on a full spool in kg, {@code > 0}
 */
public record Product(Polymer polymer, Colour colour, double diameterMm, double spoolKg) {
    /**
     * Short name for people.
     *
     * @return for example {@code PLA BLK 1.75 mm}
     */
    public String label() {
        return polymer.code() + " " + colour.code() + " " + diameterMm + " mm";
    }

    /**
     * Its geometry.
     *
     * @return density and diameter
     */
    public Filament filament() {
        return new Filament(polymer.densityKgPerM3(), diameterMm);
    }

    /**
     * Whether a line set up for one makes the other with no purge, die or temperature change (spool size may differ).
     *
     * @param other the other product
     * @return true if polymer, colour and diameter agree
     */
    public boolean sameMelt(Product other) {
        return polymer.code().equals(other.polymer.code())
                && colour.code().equals(other.colour.code())
                && diameterMm == other.diameterMm;
    }
}
