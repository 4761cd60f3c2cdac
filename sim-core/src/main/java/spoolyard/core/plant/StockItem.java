package spoolyard.core.plant;

import java.util.List;
import java.util.Optional;

/**
 * An article in store. Immutable. Amounts are kg of resin and concentrate, pieces of spools and cartons.
 *
 * @param kind what sort of thing it is
 * @param name which one of its kind, as files name it: a polymer code, a colour code, a spool size
 * @param spoolKg for spools and cartons, mass of the spools that it is for, kg; empty if it is for every size
 * @param opening there at the start, {@code >= 0}; what is in hoppers that a loader keeps full is part of it. Infinity
 *     means that it never runs out
 * @param deliveries what comes on dates known beforehand, by date
 * @param reorder when more is ordered; empty for never
 */
public record StockItem(
        Kind kind,
        String name,
        Optional<Double> spoolKg,
        double opening,
        List<Delivery> deliveries,
        Optional<Reorder> reorder) {
    /** What sort of thing is in store. */
    public enum Kind {
        /** Natural resin of one polymer, kg. */
        RESIN("resin", "kg"),
        /** Concentrate of one colour, kg. */
        CONCENTRATE("concentrate", "kg"),
        /** Empty spools of one size. */
        SPOOLS("empty spools", "spools"),
        /** Cartons, of one size or of all. */
        CARTONS("cartons", "cartons"),
        /** Ground scrap of one polymer, kg; nobody waits for it. */
        REGRIND("regrind", "kg");

        private final String label;
        private final String unit;

        Kind(String label, String unit) {
            this.label = label;
            this.unit = unit;
        }

        /**
         * Name for people and files.
         *
         * @return lower-case words
         */
        public String label() {
            return label;
        }

        /**
         * What an amount of it is counted in.
         *
         * @return a unit
         */
        public String unit() {
            return unit;
        }
    }

    /** Checks the opening stock and copies the list. */
    public StockItem {
        if (!(opening >= 0)) {
            throw new IllegalArgumentException("opening stock = " + opening + ". Must be >= 0.");
        }
        deliveries = List.copyOf(deliveries);
    }

    /**
     * An amount that comes at an instant known beforehand.
     *
     * @param tick the instant
     * @param amount kg or pieces, {@code > 0}
     */
    public record Delivery(long tick, double amount) {}

    /**
     * Continuous review: as soon as what is there and on its way is at the reorder point or below, a fixed quantity is
     * ordered, again until it is above. Source: Hopp and Spearman, Factory Physics, section 2.4.3, the (Q, r) model (from
     * memory).
     *
     * @param point the reorder point, {@code >= 0}
     * @param quantity order quantity, {@code > 0}
     * @param leadTimeS from order to delivery, seconds of the calendar
     * @param safetyStock what should still be there, on average, when a delivery comes, {@code >= 0}; it only tells what
     *     the reorder point is meant to cover
     */
    public record Reorder(double point, double quantity, Law leadTimeS, double safetyStock) {
        /** Checks the ranges. */
        public Reorder {
            if (!(point >= 0 && quantity > 0 && safetyStock >= 0)) {
                throw new IllegalArgumentException("reorder point = " + point + ", quantity = " + quantity
                        + ", safety stock = " + safetyStock + ". Must be >= 0, > 0 and >= 0.");
            }
        }
    }
}
