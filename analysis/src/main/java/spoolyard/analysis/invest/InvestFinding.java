package spoolyard.analysis.invest;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.analysis.buffer.LossTarget;
import spoolyard.analysis.buffer.Verdict;
import spoolyard.analysis.experiment.Interval;
import spoolyard.core.record.OverflowCause;

/**
 * What was found about mixes. Immutable.
 *
 * @param plan how it was found
 * @param target what was to be met; empty if nothing was: then every mix meets it
 * @param mixes each mix, the plant as it is first
 * @param cheapest the mix of the least price that meets the target; of several with that price the one worth most; empty if
 *     none is sure to meet it
 * @param best the mix worth most among all that meet the target; empty if none is sure to
 * @param runs replications in all
 */
public record InvestFinding(
        InvestPlan plan,
        Optional<LossTarget> target,
        List<MixFinding> mixes,
        Optional<Pick> cheapest,
        Optional<Pick> best,
        int runs) {
    /** Copies the list. */
    public InvestFinding {
        mixes = List.copyOf(mixes);
    }

    /**
     * A mix that was selected.
     *
     * @param mix its number
     * @param atMostBelow money a year that the one worth most of them may be worth more, {@code >= 0}; that is promised
     *     whether it is decided or not
     * @param within money a year that it might be
     * @param mayBeat mixes that may be worth more by more than that; empty if decided
     * @param wouldTake replications that would decide, if all goes on as seen; infinite where none would
     */
    public record Pick(int mix, double atMostBelow, double within, List<Integer> mayBeat, double wouldTake) {
        /** Copies the list. */
        public Pick {
            mayBeat = List.copyOf(mayBeat);
        }

        /** The only one there is. */
        static Pick only(int mix) {
            return new Pick(mix, 0, 0, List.of(), 0);
        }

        /**
         * Whether it is as near the best as wanted.
         *
         * @return false if replications or time ran out before
         */
        public boolean isDecided() {
            return atMostBelow <= within;
        }
    }

    /**
     * A mix.
     *
     * @param number its number
     * @param price what it costs
     * @param verdict what was said of the target
     * @param held the measure of the target at the plan's level; without a value where there is no target
     * @param pctByCause overflows by cause, % of the swaps of the lines held against the target
     * @param worth what it is worth, for mixes that meet the target and for those of a single option
     * @param busiestShare of the crews that change spools the greatest mean share of its presence in which one is at work
     * @param replications how many were run
     */
    public record MixFinding(
            int number,
            MixPrice price,
            Verdict verdict,
            Interval held,
            Map<OverflowCause, Double> pctByCause,
            Optional<Worth> worth,
            double busiestShare,
            int replications) {
        /**
         * Whether it is sure to meet the target.
         *
         * @return false too where nothing can be told
         */
        public boolean isMeeting() {
            return verdict == Verdict.MEETS;
        }
    }

    /**
     * The mixes that are cheaper than the cheapest that meets the target, or all without one, and that may meet it too.
     *
     * @return by price
     */
    public List<MixFinding> cheaperAndOpen() {
        double price =
                cheapest.map(pick -> mixes.get(pick.mix()).price().perYear()).orElse(Double.POSITIVE_INFINITY);
        return mixes.stream()
                .filter(mix -> mix.verdict() == Verdict.OPEN && mix.price().perYear() < price)
                .sorted(Comparator.comparingDouble(mix -> mix.price().perYear()))
                .toList();
    }

    /**
     * Whether every mix is sure to miss the target.
     *
     * @return false too where there is none
     */
    public boolean isHopeless() {
        return mixes.stream().allMatch(mix -> mix.verdict() == Verdict.MISSES);
    }

    /**
     * The mix that comes nearest to the target.
     *
     * @return that with the least mean loss
     */
    public MixFinding nearest() {
        return mixes.stream()
                .min(Comparator.comparingDouble(mix -> mix.held().mean()))
                .orElseThrow();
    }
}
