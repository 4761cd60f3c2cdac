package spoolyard.core.gauge;

import spoolyard.core.plant.Law;

/**
 * What a tolerance means for a strand. Immutable.
 *
 * @param toleranceMm greatest allowed deviation, mm
 * @param spreadMm standard deviation of the diameter, mm, exact
 * @param shareOutside share of the metres out of tolerance, exact
 * @param perRunningH excursions per hour of running time: the exact rate of exits, less those that are joined
 * @param lengthS law of their length, seconds
 * @param seen excursions seen in the simulation; few of them make the joining and the law of length rough
 */
public record ToleranceFinding(
        double toleranceMm, double spreadMm, double shareOutside, double perRunningH, Law lengthS, long seen) {
    private static final double S_PER_H = 3600;

    /**
     * Mean running time from the end of an excursion to the beginning of the next.
     *
     * @return seconds, at least a thousandth of one; infinite if there are none
     */
    public double meanInToleranceS() {
        return Math.max(1e-3, S_PER_H / perRunningH - lengthS.mean());
    }
}
