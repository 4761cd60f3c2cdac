package spoolyard.analysis.theory;

/**
 * Steady state of M/M/1/K: as M/M/1, but whoever finds K in the system is turned away. Immutable.
 *
 * <p>Source: D. Gross, J. F. Shortle, J. M. Thompson, C. M. Harris, Fundamentals of Queueing Theory, 4th ed. 2008,
 * section 2.5: p(n) = rho<sup>n</sup> / (1 + rho + ... + rho<sup>K</sup>).
 *
 * @param arrivalsPerS rate of all arrivals, also those turned away, 1/s, {@code > 0}
 * @param meanServiceS mean service time, seconds, {@code > 0}
 * @param capacity places in queue and service together, K {@code >= 1}
 */
public record FiniteQueue(double arrivalsPerS, double meanServiceS, int capacity) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if an argument is out of range
     */
    public FiniteQueue {
        Ranges.positive("arrivalsPerS", arrivalsPerS);
        Ranges.positive("meanServiceS", meanServiceS);
        Ranges.atLeastOne("capacity", capacity);
    }

    /**
     * Share of time with a number in the system. Cost O(K).
     *
     * @param number number in queue and service, 0 to K
     * @return p(n), in (0, 1)
     * @throws IllegalArgumentException if the number is outside 0 to K
     */
    public double probabilityOf(int number) {
        if (number < 0 || number > capacity) {
            throw new IllegalArgumentException("number = " + number + ". Must be 0 to " + capacity + ".");
        }
        double ratio = arrivalsPerS * meanServiceS;
        double sum = 0;
        for (int n = 0; n <= capacity; n++) {
            sum += Math.pow(ratio, n - number);
        }
        return 1 / sum;
    }

    /**
     * Chance that an arrival is turned away.
     *
     * @return p(K), in (0, 1)
     */
    public double blockingProbability() {
        return probabilityOf(capacity);
    }

    /**
     * Rate of arrivals let in, which is the rate of departures.
     *
     * @return lambda (1 - p(K)), 1/s
     */
    public double throughputPerS() {
        return arrivalsPerS * (1 - blockingProbability());
    }

    /**
     * Mean number in queue and service. Cost O(K<sup>2</sup>).
     *
     * @return L
     */
    public double meanInSystem() {
        double mean = 0;
        for (int n = 1; n <= capacity; n++) {
            mean += n * probabilityOf(n);
        }
        return mean;
    }

    /**
     * Mean time in queue and service of those let in.
     *
     * @return W = L / throughput, seconds
     */
    public double meanInSystemS() {
        return meanInSystem() / throughputPerS();
    }
}
