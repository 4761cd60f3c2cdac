package spoolyard.analysis.buffer;

import java.util.List;

/** Observes what a line loses with an accumulator of some capacity. */
@FunctionalInterface
public interface LossTrial {
    /**
     * Runs some replications. The same replication of two capacities has the same luck.
     *
     * @param capacityM capacity, metres
     * @param first number of the first replication, {@code >= 0}
     * @param count how many, {@code >= 1}
     * @return what each lost
     */
    List<Loss> observe(double capacityM, int first, int count);
}
