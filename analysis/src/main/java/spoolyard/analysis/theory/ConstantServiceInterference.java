package spoolyard.analysis.theory;

/**
 * Steady state of machine interference with one operator whose work always takes the same time: N machines run
 * exponential times between calls. Immutable.
 *
 * <p>Source: H. Ashcroft, The productivity of several machines under the care of one operator, Journal of the Royal
 * Statistical Society B 12 (1950) 145-151; L. Takacs, Introduction to the Theory of Queues, 1962: 1/P0 = 1 + N k
 * sum_{r=0}^{N-1} C(N-1, r) prod_{i=1}^{r} (e<sup>ik</sup> - 1) with k = service time / mean run.
 *
 * @param machines N {@code >= 1}
 * @param meanRunS mean time a machine runs between calls, seconds, {@code > 0}
 * @param serviceS time the operator needs, seconds, {@code > 0}
 */
public record ConstantServiceInterference(int machines, double meanRunS, double serviceS) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if an argument is out of range
     */
    public ConstantServiceInterference {
        Ranges.atLeastOne("machines", machines);
        Ranges.positive("meanRunS", meanRunS);
        Ranges.positive("serviceS", serviceS);
    }

    /**
     * Share of time the operator has nothing to do. Cost O(N).
     *
     * @return P0, in (0, 1); 0 where it is too small for a double
     */
    public double operatorIdleShare() {
        double ratio = serviceS / meanRunS;
        double term = 1;
        double sum = 1;
        for (int r = 1; r < machines; r++) {
            term *= (machines - r) / (double) r * Math.expm1(r * ratio);
            sum += term;
        }
        return 1 / (1 + machines * ratio * sum);
    }

    /**
     * Share of time the operator works.
     *
     * @return 1 - P0, in (0, 1]
     */
    public double operatorUtilisation() {
        return 1 - operatorIdleShare();
    }

    /**
     * Mean number of machines that run: each start of work ends a run.
     *
     * @return A = (1 - P0) / k, Ashcroft's number
     */
    public double meanRunning() {
        return operatorUtilisation() * meanRunS / serviceS;
    }

    /**
     * Share of machines that run.
     *
     * @return A / N, in (0, 1)
     */
    public double runningShare() {
        return meanRunning() / machines;
    }
}
