package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spoolyard.analysis.buffer.LossTarget;
import spoolyard.analysis.buffer.Verdict;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.invest.InvestFinding;
import spoolyard.analysis.invest.InvestFinding.MixFinding;
import spoolyard.analysis.invest.InvestFinding.Pick;

/** Tells on a screen what choices are worth. */
public final class InvestText {
    private static final int HEAD = 12;
    private static final int MIX = 41;
    private static final int PRICE = 10;
    private static final int HELD = 8;
    private static final int HELD_HALF = 8;
    private static final int VERDICT = 7;
    private static final int NET = 9;
    private static final int NET_HALF = 10;
    private static final int BUSY = 5;
    private static final double BUSY_LIMIT = 0.85;
    private static final double MILLION_OF_PERCENT = 10_000;

    private final InvestReport report;
    private final InvestFinding finding;
    private final Ink ink;
    private final Cell cell;

    /**
     * Prepares to write.
     *
     * @param report what
     * @param ink what the screen can show
     */
    public InvestText(InvestReport report, Ink ink) {
        this.report = report;
        this.finding = report.finding();
        this.ink = ink;
        this.cell = new Cell(ink);
    }

    /**
     * All of it.
     *
     * @return lines of text
     */
    public List<String> lines() {
        InvestAnswer answer = new InvestAnswer(report, ink.plusMinus());
        List<String> lines = new ArrayList<>();
        report.target().ifPresent(target -> {
            lines.addAll(headed("Target", target));
            lines.addAll(headed("Answer", answer.cheapest()).stream()
                    .map(ink::strong)
                    .toList());
        });
        answer.best().ifPresent(best -> lines.addAll(headed("Worth most", best)));
        headed("How sure", answer.promise()).forEach(line -> lines.add(ink.faint(line)));
        lines.add("");
        lines.addAll(table());
        lines.add("");
        lines.addAll(new PayBackTable(report, ink).lines());
        lines.add("");
        lines.addAll(notes());
        return lines;
    }

    private static List<String> headed(String head, String text) {
        return Wrapped.lines(Cell.left(head, HEAD) + text, " ".repeat(HEAD), TextReport.MOST_COLUMNS);
    }

    private List<String> table() {
        boolean hasTarget = finding.target().isPresent();
        String held = finding.target().map(target -> target.measure().word()).orElse("");
        String unit = finding.target()
                .map(target -> isInMillion()
                        ? "in 1 million"
                        : report.unit(target.measure()).replace(" per ", "/").replace("of swaps", "swaps"))
                .orElse("");
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong(Cell.left("Mix", MIX)
                + Cell.right("price", PRICE)
                + heading(held, hasTarget)
                + Cell.left(Cell.right("net", NET), NET + NET_HALF)
                + Cell.right("busy", BUSY)));
        String money = report.currency() + "/year";
        lines.add(ink.faint(Cell.left("", MIX)
                + Cell.right(money, PRICE)
                + heading(unit, hasTarget)
                + Cell.left(Cell.right(money, NET), NET + NET_HALF)
                + Cell.right("%", BUSY)));
        List<MixFinding> shown = report.shown();
        shown.forEach(mix -> lines.add(row(mix, hasTarget)));
        if (shown.size() < finding.mixes().size()) {
            lines.add("  and " + (finding.mixes().size() - shown.size()) + " more in " + InvestFiles.MIXES);
        }
        return lines;
    }

    private static String heading(String title, boolean hasTarget) {
        return hasTarget ? Cell.left(Cell.right(title, HELD + 2), HELD + HELD_HALF) + " ".repeat(VERDICT) : "";
    }

    private String row(MixFinding mix, boolean hasTarget) {
        boolean isPicked = Stream.of(finding.cheapest().filter(pick -> hasTarget), finding.best())
                .flatMap(Optional::stream)
                .map(Pick::mix)
                .anyMatch(picked -> picked == mix.number());
        String text = Cell.left(Cell.clipped(report.shortLabel(mix.number()), MIX - 1), MIX)
                + Cell.right(Figures.shown(mix.price().perYear(), 0), PRICE)
                + (hasTarget
                        ? cell.aligned(held(mix), 2, HELD, HELD_HALF) + Cell.left(verdict(mix.verdict()), VERDICT)
                        : "")
                + mix.worth()
                        .map(worth -> cell.aligned(worth.net(), 0, NET, NET_HALF))
                        .orElse(Cell.left(Cell.right(ink.none(), NET), NET + NET_HALF))
                + Cell.right(Figures.shown(100 * mix.busiestShare(), 0), BUSY)
                + (mix.busiestShare() > BUSY_LIMIT ? "!" : "");
        return isPicked ? ink.strong(text) : text;
    }

    private boolean isInMillion() {
        return finding.target().filter(LossTarget::isRare).isPresent();
    }

    /** Where few are allowed, of a million swaps and not of a hundred. */
    private Interval held(MixFinding mix) {
        return isInMillion() ? mix.held().times(MILLION_OF_PERCENT) : mix.held();
    }

    private static String verdict(Verdict verdict) {
        return switch (verdict) {
            case MEETS -> "meets";
            case MISSES -> "misses";
            case OPEN -> "?";
        };
    }

    private List<String> notes() {
        String note = "price: what is bought as an equal amount a year at "
                + Figures.cell(100 * report.choices().interest())
                + " % interest, running costs and pay. net: what full accumulators lose less, less the price; 95 %, all"
                + " intervals at once, " + finding.plan().replications() + " replications or more with the same luck. "
                + (report.isRare() ? "Overflows are expected rather than counted (--rare). " : "")
                + report.counted()
                + " The run stands for the year. busy: the busiest crew at the winders. docs/invest.md";
        List<String> lines = new ArrayList<>();
        Wrapped.lines(note, "", TextReport.MOST_COLUMNS).forEach(line -> lines.add(ink.faint(line)));
        report.warnings().forEach(warning -> lines.addAll(Wrapped.lines(warning, "  ", TextReport.MOST_COLUMNS)));
        boolean isBusy = finding.mixes().stream().anyMatch(mix -> mix.busiestShare() > BUSY_LIMIT);
        if (isBusy) {
            lines.add("! Busy more than 85 % of the time: a limit of safety, not of output. docs/cautions.md");
        }
        lines.addAll(Cautions.LINES.stream().map(ink::faint).toList());
        return lines;
    }
}
