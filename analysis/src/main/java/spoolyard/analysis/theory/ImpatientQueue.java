package spoolyard.analysis.theory;

/**
 * Steady state of M/M/1 in order of arrival where a customer whose wait exceeds a fixed limit is lost without service.
 * Immutable.
 *
 * <p>Source: D. Y. Barrer, Queuing with impatient customers and ordered service, Operations Research 5 (1957) 650-656. The
 * density of the virtual wait is P0 lambda e<sup>-(mu - lambda) x</sup> up to the limit and falls as e<sup>-mu x</sup>
 * beyond it, for there only the customer in service adds work.
 *
 * @param arrivalsPerS arrival rate, 1/s, {@code > 0}
 * @param meanServiceS mean service time, seconds, {@code > 0}; its product with the rate must not be 1
 * @param limitS the limit, seconds, {@code >= 0}
 */
public record ImpatientQueue(double arrivalsPerS, double meanServiceS, double limitS) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if an argument is out of range
     */
    public ImpatientQueue {
        Ranges.positive("arrivalsPerS", arrivalsPerS);
        Ranges.positive("meanServiceS", meanServiceS);
        Ranges.notNegative("limitS", limitS);
    }

    /**
     * Chance that an arrival is lost.
     *
     * @return share of the arrivals, in (0, 1)
     */
    public double lostShare() {
        double rho = arrivalsPerS * meanServiceS;
        double slack = 1 / meanServiceS - arrivalsPerS;
        double decay = Math.exp(-slack * limitS);
        double beyond = rho * decay;
        return beyond / (1 + arrivalsPerS * (1 - decay) / slack + beyond);
    }
}
