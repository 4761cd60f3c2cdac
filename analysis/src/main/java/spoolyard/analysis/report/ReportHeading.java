package spoolyard.analysis.report;

import java.util.List;

/**
 * The first lines of a report: known before the run, so they can be shown at once.
 *
 * @param provenance where the results come from
 * @param setting what is run
 * @param replications how many replications
 */
public record ReportHeading(Provenance provenance, Setting setting, int replications) {
    /**
     * The heading.
     *
     * @param ink what the screen can show
     * @return lines without line breaks, the last one empty
     */
    public List<String> lines(Ink ink) {
        return List.of(title(ink), ink.faint(note(ink)), "");
    }

    private String title(Ink ink) {
        String span = ", " + setting.clock().minute(0) + " to "
                + setting.clock().minute(setting.plant().horizonTicks());
        return ink.strong(Cell.clipped(setting.plant().name(), TextReport.MOST_COLUMNS - span.length())) + span;
    }

    private String note(Ink ink) {
        if (replications == 1) {
            return "One replication, seed " + provenance.masterSeed()
                    + ": no confidence intervals. Ask for them with --replications 20.";
        }
        return replications + " replications, seed " + provenance.masterSeed() + "; " + ink.plusMinus()
                + " is the 95 % confidence interval of the mean.";
    }
}
