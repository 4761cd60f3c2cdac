package spoolyard.core.plant;

import java.util.List;
import java.util.Optional;

/**
 * The way of a spool after the line. Immutable.
 *
 * @param stations the stations in the order in which a spool meets them, at least one; done at the last means packed
 * @param cartons spools to a carton by spool mass
 * @param cartonsPerPallet cartons to a pallet, {@code >= 1}
 * @param inbound spools that come from outside the lines
 * @param quality lab and exposure clock
 * @param opening what stands in the racks at the start, first come first
 */
public record Finishing(
        List<FinishingStation> stations,
        List<CartonSize> cartons,
        int cartonsPerPallet,
        List<Inbound> inbound,
        QualityRules quality,
        List<OpeningSpools> opening) {
    /** Copies the lists. */
    public Finishing {
        stations = List.copyOf(stations);
        cartons = List.copyOf(cartons);
        inbound = List.copyOf(inbound);
        opening = List.copyOf(opening);
    }

    /**
     * Finishing that starts with empty racks.
     *
     * @param stations as above
     * @param cartons as above
     * @param cartonsPerPallet as above
     * @param inbound as above
     * @param quality as above
     */
    public Finishing(
            List<FinishingStation> stations,
            List<CartonSize> cartons,
            int cartonsPerPallet,
            List<Inbound> inbound,
            QualityRules quality) {
        this(stations, cartons, cartonsPerPallet, inbound, quality, List.of());
    }

    /**
     * Finishing without lab and exposure clock.
     *
     * @param stations as above
     * @param cartons as above
     * @param cartonsPerPallet as above
     * @param inbound as above
     */
    public Finishing(
            List<FinishingStation> stations, List<CartonSize> cartons, int cartonsPerPallet, List<Inbound> inbound) {
        this(stations, cartons, cartonsPerPallet, inbound, QualityRules.NONE);
    }

    /**
     * Spools of an order that stand in racks at the start.
     *
     * @param order id of the order
     * @return count
     */
    public int openingSpools(String order) {
        return opening.stream()
                .filter(some -> some.order().filter(order::equals).isPresent())
                .mapToInt(OpeningSpools::spools)
                .sum();
    }

    /**
     * Place of the first station of a kind.
     *
     * @param kind {@link TaskKind#SEALING} or {@link TaskKind#PACKING}
     * @return its index; -1 if there is none
     */
    public int firstOf(TaskKind kind) {
        for (int i = 0; i < stations.size(); i++) {
            if (stations.get(i).kind() == kind) {
                return i;
            }
        }
        return -1;
    }

    /**
     * Spools to a carton; a size that the plant doesn't list is packed singly.
     *
     * @param spoolKg mass of a spool, kg
     * @return count, {@code >= 1}
     */
    public int cartonOf(double spoolKg) {
        for (CartonSize size : cartons) {
            if (size.spoolKg() == spoolKg) {
                return size.spools();
            }
        }
        return 1;
    }

    /**
     * How many spools fill a carton.
     *
     * @param spoolKg mass of the spool in kg
     * @param spools spools to a carton, {@code >= 1}
     */
    public record CartonSize(double spoolKg, int spools) {}

    /**
     * Spools that another hall or a toll winder sends to be sealed and packed here.
     *
     * @param name name used in files and reports
     * @param intervalS time between arrivals of single spools, seconds
     * @param spoolKg mass of a spool in kg
     * @param polymer what is on them, which sets their exposure limit; empty means that it does not matter
     */
    public record Inbound(String name, Law intervalS, double spoolKg, Optional<Polymer> polymer) {
        /**
         * Spools without an exposure limit.
         *
         * @param name as above
         * @param intervalS as above
         * @param spoolKg as above
         */
        public Inbound(String name, Law intervalS, double spoolKg) {
            this(name, intervalS, spoolKg, Optional.empty());
        }
    }
}
