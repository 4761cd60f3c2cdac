package spoolyard.analysis.report;

import spoolyard.core.record.RunResult;

/** Good spools of each full shift, in order of time: what a warm-up is looked for in. */
public final class ShiftSeries {
    private ShiftSeries() {}

    /**
     * The series of a replication.
     *
     * @param setting what was run
     * @param result what the replication told
     * @return one value a full shift, all lines together
     */
    public static double[] of(Setting setting, RunResult result) {
        return FullShifts.of(setting.plant()).stream()
                .mapToDouble(i -> result.shifts().get(i).totalGoodSpools())
                .toArray();
    }

    /**
     * How long it is, known before the run.
     *
     * @param setting what is run
     * @return number of full shifts
     */
    public static int length(Setting setting) {
        return FullShifts.of(setting.plant()).size();
    }
}
