package spoolyard.analysis.corners;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import spoolyard.analysis.experiment.Interval;
import spoolyard.core.record.RunResult;

/**
 * Compares what replications give with what theory says, at the 99 % level: the truth must lie in Student's interval over
 * the replications, and the interval must be narrow, so that a wide one cannot pass for agreement.
 */
final class Agreement {
    private static final double LEVEL = 0.99;

    private final List<RunResult> runs;

    private Agreement(List<RunResult> runs) {
        this.runs = runs;
    }

    static Agreement over(List<RunResult> runs) {
        return new Agreement(runs);
    }

    /**
     * Asserts that a mean agrees.
     *
     * @param what what is compared, for the message and the record
     * @param measure reads it from a replication
     * @param truth what theory says, not 0
     * @param narrow largest half-width allowed, as a share of the truth
     */
    Agreement on(String what, ToDoubleFunction<RunResult> measure, double truth, double narrow) {
        return on(what, measure, truth, narrow, 0);
    }

    /**
     * Asserts that a mean agrees but for a bias whose bound is known.
     *
     * @param bias bound of the bias, in the unit of the truth: rounding of a printed value, or an argued effect
     */
    Agreement on(String what, ToDoubleFunction<RunResult> measure, double truth, double narrow, double bias) {
        double[] values = runs.stream().mapToDouble(measure).toArray();
        assertAgrees(what, values, truth, narrow, bias);
        return this;
    }

    /** The same for values that were read from replications before. */
    static void assertAgrees(String what, double[] values, double truth, double narrow, double bias) {
        Interval interval = Interval.of(values, LEVEL);
        double halfWidth = interval.halfWidth().orElseThrow();

        assertThat(halfWidth).as("%s: half-width", what).isPositive().isLessThanOrEqualTo(narrow * truth);
        assertThat(interval.mean()).as(what).isCloseTo(truth, within(halfWidth + bias));
        CheckRecord.note(String.format(
                Locale.ROOT, "%s,%.6g,%.6g,%.3g,%d", what, truth, interval.mean(), halfWidth, interval.count()));
    }
}
