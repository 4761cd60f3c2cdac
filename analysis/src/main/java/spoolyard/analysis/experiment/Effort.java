package spoolyard.analysis.experiment;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How many replications an experiment may take and when it has enough. Immutable.
 *
 * @param fewest replications that are run in any case, {@code >= 1}
 * @param most replications beyond which it stops whatever it knows, {@code >= fewest}
 * @param wantedWidth width of interval at which it stops; empty if none is wanted
 * @param budget wall-clock time after which it begins no further replication; empty if there is no limit
 * @param round fewest replications of a further round, {@code >= 1}: as many as run at once
 */
public record Effort(int fewest, int most, OptionalDouble wantedWidth, Optional<Duration> budget, int round) {
    /**
     * Fewest replications before an interval may stop an experiment: the variance of fewer is too uncertain. Source: A.
     * M. Law, Simulation Modeling and Analysis, 5th ed. 2015, section 9.4.1.
     */
    public static final int FEWEST_FOR_PRECISION = 10;

    /** Checks the ranges. */
    public Effort {
        if (fewest < 1 || most < fewest || round < 1) {
            throw new IllegalArgumentException("fewest = " + fewest + ", most = " + most + ", round = " + round
                    + ". Must be >= 1, and most >= fewest.");
        }
    }

    /**
     * A number of replications laid down beforehand.
     *
     * @param replications how many, {@code >= 1}
     * @return exactly so many
     */
    public static Effort of(int replications) {
        return new Effort(replications, replications, OptionalDouble.empty(), Optional.empty(), 1);
    }

    /**
     * Whether the number of replications is laid down beforehand.
     *
     * @return false if it may depend on what they show or how long they take
     */
    public boolean isFixed() {
        return wantedWidth.isEmpty() && budget.isEmpty();
    }
}
