package spoolyard.analysis.invest;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import spoolyard.analysis.buffer.SearchPlan;

/**
 * How mixes are held against each other, so that all that is promised is wrong with a probability of at most {@code 1 -
 * level}. Immutable.
 *
 * <p>Bonferroni: half of the chance of error is shared by all looks at all mixes that are held against the target, a
 * quarter each is that of the two selections by worth. Intervals of money hold at once over all mixes and all numbers of
 * replications after which they may be told.
 *
 * @param level confidence in what is promised, in (0, 1)
 * @param firstLook replications before anything is said of a mix, {@code >= 2}
 * @param most replications of a mix beyond which it stops, {@code >= firstLook}
 * @param mostRuns replications of all mixes together beyond which no further look begins, {@code >= 1}
 * @param replications replications of the intervals of money, laid down beforehand, {@code >= 2}
 * @param within money a year that a selected mix may be below the best, {@code >= 0}; empty to follow from the spread
 */
public record InvestPlan(double level, int firstLook, int most, int mostRuns, int replications, OptionalDouble within) {
    /** Checks the ranges. */
    public InvestPlan {
        if (!(level > 0 && level < 1 && within.orElse(0) >= 0)
                || firstLook < 2
                || most < firstLook
                || mostRuns < 1
                || replications < 2) {
            throw new IllegalArgumentException("level = " + level + ", firstLook = " + firstLook + ", most = " + most
                    + ", mostRuns = " + mostRuns + ", replications = " + replications + ", within = " + within
                    + ". Must be between 0 and 1, >= 2, >= firstLook, >= 1, >= 2 and >= 0.");
        }
    }

    List<Integer> looks() {
        return SearchPlan.looks(firstLook, most);
    }

    /** Replications in all at each look of a selection: half as many more from look to look, for each costs little there. */
    List<Integer> looksOfSelection() {
        List<Integer> looks = new ArrayList<>();
        for (int count = firstLook; count < most; count += (count + 1) / 2) {
            looks.add(count);
        }
        looks.add(most);
        return looks;
    }

    /** Chance of error of a look at one of so many mixes. */
    double alphaEach(int mixes) {
        return (1 - level) / 2 / (mixes * looks().size());
    }

    /** Chance of error of a selection. */
    double alphaOfSelection() {
        return (1 - level) / 4;
    }

    /** Half of the chance of error is that of the usual number of replications, the other half is shared by the others. */
    int statementsOfMoney(int count) {
        int others = countsOfMoney().size() - 1;
        return others == 0 ? 1 : count == replications ? 2 : 2 * others;
    }

    /** Numbers of replications after which the money of a mix may be told, all laid down beforehand. */
    List<Integer> countsOfMoney() {
        return Stream.concat(Stream.of(replications), looksOfSelection().stream())
                .filter(count -> count >= Math.min(replications, most))
                .distinct()
                .sorted()
                .toList();
    }
}
