package spoolyard.analysis.buffer;

import java.util.List;
import java.util.stream.IntStream;
import spoolyard.analysis.experiment.Interval;
import spoolyard.core.plant.Line;
import spoolyard.core.quantity.Ticks;

/**
 * What metres of accumulator are worth a year: the losses they save, less what they cost. Immutable.
 *
 * @param pricePerM price of a metre of one strand's accumulator, {@code >= 0}
 * @param recovery part of a price that is paid a year, see {@link spoolyard.analysis.theory.CapitalRecovery}, {@code > 0}
 * @param line the line as it is
 * @param horizonTicks length of a replication, which stands for the whole year
 */
public record PayBack(double pricePerM, double recovery, Line line, long horizonTicks) {
    private static final double HOURS_PER_YEAR = 365.25 * 24;

    /**
     * How many replications make a year.
     *
     * @param horizonTicks length of a replication
     * @return not necessarily whole
     */
    public static double runsPerYear(long horizonTicks) {
        return HOURS_PER_YEAR * Ticks.PER_HOUR / horizonTicks;
    }

    /**
     * Net value of another capacity against the present one. The replications are compared pair by pair, for they had the
     * same luck.
     *
     * @param now losses at the present capacity, by replication
     * @param then losses at the other, by replication
     * @param capacityM the other, metres
     * @return money a year; below 0 if it costs more than it saves
     */
    public Interval netPerYear(List<Loss> now, List<Loss> then, double capacityM) {
        double runsPerYear = runsPerYear(horizonTicks);
        double spentPerYear =
                pricePerM * line.strands() * (capacityM - line.accumulator().capacityM()) * recovery;
        int n = Math.min(now.size(), then.size());
        double[] net = IntStream.range(0, n)
                .mapToDouble(i -> (now.get(i).cost() - then.get(i).cost()) * runsPerYear - spentPerYear)
                .toArray();
        return Interval.of(net, Interval.USUAL_LEVEL);
    }
}
