package spoolyard.analysis.bottleneck;

import spoolyard.core.plant.Plant;

/**
 * One part of a plant made less tight, all else as it is. Immutable.
 *
 * @param kind what is relieved
 * @param station its name
 * @param change what is done to it, for people
 * @param plant the plant with the change
 */
public record Relief(Kind kind, String station, String change, Plant plant) {
    /** What can be relieved. */
    public enum Kind {
        /** More people of a role. */
        CREW("crew"),
        /** A faster line. */
        LINE("line"),
        /** More room in the accumulators of a line. */
        BUFFER("buffer"),
        /** Quicker spool swaps on a line. */
        SWAP("swap"),
        /** A finishing station with more places or a shorter cycle. */
        FINISHING("finishing"),
        /** More room in a rack or in the quarantine. */
        RACK("rack"),
        /** More places for a test of the lab. */
        LAB("lab"),
        /** More capacity to dry material. */
        DRYER("dryer"),
        /** More ovens to dry spools again. */
        OVEN("oven");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /**
         * Name for people and files.
         *
         * @return a lower-case word
         */
        public String label() {
            return label;
        }
    }

    /**
     * Station and change together.
     *
     * @return for example {@code operator: one more in every shift}
     */
    public String label() {
        return station + ": " + change;
    }
}
