package spoolyard.analysis.report;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import spoolyard.analysis.experiment.Difference;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.experiment.Simultaneous;

/**
 * Plans ranked by what they cost when they are simulated, on common random numbers. Immutable.
 *
 * <p>Guarantee: the differences of all pairs hold at once (Bonferroni), hence whichever plan comes out first: with the level
 * of confidence every plan that is called beaten truly is dearer than one of the others, and the best is among those that are not.
 *
 * @param costs shape {@code [plan][replication]}, money; the plans in the order in which they were planned to be cheap, at
 *     least two plans and two replications
 */
record RobustRanking(List<double[]> costs) {
    /** Copies the list. */
    RobustRanking {
        costs = List.copyOf(costs);
    }

    /** Numbers of the plans, the one that is cheapest on average first. */
    List<Integer> order() {
        return IntStream.range(0, costs.size())
                .boxed()
                .sorted(Comparator.comparingDouble(plan -> mean(plan).mean()))
                .toList();
    }

    int best() {
        return order().get(0);
    }

    Interval mean(int plan) {
        return Interval.of(costs.get(plan), Interval.USUAL_LEVEL);
    }

    /** How much dearer a plan is than another; all pairs hold at once. */
    Difference difference(int base, int plan) {
        int pairs = costs.size() * (costs.size() - 1) / 2;
        return Difference.of(
                costs.get(base), costs.get(plan), new Simultaneous(Interval.USUAL_LEVEL, pairs).eachLevel());
    }

    /** The plans that may be the best: no other is clearly cheaper. In the order of the plans. */
    List<Integer> perhapsBest() {
        return IntStream.range(0, costs.size())
                .boxed()
                .filter(plan -> IntStream.range(0, costs.size())
                        .allMatch(other -> difference(other, plan).verdict() != Difference.Verdict.MORE))
                .toList();
    }

    /** Number of pairs of plans that stand the other way round than planned. */
    int turnedPairs() {
        List<Integer> order = order();
        int turned = 0;
        for (int first = 0; first < order.size(); first++) {
            for (int second = first + 1; second < order.size(); second++) {
                turned += order.get(first) > order.get(second) ? 1 : 0;
            }
        }
        return turned;
    }

    int pairs() {
        return costs.size() * (costs.size() - 1) / 2;
    }
}
