package spoolyard.analysis.report;

import java.util.Comparator;
import java.util.List;
import spoolyard.analysis.experiment.Interval;

/**
 * A station that may be the bottleneck.
 *
 * @param kind line, crew, finishing, lab or dryer
 * @param station its name
 * @param sharePct time as the bottleneck, alone or shifting, % of the run
 * @param solePct of this, alone, % of the run
 * @param firstPct replications in which it was so for longest, %
 * @param meanActiveMin mean length of its active periods, minutes
 */
record Candidate(
        String kind, String station, Interval sharePct, Interval solePct, Interval firstPct, Interval meanActiveMin) {
    /**
     * All that were ever active, the likeliest bottleneck first.
     *
     * @param report the report
     * @return by falling time as the bottleneck, then by falling mean active period; ties in plant order
     */
    static List<Candidate> ranked(RunReport report) {
        Estimates table = report.table(BottleneckSheet.SHEET);
        return table.keys().stream()
                .map(key -> new Candidate(
                        key.get(0),
                        key.get(1),
                        table.at(key, BottleneckSheet.SHARE),
                        table.at(key, BottleneckSheet.SOLE),
                        table.at(key, BottleneckSheet.FIRST_PCT),
                        table.at(key, BottleneckSheet.MEAN_ACTIVE)))
                .filter(candidate -> candidate.meanActiveMin.isPresent())
                .sorted(Comparator.comparingDouble((Candidate candidate) -> -candidate.sharePct.mean())
                        .thenComparingDouble(candidate -> -candidate.meanActiveMin.mean()))
                .toList();
    }

    /**
     * Name for people; a dryer has that of its line.
     *
     * @return for example {@code L2} or {@code dryer L2}
     */
    String name() {
        return kind.equals("dryer") ? kind + " " + station : station;
    }
}
