package spoolyard.analysis.theory;

/**
 * Steady state of a queue with Poisson arrivals and one server that takes all that wait, up to a batch, whenever it is free
 * and somebody is there; exponential service, the same for any batch; whoever comes during a service waits for the next
 * one. Immutable.
 *
 * <p>The balance equations of the number waiting while the server works are those of M/M<sup>[K]</sup>/1 (D. Gross, J. F.
 * Shortle, J. M. Thompson, C. M. Harris, Fundamentals of Queueing Theory, 4th ed. 2008, section 3.2, bulk service): P(n
 * waiting, busy) = P(0 waiting, busy) r<sup>n</sup>, where r is the root in (0, 1) of mu r<sup>K+1</sup> - (lambda + mu) r +
 * lambda = 0, and lambda P(idle) = mu P(0 waiting, busy).
 *
 * @param arrivalsPerS arrival rate, 1/s, {@code > 0}
 * @param meanServiceS mean service time, seconds, {@code > 0}
 * @param batch largest batch K, {@code >= 1}; {@code arrivalsPerS * meanServiceS < batch}
 */
public record BulkServiceQueue(double arrivalsPerS, double meanServiceS, int batch) {
    private static final int HALVINGS = 200;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if an argument is out of range or there is no steady state
     */
    public BulkServiceQueue {
        Ranges.positive("arrivalsPerS", arrivalsPerS);
        Ranges.positive("meanServiceS", meanServiceS);
        Ranges.atLeastOne("batch", batch);
        Ranges.stable(arrivalsPerS * meanServiceS / batch);
    }

    /**
     * The root of the balance equations.
     *
     * @return r, in (0, 1)
     */
    public double root() {
        double mu = 1 / meanServiceS;
        double low = 0;
        double high = Math.pow((arrivalsPerS + mu) / (mu * (batch + 1)), 1.0 / batch);
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            boolean isLeft = mu * Math.pow(middle, batch + 1) - (arrivalsPerS + mu) * middle + arrivalsPerS > 0;
            low = isLeft ? middle : low;
            high = isLeft ? high : middle;
        }
        return low;
    }

    /**
     * Share of time the server works, which is also the chance that an arrival has to wait.
     *
     * @return in (0, 1)
     */
    public double busyShare() {
        double idle = 1 / (arrivalsPerS * meanServiceS);
        double busy = 1 / (1 - root());
        return busy / (idle + busy);
    }

    /**
     * Mean number waiting.
     *
     * @return Lq
     */
    public double meanWaiting() {
        return busyShare() * root() / (1 - root());
    }

    /**
     * Mean wait before service.
     *
     * @return Wq = Lq / lambda, seconds
     */
    public double meanWaitS() {
        return meanWaiting() / arrivalsPerS;
    }
}
