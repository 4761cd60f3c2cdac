package spoolyard.analysis.theory;

/**
 * Steady state of machine interference, M/M/c//N: each of N machines runs an exponential time, then calls one of c
 * operators, who puts it right in an exponential time; calls are served in order. Immutable.
 *
 * <p>Source: C. Palm 1947; L. G. Peck, R. N. Hazelwood, Finite Queuing Tables, 1958: p(n+1)/p(n) = (N-n) T / (U
 * min(n+1, c)) with T the mean repair and U the mean run; F and D as there.
 *
 * @param machines N {@code >= 1}
 * @param operators c {@code >= 1}
 * @param meanRunS mean time a machine runs between calls, U, seconds, {@code > 0}
 * @param meanRepairS mean time an operator needs, T, seconds, {@code > 0}
 */
public record MachineInterference(int machines, int operators, double meanRunS, double meanRepairS) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if an argument is out of range
     */
    public MachineInterference {
        Ranges.atLeastOne("machines", machines);
        Ranges.atLeastOne("operators", operators);
        Ranges.positive("meanRunS", meanRunS);
        Ranges.positive("meanRepairS", meanRepairS);
    }

    /**
     * Machines down, each with its probability. Cost O(N).
     *
     * @return p(0) to p(N), index = number of machines being put right or waiting for it; sums to 1
     */
    public double[] probabilities() {
        double[] weights = new double[machines + 1];
        weights[0] = 1;
        double sum = 1;
        for (int n = 0; n < machines; n++) {
            double ratio = (machines - n) * meanRepairS / (meanRunS * Math.min(n + 1, operators));
            weights[n + 1] = weights[n] * ratio;
            sum += weights[n + 1];
        }
        for (int n = 0; n <= machines; n++) {
            weights[n] /= sum;
        }
        return weights;
    }

    /**
     * Mean number of machines that wait for an operator.
     *
     * @return L
     */
    public double meanWaiting() {
        double[] p = probabilities();
        double mean = 0;
        for (int n = operators + 1; n <= machines; n++) {
            mean += (n - operators) * p[n];
        }
        return mean;
    }

    /**
     * Mean number of machines that run.
     *
     * @return J
     */
    public double meanRunning() {
        double[] p = probabilities();
        double mean = 0;
        for (int n = 0; n < machines; n++) {
            mean += (machines - n) * p[n];
        }
        return mean;
    }

    /**
     * Share of machines that run.
     *
     * @return J / N, in (0, 1)
     */
    public double runningShare() {
        return meanRunning() / machines;
    }

    /**
     * Peck and Hazelwood's efficiency: share of machines that don't wait.
     *
     * @return F = (N - L) / N, in (0, 1]
     */
    public double efficiency() {
        return 1 - meanWaiting() / machines;
    }

    /**
     * Chance that a machine that calls has to wait: calls come at a rate in proportion to the machines that run.
     *
     * @return D, in [0, 1)
     */
    public double delayProbability() {
        double[] p = probabilities();
        double late = 0;
        for (int n = operators; n < machines; n++) {
            late += (machines - n) * p[n];
        }
        return late / meanRunning();
    }

    /**
     * Mean wait of a machine from its call to the operator's arrival, those that don't wait included.
     *
     * @return W = L U / J, seconds
     */
    public double meanWaitS() {
        return meanWaiting() * meanRunS / meanRunning();
    }

    /**
     * Share of time an operator works.
     *
     * @return in (0, 1)
     */
    public double operatorUtilisation() {
        return meanRunning() * meanRepairS / (meanRunS * operators);
    }
}
