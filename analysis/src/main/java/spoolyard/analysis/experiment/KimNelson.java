package spoolyard.analysis.experiment;

import java.util.List;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Selects the best of several systems, fully sequentially: after each observation it drops the systems that are clearly
 * beaten, and stops as soon as one is left. Immutable.
 *
 * <p>Guarantee: observations are normal and those of different numbers independent; systems may be correlated within a
 * number (common random numbers). Then the best is selected with at least the confidence asked for whenever it is ahead
 * of the others by at least the indifference zone, whatever the variances.
 *
 * <p>Source: S.-H. Kim and B. L. Nelson, A fully sequential procedure for indifference-zone selection in simulation, ACM
 * Transactions on Modeling and Computer Simulation 11 (2001) 251-273, procedure KN with c = 1.
 */
public final class KimNelson {
    private final Zone zone;

    /**
     * The procedure.
     *
     * @param zone what it shall promise
     */
    public KimNelson(Zone zone) {
        this.zone = zone;
    }

    /**
     * The constant eta.
     *
     * @param systems number of systems, {@code >= 2}
     * @return {@code ((2 (1 - confidence) / (systems - 1))^(-2 / (firstStage - 1)) - 1) / 2}; negative, and the procedure
     *     void, for a confidence that guessing gives
     */
    public double eta(int systems) {
        double risk = 2 * (1 - zone.confidence()) / (systems - 1);
        return (Math.pow(risk, -2.0 / (zone.firstStage() - 1)) - 1) / 2;
    }

    /**
     * The constant h squared.
     *
     * @param systems number of systems, {@code >= 2}
     * @return {@code 2 eta (firstStage - 1)}
     */
    public double hSquared(int systems) {
        return 2 * eta(systems) * (zone.firstStage() - 1);
    }

    /**
     * Selects the best.
     *
     * @param observations of the systems; larger is better
     * @param most observations of a system beyond which it stops, {@code >= firstStage}
     * @return the selection
     * @throws IllegalArgumentException if the confidence is so low that guessing suffices
     */
    public Selection select(Observations observations, int most) {
        if (eta(observations.systems()) <= 0) {
            throw new IllegalArgumentException("confidence = " + zone.confidence() + ". Must be above "
                    + (1 - (observations.systems() - 1) / 2.0) + ".");
        }
        Tally tally = new Tally(observations);
        tally.take(zone.firstStage());
        double[][] limits = limits(tally, observations.systems());
        while (tally.remaining().size() > 1) {
            screen(tally, limits);
            boolean isLast = tally.count() > furthest(limits);
            if (tally.remaining().size() == 1 || isLast || tally.count() >= most) {
                return tally.selection(tally.remaining().size() == 1 || isLast);
            }
            tally.take(tally.count() + 1);
        }
        return tally.selection(true);
    }

    /** Where the pair's continuation region ends, in observations: {@code h^2 S^2 / indifference^2}. */
    private double[][] limits(Tally tally, int systems) {
        double factor = hSquared(systems) / (zone.indifference() * zone.indifference());
        IntFunction<double[]> row = i -> IntStream.range(0, systems)
                .mapToDouble(l -> factor * tally.varianceOfDifference(i, l))
                .toArray();
        return IntStream.range(0, systems).mapToObj(row).toArray(double[][]::new);
    }

    private static double furthest(double[][] limits) {
        return Math.floor(IntStream.range(0, limits.length)
                .mapToDouble(i -> DoubleStream.of(limits[i]).max().orElse(0))
                .max()
                .orElse(0));
    }

    private void screen(Tally tally, double[][] limits) {
        List<Integer> before = tally.remaining();
        int count = tally.count();
        IntToDoubleFunction dropsBelow = i -> before.stream()
                .filter(l -> l != i)
                .mapToDouble(l -> tally.mean(l) - slack(limits[i][l], count))
                .max()
                .orElseThrow();
        tally.keep(before.stream()
                .filter(i -> tally.look(i, dropsBelow.applyAsDouble(i)))
                .toList());
    }

    /** How far a mean may lie behind without being dropped. */
    private double slack(double limit, int count) {
        return Math.max(0, zone.indifference() / (2.0 * count) * (limit - count));
    }
}
