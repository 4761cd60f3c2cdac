package spoolyard.core.record;

import java.util.List;

/**
 * How long a station was active at a stretch over one replication, and how long it was the bottleneck. Immutable.
 *
 * <p>A station with several places, and a role with several persons, is active while all of its places, or all persons at
 * work, are active: only then does the next spool or call wait for it.
 *
 * @param kind what it is
 * @param name its name
 * @param activeS time active, seconds
 * @param periods unbroken active periods
 * @param longestS longest of them, seconds
 * @param turns those of them in which it was the bottleneck, in the order of time
 */
public record Activity(Kind kind, String name, double activeS, long periods, double longestS, List<Turn> turns) {
    /** Copies the list. */
    public Activity {
        turns = List.copyOf(turns);
    }

    /** What can be a bottleneck. */
    public enum Kind {
        /** A line. */
        LINE("line"),
        /** All persons of a role. */
        CREW("crew"),
        /** A station that every spool meets. */
        FINISHING("finishing"),
        /** A test of the lab, while a lot waits for it. */
        LAB("lab"),
        /** The dryer of a line, while the line waits for dry material. */
        DRYER("dryer");

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
     * Mean length of an active period.
     *
     * @return seconds; not a number if it was never active
     */
    public double meanActiveS() {
        return periods == 0 ? Double.NaN : activeS / periods;
    }

    /**
     * Time as the sole bottleneck.
     *
     * @return seconds
     */
    public double soleS() {
        return turns.stream().mapToDouble(Turn::soleS).sum();
    }

    /**
     * Time in which the bottleneck shifted to or from it.
     *
     * @return seconds
     */
    public double shiftingS() {
        return turns.stream().mapToDouble(Turn::shiftingS).sum();
    }

    /**
     * Time as the bottleneck, alone or while it shifted.
     *
     * @return seconds
     */
    public double bottleneckS() {
        return soleS() + shiftingS();
    }
}
