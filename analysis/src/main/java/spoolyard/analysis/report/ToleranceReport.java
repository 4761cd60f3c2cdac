package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import spoolyard.core.gauge.GaugeLoop;
import spoolyard.core.gauge.StationaryDiameter;
import spoolyard.core.gauge.ToleranceFinding;
import spoolyard.core.plant.Gauge;

/**
 * What tolerances cost a line with a product, as a table. Immutable.
 *
 * @param study the line with the product
 * @param findings one a tolerance, the tightest first
 * @param simulatedH hours of filament that were simulated
 */
public record ToleranceReport(ToleranceCase study, List<ToleranceFinding> findings, double simulatedH) {
    private static final int FEW = 30;
    private static final int TOLERANCE = 15;
    private static final int WIDTH = 13;

    /** What a reader of these numbers must not forget. */
    public static final List<String> CAUTIONS = List.of(
            "Estimates for a steady line with normal deviations; swaps, accumulators and crew are left out: run the",
            "scenario with the tolerance set to see them. Spread and drift must come from your own gauge's log;",
            "promise no tolerance on the ones of an example. docs/model.md, Gauge");

    /** Copies the list. */
    public ToleranceReport {
        findings = List.copyOf(findings);
    }

    /**
     * The table under its heading.
     *
     * @param ink what the screen can show
     * @param asked tolerances that are asked for, mm, and marked
     * @return lines of text, the last one empty
     */
    public List<String> lines(Ink ink, List<Double> asked) {
        List<String> lines = new ArrayList<>(heading(ink));
        lines.add(ink.strong(
                row("", "tolerance", "outside", "excursions", "mean length", "spools hit", study.lostAs(), "")));
        lines.add(ink.faint(row("", "mm", "% of metres", "/h a strand", "s", "%", "% of mass", "kg/h")));
        for (ToleranceFinding finding : findings) {
            boolean isPresent = finding.toleranceMm() == study.presentMm();
            String text = row(finding, isPresent ? "now" : asked.contains(finding.toleranceMm()) ? ">" : "");
            lines.add(isPresent ? ink.strong(text) : text);
        }
        if (findings.stream().anyMatch(finding -> finding.seen() < FEW)) {
            lines.add(ink.faint("  * fewer than " + FEW + " seen in " + Figures.shown(simulatedH, 0)
                    + " h of simulated filament: taken from formulas, none joined"));
        }
        lines.add("");
        return lines;
    }

    /**
     * The same for some of the tolerances.
     *
     * @param tolerancesMm which, mm
     * @return those of the findings
     */
    public ToleranceReport only(Collection<Double> tolerancesMm) {
        List<ToleranceFinding> kept = findings.stream()
                .filter(finding -> tolerancesMm.contains(finding.toleranceMm()))
                .toList();
        return new ToleranceReport(study, kept, simulatedH);
    }

    private List<String> heading(Ink ink) {
        GaugeLoop loop = study.loop();
        GaugeLoop free = new GaugeLoop(
                loop.sampleS(), loop.deadSamples(), loop.spreadMm(), loop.driftSpreadMm(), loop.driftPerSample(), 0);
        int strands = study.line().strands();
        return List.of(
                ink.strong(study.line().name() + ", " + study.name()) + ": " + strands
                        + (strands == 1 ? " strand" : " strands") + " of " + Figures.shown(study.strandKgPerH(), 1)
                        + " kg/h at " + Figures.shown(study.speedMPerS() * 60, 1) + " m/min, "
                        + Figures.cell(study.product().spoolKg()) + " kg in " + Figures.shown(study.spoolS(), 0)
                        + " s",
                "  spread of the diameter " + mm(StationaryDiameter.of(loop).standardDeviationMm()) + " mm, "
                        + mm(StationaryDiameter.of(free).standardDeviationMm()) + " mm without correction; dead time "
                        + Figures.cell(loop.deadSamples() * loop.sampleS()) + " s, gain "
                        + Figures.cell(loop.gain()),
                "  out of tolerance: " + policy());
    }

    private String policy() {
        if (study.policy() instanceof Gauge.Policy.Cut) {
            return "the spool is cut short, filament goes to waste until in tolerance";
        }
        if (study.policy() instanceof Gauge.Policy.Flag flag) {
            return "the spool is flagged, and rejected in " + Figures.shown(100 * flag.rejected(), 0) + " % of cases";
        }
        return "the spool is finished as B-grade";
    }

    private String row(ToleranceFinding finding, String mark) {
        double lost = study.lostShare(finding);
        return row(
                mark,
                Figures.shown(finding.toleranceMm(), 3),
                digits(100 * finding.shareOutside()),
                digits(finding.perRunningH()) + (finding.seen() < FEW ? "*" : " "),
                Figures.shown(finding.lengthS().mean(), 1),
                digits(100 * study.touchedShare(finding)),
                digits(100 * lost),
                digits(lost * study.strandKgPerH() * study.line().strands()));
    }

    private static String row(String mark, String... cells) {
        StringBuilder row = new StringBuilder(Cell.right(mark, 5)).append(Cell.right(cells[0], TOLERANCE - 5));
        Arrays.stream(cells).skip(1).forEach(cell -> row.append(Cell.right(cell, WIDTH)));
        return row.toString().stripTrailing();
    }

    private static String mm(double value) {
        return Figures.shown(value, 4);
    }

    /** Two decimals, more where they would show nothing, none where they say too much. */
    static String digits(double value) {
        if (value > 0 && value < 0.00005) {
            return "<0.0001";
        }
        return Figures.shown(value, value >= 100 ? 0 : value >= 10 ? 1 : value >= 0.1 ? 2 : 4);
    }
}
