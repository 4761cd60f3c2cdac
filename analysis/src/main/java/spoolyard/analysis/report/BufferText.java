package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import spoolyard.analysis.buffer.CapacityCurve;
import spoolyard.analysis.buffer.Finding;
import spoolyard.analysis.buffer.LossMeasure;
import spoolyard.analysis.experiment.Interval;
import spoolyard.core.record.OverflowCause;

/** Tells on a screen what was found about an accumulator. */
public final class BufferText {
    private static final int HEAD = 13;
    private static final int CAPACITY = 10;
    private static final int MEAN = 9;
    private static final int HALF_WIDTH = 7;
    private static final int CAUSE = 10;
    private static final int DEDICATED = 12;
    private static final int NET = 12;
    private static final int MOST_DECIMALS = 9;
    private static final int NET_HALF_WIDTH = 9;
    private static final Map<OverflowCause, String> CAUSES = causes();

    private final BufferReport report;
    private final Ink ink;
    private final Cell cell;

    /**
     * Prepares to write.
     *
     * @param report what
     * @param ink what the screen can show
     */
    public BufferText(BufferReport report, Ink ink) {
        this.report = report;
        this.ink = ink;
        this.cell = new Cell(ink);
    }

    /**
     * All of it.
     *
     * @return lines of text
     */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(ink.title(report.plant().name()) + ": the accumulator of "
                + report.line().name() + ", "
                + metres(report.line().accumulator().capacityM()) + " at present");
        lines.add("");
        report.finding().ifPresent(finding -> lines.addAll(answer(finding)));
        lines.add(headed("Knee", knees()));
        report.worthMost().ifPresent(best -> lines.addAll(worth(best)));
        lines.add("");
        lines.addAll(report.rare()
                .map(rare -> new RareTable(report, rare, ink).lines())
                .orElseGet(this::table));
        lines.add("");
        lines.add(ink.faint("\u00b1 is the 95 % interval at each capacity, of " + report.replications()
                        + " replications at least; the same luck at all of them.")
                .replace("\u00b1", ink.plusMinus()));
        lines.add(ink.faint("Dedicated operator: always at hand at normal pace, accumulator home before each swap."
                + " docs/buffer.md"));
        return lines;
    }

    private List<String> answer(Finding finding) {
        List<String> lines = new ArrayList<>();
        LossMeasure measure = finding.target().measure();
        lines.add(headed(
                "Target",
                measure.word() + " <= " + Figures.cell(finding.target().atMost()) + " " + report.unit(measure)));
        lines.add(headed("Answer", ink.strong(new BufferAnswer(finding).text())));
        for (Finding.Tested tested : finding.tested()) {
            if (isNearTheAnswer(finding, tested.capacityM())) {
                lines.add(" ".repeat(HEAD) + metres(tested.capacityM()) + " "
                        + tested.verdict().words() + ": "
                        + cell.text(
                                tested.estimate(), decimals(tested.estimate().mean())) + " "
                        + report.unit(measure) + ", " + tested.replications() + " replications");
            }
        }
        lines.addAll(guarantee(finding));
        return lines;
    }

    private static boolean isNearTheAnswer(Finding finding, double capacityM) {
        boolean isHighEnough =
                finding.missesM().isEmpty() || capacityM >= finding.missesM().getAsDouble();
        return isHighEnough
                && (finding.meetsM().isEmpty() || capacityM <= finding.meetsM().getAsDouble());
    }

    private List<String> guarantee(Finding finding) {
        List<Double> all = finding.plan().capacitiesM();
        String chosenFrom = "Chosen from " + all.size() + " capacities, " + metres(all.get(0)) + " to "
                + metres(all.get(all.size() - 1)) + ", of which "
                + finding.tested().size() + " were tested. With "
                + Figures.cell(100 * finding.plan().level()) + " % confidence";
        return List.of(
                " ".repeat(HEAD) + chosenFrom,
                " ".repeat(HEAD) + "no verdict is wrong, if the mean loss does not grow with the capacity.");
    }

    private List<String> worth(Map.Entry<Double, Interval> best) {
        String money = report.currency().orElseThrow() + " ";
        return List.of(
                headed(
                        "Pay-back",
                        ink.strong(metres(best.getKey())) + " is worth most: " + money + cell.text(best.getValue(), 0)
                                + " a year more than the present one, metres paid for."),
                " ".repeat(HEAD) + "The best of those shown; one whose interval overlaps may be better.");
    }

    private String knees() {
        List<String> parts = new ArrayList<>();
        for (LossMeasure measure : report.measures()) {
            OptionalDouble knee = report.curve().kneeM(measure);
            parts.add(measure.word() + " " + (knee.isPresent() ? metres(knee.getAsDouble()) : ink.none()));
        }
        return String.join(", ", parts) + ": beyond, more room pays less";
    }

    private List<String> table() {
        List<String> lines = new ArrayList<>();
        StringBuilder heading = new StringBuilder(Cell.left("Capacity", CAPACITY));
        StringBuilder units = new StringBuilder(Cell.left("m", CAPACITY));
        for (LossMeasure measure : report.measures()) {
            String unit = measure == LossMeasure.OVERFLOW
                    ? "% of swaps"
                    : report.unit(measure).replace(" per ", "/");
            heading.append(Cell.left(Cell.right(measure.word(), MEAN), MEAN + HALF_WIDTH));
            units.append(Cell.left(Cell.right(unit, MEAN), MEAN + HALF_WIDTH));
        }
        heading.append(Cell.right("dedicated", DEDICATED));
        units.append(Cell.right("operator %", DEDICATED));
        if (!report.netPerYear().isEmpty()) {
            heading.append(Cell.left(Cell.right("net", NET), NET + NET_HALF_WIDTH));
            String unit = report.currency().orElseThrow() + "/year";
            units.append(Cell.left(Cell.right(unit, NET), NET + NET_HALF_WIDTH));
        }
        for (OverflowCause cause : seenCauses()) {
            heading.append(Cell.right(CAUSES.get(cause), CAUSE));
            units.append(Cell.right("%", CAUSE));
        }
        lines.add(ink.strong(heading.toString()));
        lines.add(ink.faint(units.toString()));
        report.curve().points().forEach(point -> lines.add(row(point)));
        return lines;
    }

    private String row(CapacityCurve.Point point) {
        boolean isPresent = point.capacityM() == report.line().accumulator().capacityM();
        StringBuilder row =
                new StringBuilder(Cell.left(Figures.cell(point.capacityM()) + (isPresent ? " now" : ""), CAPACITY));
        for (LossMeasure measure : report.measures()) {
            row.append(cell.aligned(point.losses().get(measure), 2, MEAN, HALF_WIDTH));
        }
        double dedicated = report.operator().overflowPct(point.capacityM());
        row.append(Cell.right(Double.isNaN(dedicated) ? ink.none() : Figures.shown(dedicated, 2), DEDICATED));
        Optional.ofNullable(report.netPerYear().get(point.capacityM()))
                .ifPresent(net -> row.append(cell.aligned(net, 0, NET, NET_HALF_WIDTH)));
        for (OverflowCause cause : seenCauses()) {
            row.append(Cell.right(Figures.shown(point.pctOfSwaps().get(cause), 2), CAUSE));
        }
        return row.toString().stripTrailing();
    }

    /** Causes that any overflow of the curve has. */
    private List<OverflowCause> seenCauses() {
        return CAUSES.keySet().stream()
                .filter(cause -> report.curve().points().stream()
                        .anyMatch(point -> point.pctOfSwaps().get(cause) > 0))
                .toList();
    }

    private static Map<OverflowCause, String> causes() {
        Map<OverflowCause, String> words = new EnumMap<>(OverflowCause.class);
        words.put(OverflowCause.NO_CREW, "no crew");
        words.put(OverflowCause.SWAP_TOO_SLOW, "too slow");
        words.put(OverflowCause.RACK_FULL, "rack full");
        words.put(OverflowCause.CARRIED_OVER, "carried");
        return Collections.unmodifiableMap(words);
    }

    private static int decimals(double value) {
        return value != 0 && Math.abs(value) < 1
                ? Math.max(3, Math.min(MOST_DECIMALS, 2 - (int) Math.floor(Math.log10(Math.abs(value)))))
                : 2;
    }

    private static String headed(String head, String text) {
        return Cell.left(head, HEAD) + text;
    }

    static String metres(double capacityM) {
        return Figures.cell(capacityM) + " m";
    }
}
