package spoolyard.analysis.report;

import java.util.Comparator;
import java.util.List;
import spoolyard.analysis.experiment.Interval;

/**
 * A station that may be the bottleneck.
 *
 * @param kind line, crew, finishing or lab
 * @param station its name
 * @param meanActiveMin mean length of its active periods, minutes
 * @param longestPercent share of the replications in which that mean is the longest of all, per cent
 */
record Candidate(String kind, String station, Interval meanActiveMin, Interval longestPercent) {
    private static final double SHOWN_IN_HOURS_FROM_MIN = 120;

    /**
     * All that were ever active, the likeliest bottleneck first.
     *
     * @param report the report
     * @return by falling mean active period; ties in plant order
     */
    static List<Candidate> ranked(RunReport report) {
        Estimates table = report.table(BottleneckSheet.SHEET);
        return table.keys().stream()
                .map(key -> new Candidate(
                        key.get(0),
                        key.get(1),
                        table.at(key, BottleneckSheet.MEAN_ACTIVE),
                        table.at(key, BottleneckSheet.FIRST_PCT)))
                .filter(candidate -> candidate.meanActiveMin.isPresent())
                .sorted(Comparator.comparingDouble((Candidate candidate) -> candidate.meanActiveMin.mean())
                        .reversed())
                .toList();
    }

    /**
     * The duration for people, in minutes or hours.
     *
     * @param cell writes intervals
     * @return for example {@code 10.4 +/- 0.2 h}
     */
    String shownDuration(Cell cell) {
        return isLong() ? cell.text(inHours(), 1) + " h" : cell.text(meanActiveMin, 0) + " min";
    }

    /**
     * The mean duration for people, in minutes or hours.
     *
     * @param cell writes intervals
     * @return for example {@code 10.4 h}
     */
    String shownMean(Cell cell) {
        return isLong() ? cell.mean(inHours(), 1) + " h" : cell.mean(meanActiveMin, 0) + " min";
    }

    private boolean isLong() {
        return meanActiveMin.mean() >= SHOWN_IN_HOURS_FROM_MIN;
    }

    private Interval inHours() {
        return meanActiveMin.times(1 / 60.0);
    }
}
