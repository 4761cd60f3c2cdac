package spoolyard.analysis.invest;

import java.util.List;
import spoolyard.analysis.buffer.SearchPlan;

/**
 * How mixes are held against each other, so that all that is promised is wrong with a probability of at most {@code 1 -
 * level}. Immutable.
 *
 * <p>Bonferroni: half of the chance of error is shared by all looks at all mixes that are held against the target, a
 * quarter each is that of the two selections by worth.
 *
 * @param level confidence in what is promised, in (0, 1)
 * @param firstLook replications before anything is said of a mix, {@code >= 2}
 * @param most replications of a mix beyond which it stops, {@code >= firstLook}
 * @param replications replications of the intervals of money, laid down beforehand, {@code >= 2}
 * @param within least difference in money a year that matters, {@code > 0}
 */
public record InvestPlan(double level, int firstLook, int most, int replications, double within) {
    /** Checks the ranges. */
    public InvestPlan {
        if (!(level > 0 && level < 1 && within > 0) || firstLook < 2 || most < firstLook || replications < 2) {
            throw new IllegalArgumentException("level = " + level + ", firstLook = " + firstLook + ", most = " + most
                    + ", replications = " + replications + ", within = " + within
                    + ". Must be between 0 and 1, >= 2, >= firstLook, >= 2 and > 0.");
        }
    }

    List<Integer> looks() {
        return SearchPlan.looks(firstLook, most);
    }

    /** Chance of error of a look at one of so many mixes. */
    double alphaEach(int mixes) {
        return (1 - level) / 2 / (mixes * looks().size());
    }

    /** Chance of error of a selection. */
    double alphaOfSelection() {
        return (1 - level) / 4;
    }
}
