package spoolyard.analysis.theory;

/**
 * Steady state of M/M/1: Poisson arrivals, one server, exponential service, first come first served. Immutable.
 *
 * <p>Source: D. Gross, J. F. Shortle, J. M. Thompson, C. M. Harris, Fundamentals of Queueing Theory, 4th ed. 2008,
 * section 2.2.
 *
 * @param arrivalsPerS arrival rate, 1/s, {@code > 0}
 * @param meanServiceS mean service time, seconds, {@code > 0}
 */
public record SingleServerQueue(double arrivalsPerS, double meanServiceS) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if an argument is out of range or the utilisation is not below 1
     */
    public SingleServerQueue {
        Ranges.positive("arrivalsPerS", arrivalsPerS);
        Ranges.positive("meanServiceS", meanServiceS);
        Ranges.stable(arrivalsPerS * meanServiceS);
    }

    /**
     * Share of time the server works, which is also the chance that an arrival has to wait (arrivals see time averages).
     *
     * @return rho = lambda / mu, in (0, 1)
     */
    public double utilisation() {
        return arrivalsPerS * meanServiceS;
    }

    /**
     * Mean time in the queue.
     *
     * @return Wq = rho / (mu - lambda), seconds
     */
    public double meanWaitS() {
        return utilisation() * meanServiceS / (1 - utilisation());
    }

    /**
     * Chance of a wait longer than a time.
     *
     * @param waitS that time, seconds, {@code >= 0}
     * @return P(Wq > t) = rho e<sup>-(mu - lambda) t</sup>
     */
    public double waitTail(double waitS) {
        return utilisation() * Math.exp(-(1 / meanServiceS - arrivalsPerS) * waitS);
    }

    /**
     * Mean time in queue and service.
     *
     * @return W = 1 / (mu - lambda), seconds
     */
    public double meanInSystemS() {
        return meanServiceS / (1 - utilisation());
    }

    /**
     * Mean number in the queue.
     *
     * @return Lq = rho<sup>2</sup> / (1 - rho)
     */
    public double meanWaiting() {
        return utilisation() * utilisation() / (1 - utilisation());
    }

    /**
     * Mean number in queue and service.
     *
     * @return L = rho / (1 - rho)
     */
    public double meanInSystem() {
        return utilisation() / (1 - utilisation());
    }
}
