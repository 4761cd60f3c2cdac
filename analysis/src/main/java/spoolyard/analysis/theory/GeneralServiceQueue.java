package spoolyard.analysis.theory;

/**
 * Steady state of M/G/1: Poisson arrivals, one server, any service law, first come first served. Immutable.
 *
 * <p>Source: Pollaczek 1930, Khinchine 1932; Gross, Shortle, Thompson &amp; Harris, Fundamentals of Queueing Theory,
 * 4th ed. 2008, section 5.1: Wq = lambda E[S]<sup>2</sup> (1 + cv<sup>2</sup>) / (2 (1 - rho)).
 *
 * @param arrivalsPerS arrival rate, 1/s, {@code > 0}
 * @param meanServiceS mean service time, seconds, {@code > 0}
 * @param serviceCv standard deviation over mean of the service time, {@code >= 0}; 0 is constant service (M/D/1)
 */
public record GeneralServiceQueue(double arrivalsPerS, double meanServiceS, double serviceCv) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if an argument is out of range or the utilisation is not below 1
     */
    public GeneralServiceQueue {
        Ranges.positive("arrivalsPerS", arrivalsPerS);
        Ranges.positive("meanServiceS", meanServiceS);
        Ranges.notNegative("serviceCv", serviceCv);
        Ranges.stable(arrivalsPerS * meanServiceS);
    }

    /**
     * Share of time the server works, which is also the chance that an arrival has to wait.
     *
     * @return rho, in (0, 1)
     */
    public double utilisation() {
        return arrivalsPerS * meanServiceS;
    }

    /**
     * Mean time in the queue.
     *
     * @return Wq, seconds
     */
    public double meanWaitS() {
        return utilisation() * meanServiceS * (1 + serviceCv * serviceCv) / (2 * (1 - utilisation()));
    }

    /**
     * Mean time in queue and service.
     *
     * @return W, seconds
     */
    public double meanInSystemS() {
        return meanWaitS() + meanServiceS;
    }

    /**
     * Mean number in the queue.
     *
     * @return Lq = lambda Wq
     */
    public double meanWaiting() {
        return arrivalsPerS * meanWaitS();
    }

    /**
     * Mean number in queue and service.
     *
     * @return L = lambda W
     */
    public double meanInSystem() {
        return arrivalsPerS * meanInSystemS();
    }
}
