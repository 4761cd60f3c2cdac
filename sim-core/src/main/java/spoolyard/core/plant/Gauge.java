package spoolyard.core.plant;

import java.util.List;
import java.util.Optional;

/**
 * What a line's diameter gauge finds: excursions, stretches out of tolerance although the line runs, and what becomes of
 * the spool they fall on. Each strand has excursions of its own. Immutable.
 *
 * @param excursions for which products they come how often and last how long; the first that fits a product holds for it
 * @param policy what becomes of the spool
 * @param control what the excursions were derived from; empty if they are given as they are
 */
public record Gauge(List<Excursions> excursions, Policy policy, Optional<DiameterControl> control) {
    /** Copies the list. */
    public Gauge {
        excursions = List.copyOf(excursions);
    }

    /**
     * Excursions of a product.
     *
     * @param product the product
     * @return place in the list, from 0; -1 if the product has none
     */
    public int indexOf(Product product) {
        for (int i = 0; i < excursions.size(); i++) {
            if (excursions.get(i).hold(product)) {
                return i;
            }
        }
        return -1;
    }

    /**
     * How often and how long a strand is out of tolerance.
     *
     * @param polymer code of the polymer for which this holds; empty for all
     * @param diameterMm diameter for which this holds, mm; 0 for all
     * @param untilNextS running time from the end of one to the beginning of the next, seconds
     * @param lengthS running time out of tolerance, seconds
     */
    public record Excursions(String polymer, double diameterMm, Law untilNextS, Law lengthS) {
        /**
         * For every product.
         *
         * @param untilNextS as above
         * @param lengthS as above
         * @return the excursions
         */
        public static Excursions ofAll(Law untilNextS, Law lengthS) {
            return new Excursions("", 0, untilNextS, lengthS);
        }

        boolean hold(Product product) {
            return (polymer.isEmpty() || polymer.equals(product.polymer().code()))
                    && (diameterMm == 0 || diameterMm == product.diameterMm());
        }

        /**
         * Name for streams.
         *
         * @return {@code excursion}, with the product if it is for one only
         */
        public String label() {
            return polymer.isEmpty() ? "excursion" : "excursion " + polymer + " " + diameterMm + " mm";
        }
    }

    /** What becomes of the spool in progress and of what is made while out of tolerance. Immutable. */
    public sealed interface Policy {
        /**
         * The spool is cut short and is scrap, with what is in the accumulator; filament goes to waste until it is in
         * tolerance again. The short spool must be swapped like a full one.
         */
        record Cut() implements Policy {}

        /** The spool is finished and sold as B-grade, not for the order. */
        record BGrade() implements Policy {}

        /**
         * The spool is finished and flagged for the laboratory.
         *
         * @param rejected chance that a flagged spool is rejected, in [0, 1]
         */
        record Flag(double rejected) implements Policy {}
    }
}
