package spoolyard.analysis.buffer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Finds the smallest capacity that meets a target, by bisection. At each capacity tested replications are added, look by
 * look, until a confidence bound lies on one side of the target or there are enough of them.
 *
 * <p>If the mean loss does not grow with the capacity, then with the plan's confidence every verdict is right, so the
 * answer is too: the smallest capacity found to meet does, and the largest found to miss does not. For one thread, once.
 */
public final class CapacitySearch {
    private final SearchPlan plan;
    private final SeenLosses losses;
    private final TargetTest test;
    private final Map<Integer, Finding.Tested> tested = new TreeMap<>();

    /**
     * Prepares a search.
     *
     * @param plan how
     * @param target what is to be met
     * @param losses observes
     */
    public CapacitySearch(SearchPlan plan, LossTarget target, SeenLosses losses) {
        this.plan = plan;
        this.losses = losses;
        this.test = new TargetTest(target, plan.alphaEach());
    }

    /**
     * Searches.
     *
     * @return what was found
     */
    public Finding run() {
        int meets = smallestMeeting();
        int misses = meets == 0 ? -1 : largestMissing(meets);
        return new Finding(
                test.target(), plan, capacity(misses), capacity(meets), List.copyOf(ordered(tested.values())));
    }

    /** Whatever is not shown to meet is taken for too small. */
    private int smallestMeeting() {
        int below = -1;
        int meets = plan.capacitiesM().size();
        while (meets - below > 1) {
            int middle = (below + meets) >>> 1;
            if (verdict(middle) == Verdict.MEETS) {
                meets = middle;
            } else {
                below = middle;
            }
        }
        return meets;
    }

    /** Whatever is not shown to miss is taken for large enough. */
    private int largestMissing(int meets) {
        int misses = -1;
        int above = meets;
        for (Map.Entry<Integer, Finding.Tested> each : tested.entrySet()) {
            if (each.getValue().verdict() == Verdict.MISSES) {
                misses = Math.max(misses, each.getKey());
            } else {
                above = Math.min(above, each.getKey());
            }
        }
        while (above - misses > 1) {
            int middle = (misses + above) >>> 1;
            if (verdict(middle) == Verdict.MISSES) {
                misses = middle;
            } else {
                above = middle;
            }
        }
        return misses;
    }

    private Verdict verdict(int number) {
        return tested.computeIfAbsent(number, this::test).verdict();
    }

    private Finding.Tested test(int number) {
        double capacityM = plan.capacitiesM().get(number);
        Verdict verdict = Verdict.OPEN;
        List<Loss> seen = List.of();
        for (int count : plan.looks()) {
            seen = losses.at(capacityM, count).subList(0, count);
            verdict = test.of(seen, amountAnOverflowOfSmallest());
            if (verdict != Verdict.OPEN) {
                break;
            }
        }
        return new Finding.Tested(
                capacityM, verdict, LossMean.of(test.target().measure(), seen, plan.level()), seen.size());
    }

    /** The smallest capacity shows best what an overflow costs. */
    private double amountAnOverflowOfSmallest() {
        return test.amountAnOverflow(losses.at(plan.capacitiesM().get(0), plan.firstLook()));
    }

    private OptionalDouble capacity(int number) {
        return number < 0 || number >= plan.capacitiesM().size()
                ? OptionalDouble.empty()
                : OptionalDouble.of(plan.capacitiesM().get(number));
    }

    private static List<Finding.Tested> ordered(Iterable<Finding.Tested> all) {
        List<Finding.Tested> list = new ArrayList<>();
        all.forEach(list::add);
        list.sort(Comparator.comparingDouble(Finding.Tested::capacityM));
        return list;
    }
}
