package spoolyard.core.plant;

import java.util.List;

/**
 * The way of a spool after the line. Immutable.
 *
 * @param stations the stations in the order in which a spool meets them, at least one; done at the last means packed
 * @param cartons spools to a carton by spool mass
 * @param cartonsPerPallet cartons to a pallet, {@code >= 1}
 * @param inbound spools that come from outside the lines
 */
public record Finishing(
        List<FinishingStation> stations, List<CartonSize> cartons, int cartonsPerPallet, List<Inbound> inbound) {
    /** Copies the lists. */
    public Finishing {
        stations = List.copyOf(stations);
        cartons = List.copyOf(cartons);
        inbound = List.copyOf(inbound);
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
     */
    public record Inbound(String name, Law intervalS, double spoolKg) {}
}
