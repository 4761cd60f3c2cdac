package spoolyard.core.plant;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What things cost, all in one currency. Immutable.
 *
 * @param currency its name or sign, for people
 * @param polymerPerKg natural resin by polymer code, per kg; every polymer of the plant is a key
 * @param concentrate colour concentrate
 * @param compoundPerKg purge compound, per kg
 * @param credit what scrap and second quality bring in
 * @param packOutPerSpool empty spool, bag, desiccant, carton and label of a spool packed
 * @param labourPerH by role name, per paid hour at the usual rate; every role of the plant is a key
 * @param energyPerKwh electric energy, per kWh
 * @param contributionPerKg by polymer code, what a kilogram more sold would bring beyond its own cost; empty if nobody says
 */
public record Prices(
        String currency,
        Map<String, Double> polymerPerKg,
        Concentrate concentrate,
        double compoundPerKg,
        Credit credit,
        double packOutPerSpool,
        Map<String, Double> labourPerH,
        double energyPerKwh,
        Optional<Map<String, Double>> contributionPerKg) {
    /** Copies the maps, in their order. */
    public Prices {
        polymerPerKg = copy(polymerPerKg);
        labourPerH = copy(labourPerH);
        contributionPerKg = contributionPerKg.map(Prices::copy);
    }

    private static Map<String, Double> copy(Map<String, Double> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }

    /**
     * Colour concentrate.
     *
     * @param usualPerKg of colours that are not named, per kg
     * @param perKg by colour code, per kg
     */
    public record Concentrate(double usualPerKg, Map<String, Double> perKg) {
        /** Copies the map, in its order. */
        public Concentrate {
            perKg = copy(perKg);
        }

        /**
         * Price of a colour's concentrate.
         *
         * @param colour colour code
         * @return per kg
         */
        public double perKg(String colour) {
            return perKg.getOrDefault(colour, usualPerKg);
        }
    }

    /**
     * What comes in for that which is no good spool.
     *
     * @param cleanPerKg scrap of one polymer, per kg
     * @param mixedPerKg scrap of several polymers or with purge compound in it, per kg
     * @param secondQualityPerKg filament on spools of second quality, per kg
     */
    public record Credit(double cleanPerKg, double mixedPerKg, double secondQualityPerKg) {}
}
