package spoolyard.analysis.cli;

import java.util.List;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.experiment.Width;
import spoolyard.analysis.report.Measure;
import spoolyard.analysis.report.ReplicationSummary;
import spoolyard.analysis.report.Setting;
import spoolyard.analysis.report.Summariser;
import spoolyard.core.record.RunResult;

/**
 * A replication summed up, with its measures beside.
 *
 * @param summary for the report
 * @param measures as {@link Measure#all} gives them
 */
record Measured(ReplicationSummary summary, double[] measures) {
    /**
     * Sums up a replication.
     *
     * @param setting what was run
     * @param summariser sums up
     * @param result what the replication told
     * @return both
     */
    static Measured of(Setting setting, Summariser summariser, RunResult result) {
        return new Measured(summariser.apply(result), Measure.all(setting, result));
    }

    /**
     * How well a measure is known.
     *
     * @param taken replications
     * @param measure which
     * @return relative error that its interval allows for; not a number without an interval
     */
    static double width(List<Measured> taken, Measure measure) {
        double[] values = taken.stream()
                .mapToDouble(each -> each.measures()[measure.ordinal()])
                .toArray();
        return Width.relativeError(Interval.of(values, Interval.USUAL_LEVEL));
    }
}
