package spoolyard.core.record;

import java.util.List;
import java.util.Optional;
import spoolyard.core.plant.Product;

/**
 * What heat and materials a line took over one replication. Immutable.
 *
 * @param heatUps heat-ups begun; one that is cut short counts
 * @param hot when its heaters were on, by start, from the beginning of a heat-up to cold
 * @param standbyS time at heat with the screw standing, seconds
 * @param materials by product with no regard to spool size, in order of first use
 * @param compoundKg purge compound through the die, kg
 * @param purgedAtWeekEnd what its screw held before each purge at the end of a week, those that were done
 * @param heaters what its heaters drew; empty if it is not heated by zone
 */
public record LineUse(
        long heatUps,
        List<HotPeriod> hot,
        double standbyS,
        List<MaterialUse> materials,
        double compoundKg,
        List<Product> purgedAtWeekEnd,
        Optional<HeaterUse> heaters) {
    /** Nothing was told. */
    public static final LineUse NONE = new LineUse(0, List.of(), 0, List.of(), 0, List.of(), Optional.empty());

    /** Copies the lists. */
    public LineUse {
        hot = List.copyOf(hot);
        materials = List.copyOf(materials);
        purgedAtWeekEnd = List.copyOf(purgedAtWeekEnd);
    }

    /**
     * Electric energy of the heaters of a line while its screw stood.
     *
     * @param heatUpKwh to bring it from cold to its set points, kWh
     * @param standbyKwh to hold and move its set points, kWh
     */
    public record HeaterUse(double heatUpKwh, double standbyKwh) {}

    /**
     * A stretch of time in which the heaters were on.
     *
     * @param startTick begin
     * @param endTick end
     */
    public record HotPeriod(long startTick, long endTick) {}

    /**
     * A blend of polymer and colour, with the time the line gave to it: from the moment it turned to a product of it,
     * set-up and purge for it included, to the next.
     *
     * @param polymer polymer code; empty if the line fed something before its first product and never had one
     * @param colour colour code; empty likewise
     * @param concentrateShare colour concentrate in the blend, 0 to 1 by mass
     * @param fedKg through the die, kg, purge compound not included
     * @param scheduledKg what the line would have made in all its time but {@link LineState#NOT_SCHEDULED}, at its rate
     *     with the product, kg
     * @param noOrderKg of this, in the time in {@link LineState#NO_ORDER}, kg
     */
    public record MaterialUse(
            String polymer,
            String colour,
            double concentrateShare,
            double fedKg,
            double scheduledKg,
            double noOrderKg) {}
}
