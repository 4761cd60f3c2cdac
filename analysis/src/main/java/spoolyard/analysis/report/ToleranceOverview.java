package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import spoolyard.core.gauge.ToleranceFinding;

/**
 * What tolerances cost many lines, a row each. Immutable.
 *
 * @param reports one a line with a product, all with the same tolerances
 */
public record ToleranceOverview(List<ToleranceReport> reports) {
    private static final int NAME = 19;
    private static final int POLICY = 9;
    private static final int WIDTH = 11;

    /** Copies the list. */
    public ToleranceOverview {
        reports = List.copyOf(reports);
    }

    /**
     * The table under its heading.
     *
     * @param ink what the screen can show
     * @return lines of text, the last one empty
     */
    public List<String> lines(Ink ink) {
        List<String> lines = new ArrayList<>();
        lines.add("Lost to excursions, % of the mass made while running, by tolerance in mm; [ ] is the line's own.");
        lines.add("");
        StringBuilder heading =
                new StringBuilder(Cell.left("Line, product", NAME)).append(Cell.left("lost as", POLICY));
        reports.get(0)
                .findings()
                .forEach(finding -> heading.append(Cell.right(Figures.shown(finding.toleranceMm(), 3) + " ", WIDTH)));
        lines.add(ink.strong(heading.toString().stripTrailing()));
        reports.forEach(report -> lines.add(row(report)));
        lines.add("");
        return lines;
    }

    private static String row(ToleranceReport report) {
        ToleranceCase study = report.study();
        StringBuilder row = new StringBuilder(Cell.left(study.line().name() + " " + study.name(), NAME))
                .append(Cell.left(study.lostAs(), POLICY));
        for (ToleranceFinding finding : report.findings()) {
            String lost = ToleranceReport.digits(100 * study.lostShare(finding));
            boolean isPresent = finding.toleranceMm() == study.presentMm();
            row.append(Cell.right(isPresent ? "[" + lost + "]" : lost + " ", WIDTH));
        }
        return row.toString().stripTrailing();
    }
}
