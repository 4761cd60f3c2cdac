package spoolyard.core.plant;

/**
 * How a line is fed with dry material. Immutable.
 *
 * @param layout where the colour comes in
 * @param hopperKg material held in the line's dryer hopper, kg, {@code > 0}
 * @param batchKg mass loaded at a time by the crew, kg, in (0, hopperKg]; 0 means that a loader keeps the hopper full by
 *     itself
 * @param loadS weigh, blend and load one batch (with a loader: the first filling), seconds
 * @param cleanS empty and clean the hopper for another material, seconds
 * @param crew who loads and cleans
 * @param startsDry true: at the start of the run the hopper holds dry material for the line's first order
 */
public record MaterialSupply(
        Layout layout, double hopperKg, double batchKg, Law loadS, Law cleanS, CrewNeed crew, boolean startsDry) {
    /** Where the colour comes in, which decides what a colour change must wait for. */
    public enum Layout {
        /** Natural is dried; colour is dosed at the throat. Only a change of polymer touches the hopper. */
        DOSE_AT_THROAT,
        /** Natural and colour are blended, then dried. A change of polymer or colour empties and cleans the hopper. */
        BLEND_FIRST
    }

    /** Checks the ranges. */
    public MaterialSupply {
        if (!(hopperKg > 0 && batchKg >= 0 && batchKg <= hopperKg)) {
            throw new IllegalArgumentException("hopper = " + hopperKg + " kg, batch = " + batchKg
                    + " kg. Must be > 0 and between 0 and the hopper.");
        }
    }

    /**
     * What the dryer must hold for a product.
     *
     * @param product the product
     * @return the same text for products that can follow each other without touching the hopper
     */
    public String materialOf(Product product) {
        String polymer = product.polymer().code();
        return layout == Layout.DOSE_AT_THROAT
                ? polymer
                : polymer + " " + product.colour().code();
    }

    /**
     * How much of what passes the die comes out of the dryer; colour dosed at the throat does not. Regrind, which does not
     * either, is counted as natural here, for it may run out.
     *
     * @param product what is made
     * @return share of mass in (0, 1]
     */
    public double driedShare(Product product) {
        return layout == Layout.DOSE_AT_THROAT ? 1 - product.colour().concentrateShare() : 1;
    }

    /**
     * How much of what comes out of the dryer is resin, regrind counted as such.
     *
     * @param product what is made
     * @return share of mass in (0, 1]; less than 1 where colour is blended in
     */
    public double resinShare(Product product) {
        return layout == Layout.BLEND_FIRST ? 1 - product.colour().concentrateShare() : 1;
    }

    /**
     * Highest rate out of a dryer at which every pellet is dried long enough: what leaves has been in the hopper since the
     * hopper, less the batch that is missing while it is loaded, was filled after it. Source: plug flow, residence =
     * content / rate.
     *
     * @param dryerKg content of the hopper that feeds, kg
     * @param polymer what is dried
     * @return kg/h out of the dryer, {@code >= 0}; infinity if nothing needs drying
     */
    public double driedKgPerH(double dryerKg, Polymer polymer) {
        double heldKg = Math.max(dryerKg - batchKg, 0);
        return polymer.dryingS() == 0 ? Double.POSITIVE_INFINITY : heldKg / polymer.dryingS() * 3600;
    }

    /**
     * Highest rate of a line at which its dryer dries long enough all that comes out of it.
     *
     * @param dryerKg content of the hopper that feeds, kg
     * @param product what is made
     * @return kg/h through the die, {@code >= 0}; infinity if nothing needs drying
     */
    public double limitKgPerH(double dryerKg, Product product) {
        return driedKgPerH(dryerKg, product.polymer()) / driedShare(product);
    }
}
