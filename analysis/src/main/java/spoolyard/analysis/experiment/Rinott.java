package spoolyard.analysis.experiment;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Selects the best of several systems in two stages: the first gives the variances, which say how many observations each
 * system needs in all. Immutable.
 *
 * <p>Guarantee: as {@link Zone} states it, for normal observations that are all independent, whatever the variances. Common
 * random numbers are not covered.
 *
 * <p>Source: Y. Rinott, On two-stage selection procedures and related probability-inequalities, Communications in
 * Statistics, Theory and Methods A7 (1978) 799-811.
 */
public final class Rinott {
    private final Zone zone;
    private final double h;

    /**
     * The procedure.
     *
     * @param zone what it shall promise
     * @param systems number of systems, {@code >= 2}
     * @throws IllegalArgumentException if the confidence is no more than guessing gives
     */
    public Rinott(Zone zone, int systems) {
        this.zone = zone;
        this.h = RinottConstant.h(zone.confidence(), zone.firstStage(), systems);
    }

    /**
     * Selects the best.
     *
     * @param observations of as many systems as were said, independent of each other; larger is better
     * @param most observations of a system beyond which it stops, {@code >= firstStage}
     * @return the selection
     */
    public Selection select(Observations observations, int most) {
        Tally tally = new Tally(observations);
        tally.take(zone.firstStage());
        List<Integer> needed = needed(tally, observations.systems());
        List<Integer> all = tally.remaining();
        int furthest = Math.min(most, Collections.max(needed));
        all.forEach(system -> tally.look(system, Double.NaN));
        while (tally.count() < furthest) {
            int next = tally.count() + 1;
            tally.keep(all.stream().filter(system -> needed.get(system) >= next).toList());
            tally.take(next);
            tally.remaining().forEach(system -> tally.look(system, Double.NaN));
        }
        tally.keep(all);
        return tally.selection(Collections.max(needed) <= most);
    }

    /** Observations of each system that the second stage brings it to. */
    private List<Integer> needed(Tally firstStage, int systems) {
        return IntStream.range(0, systems)
                .mapToObj(system -> needed(Math.sqrt(firstStage.variance(system))))
                .toList();
    }

    private int needed(double deviation) {
        double ratio = h * deviation / zone.indifference();
        return (int) Math.min(Integer.MAX_VALUE, Math.max(zone.firstStage(), Math.ceil(ratio * ratio)));
    }
}
