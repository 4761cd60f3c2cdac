package spoolyard.analysis.bottleneck;

import spoolyard.analysis.experiment.Difference;

/**
 * What a relief brings against the plant as it is, with intervals that hold jointly over all reliefs of a study. Immutable.
 *
 * @param relief what was done
 * @param goodPerWeek good spools a week
 * @param packedPerWeek packed spools a week
 * @param costPerSpool cost of a good spool, money; without values where nothing is priced
 * @param contributionPerWeek contribution of the good kilograms less labour, money a week; without values where nobody
 *     says what a kilogram brings. What the relief itself costs to buy is not in it
 */
public record Gain(
        Relief relief,
        Difference goodPerWeek,
        Difference packedPerWeek,
        Difference costPerSpool,
        Difference contributionPerWeek) {
    /**
     * Whether the extra good spools can be told from none.
     *
     * @return true if their whole interval is above 0
     */
    public boolean isSure() {
        return goodPerWeek.verdict() == Difference.Verdict.MORE;
    }

    /**
     * Whether it can be told that good spools are lost by it.
     *
     * @return true if their whole interval is below 0
     */
    public boolean isHarmful() {
        return goodPerWeek.verdict() == Difference.Verdict.LESS;
    }
}
