package spoolyard.analysis.theory;

/**
 * Steady state of M/M/c: Poisson arrivals, equal servers, exponential service, one queue. Immutable.
 *
 * <p>Source: D. Gross, J. F. Shortle, J. M. Thompson, C. M. Harris, Fundamentals of Queueing Theory, 4th ed. 2008,
 * section 2.3.
 *
 * @param arrivalsPerS arrival rate, 1/s, {@code > 0}
 * @param meanServiceS mean service time, seconds, {@code > 0}
 * @param servers number of servers, {@code >= 1}
 */
public record MultiServerQueue(double arrivalsPerS, double meanServiceS, int servers) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if an argument is out of range or the utilisation is not below 1
     */
    public MultiServerQueue {
        Ranges.positive("arrivalsPerS", arrivalsPerS);
        Ranges.positive("meanServiceS", meanServiceS);
        Ranges.atLeastOne("servers", servers);
        Ranges.stable(arrivalsPerS * meanServiceS / servers);
    }

    /**
     * Mean number of servers at work.
     *
     * @return a = lambda / mu, erlang
     */
    public double offeredLoad() {
        return arrivalsPerS * meanServiceS;
    }

    /**
     * Share of time a server works.
     *
     * @return rho = a / c, in (0, 1)
     */
    public double utilisation() {
        return offeredLoad() / servers;
    }

    /**
     * Chance that an arrival has to wait.
     *
     * @return Erlang C, in (0, 1)
     */
    public double waitingProbability() {
        return Erlang.waitingProbability(servers, offeredLoad());
    }

    /**
     * Mean time in the queue.
     *
     * @return Wq = C / (c mu - lambda), seconds
     */
    public double meanWaitS() {
        return waitingProbability() * meanServiceS / (servers * (1 - utilisation()));
    }

    /**
     * Mean time in queue and service.
     *
     * @return W = Wq + 1 / mu, seconds
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
