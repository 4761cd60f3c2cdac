package spoolyard.core.gauge;

/**
 * What excursions cost, by renewal theory, when the time in tolerance between them is exponential. Accumulator contents
 * and time without a winder are left out.
 *
 * @param meanInToleranceS mean running time between excursions, seconds
 * @param meanLengthS mean length of an excursion, seconds
 * @param spoolS running time that fills a spool, seconds
 */
public record SpoolLoss(double meanInToleranceS, double meanLengthS, double spoolS) {
    /**
     * Share of the metres that is not on a full spool if an excursion cuts the spool: the waste meanwhile and the spools
     * cut short. Of the time in tolerance a share {@code a / (exp(a) - 1)} with {@code a = spoolS / meanInToleranceS} is
     * on full spools: a spool fills with chance {@code exp(-a)} and takes {@code (1 - exp(-a)) / a} of its time on
     * average.
     *
     * @return a share
     */
    public double cutShare() {
        double a = spoolS / meanInToleranceS;
        double full = a > 0 ? a / Math.expm1(a) : 1;
        return 1 - (1 - outShare()) * full;
    }

    /**
     * Share of the spools with filament out of tolerance on them: all but those that begin in tolerance and see no
     * excursion begin.
     *
     * @return a share
     */
    public double touchedShare() {
        return 1 - (1 - outShare()) * Math.exp(-spoolS / meanInToleranceS);
    }

    private double outShare() {
        return meanLengthS / (meanLengthS + meanInToleranceS);
    }
}
