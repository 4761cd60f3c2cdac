package spoolyard.core.gauge;

import java.util.Arrays;

/** Finds the excursions in a row of deviations: runs out of tolerance, joined where what lies between is short. */
final class ExcursionCounter {
    private static final int SOME = 256;

    private final double toleranceMm;
    private final int joinSamples;
    private int[] lengths = new int[SOME];
    private int excursions;
    private long exits;
    private long outside;
    private int run;
    private int since;

    /**
     * Counts for a tolerance.
     *
     * @param toleranceMm greatest allowed deviation, mm
     * @param joinSamples runs with fewer samples between them than this are joined
     */
    ExcursionCounter(double toleranceMm, int joinSamples) {
        this.toleranceMm = toleranceMm;
        this.joinSamples = joinSamples;
    }

    void add(double deviationMm) {
        if (Math.abs(deviationMm) > toleranceMm) {
            outside++;
            exits += run == 0 || since > 0 ? 1 : 0;
            run += since + 1;
            since = 0;
        } else if (run > 0) {
            since++;
            if (since >= joinSamples) {
                end();
            }
        }
    }

    private void end() {
        if (excursions == lengths.length) {
            lengths = Arrays.copyOf(lengths, 2 * excursions);
        }
        lengths[excursions++] = run;
        run = 0;
        since = 0;
    }

    /** Excursions that are over. */
    int excursions() {
        return excursions;
    }

    /** Runs out of tolerance, joined or not, the last one included. */
    long exits() {
        return exits;
    }

    /** Samples out of tolerance. */
    long outside() {
        return outside;
    }

    /** Lengths of the excursions that are over, samples, the shortest first. */
    int[] sortedLengths() {
        int[] sorted = Arrays.copyOf(lengths, excursions);
        Arrays.sort(sorted);
        return sorted;
    }
}
