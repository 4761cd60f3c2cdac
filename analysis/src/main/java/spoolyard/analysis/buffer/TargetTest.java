package spoolyard.analysis.buffer;

import java.util.List;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.StatUtils;

/**
 * Holds replications against a target, each answer wrong with a probability of at most {@code alpha}. Immutable.
 *
 * <p>The mean of the excess over the target is on one side of 0 if Student's one-sided bound is. Losses that are rare make
 * the bound too bold on the low side, because the worst has not been seen yet. So a target only counts as met if it is
 * also met with the largest number of overflows that the number seen allows for, each as costly as those seen: the upper
 * bound of Garwood, Biometrika 28 (1936) 437-442, for a Poisson mean. With none seen it is {@code -ln(alpha)}. Of
 * overflows that were expected and not counted nothing can be unseen.
 *
 * @param target what is to be met
 * @param alpha chance of a wrong answer, in (0, 1)
 */
public record TargetTest(LossTarget target, double alpha) {
    /**
     * Holds replications against the target.
     *
     * @param losses of two replications or more
     * @param amountAnOverflowElsewhere what an overflow costs in the measure, for where none was seen
     * @return what they say
     */
    public Verdict of(List<Loss> losses, double amountAnOverflowElsewhere) {
        double[] excess = losses.stream().mapToDouble(target::excess).toArray();
        double mean = StatUtils.mean(excess);
        double halfWidth = new TDistribution(excess.length - 1).inverseCumulativeProbability(1 - alpha)
                * Math.sqrt(StatUtils.variance(excess) / excess.length);
        if (mean - halfWidth > 0) {
            return Verdict.MISSES;
        }
        boolean isMet = mean + halfWidth <= 0 && worstCase(losses, amountAnOverflowElsewhere) <= target.atMost();
        return isMet ? Verdict.MEETS : Verdict.OPEN;
    }

    private double worstCase(List<Loss> losses, double elsewhere) {
        double overflows = losses.stream().mapToDouble(Loss::overflows).sum();
        double amount = amount(losses);
        double base = losses.stream().mapToDouble(target.measure()::base).sum();
        double each = overflows > 0 ? amount / overflows : elsewhere;
        double counted =
                losses.stream().mapToDouble(loss -> loss.counted().overflows()).sum();
        double countedSwaps =
                losses.stream().mapToDouble(loss -> loss.counted().swaps()).sum();
        return (overflows - counted + Math.min(mostOverflows(counted), countedSwaps)) * each / base;
    }

    private double mostOverflows(double seen) {
        return new GammaDistribution(seen + 1, 1).inverseCumulativeProbability(1 - alpha);
    }

    /**
     * What an overflow costs on average in the measure.
     *
     * @param losses of one replication or more
     * @return 0 if none was seen
     */
    public double amountAnOverflow(List<Loss> losses) {
        double overflows = losses.stream().mapToDouble(Loss::overflows).sum();
        return overflows > 0 ? amount(losses) / overflows : 0;
    }

    private double amount(List<Loss> losses) {
        return losses.stream().mapToDouble(target.measure()::amount).sum();
    }
}
