package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import spoolyard.analysis.invest.InvestFinding;
import spoolyard.analysis.invest.InvestFinding.MixFinding;
import spoolyard.analysis.invest.InvestFinding.Pick;
import spoolyard.analysis.invest.Worth;
import spoolyard.core.record.OverflowCause;

/** What choices are worth, in sentences. Immutable. */
public final class InvestAnswer {
    private final InvestReport report;
    private final InvestFinding finding;
    private final String plusMinus;

    /**
     * Prepares to say it.
     *
     * @param report what was found
     * @param plusMinus the sign between a mean and its half-width
     */
    InvestAnswer(InvestReport report, String plusMinus) {
        this.report = report;
        this.finding = report.finding();
        this.plusMinus = plusMinus;
    }

    /** The cheapest mix that meets the target, with what it costs and earns. */
    String cheapest() {
        return finding.cheapest().map(this::found).orElseGet(this::cannotTell);
    }

    private String found(Pick pick) {
        String aim = report.target().map(target -> "that meets " + target).orElse("");
        List<MixFinding> open = finding.cheaperAndOpen();
        String may = open.isEmpty()
                ? ""
                : " Cannot tell of " + (open.size() == 1 ? "one cheaper mix" : open.size() + " cheaper mixes")
                        + " whether it is met: " + labels(open) + ".";
        return (open.isEmpty() ? "The cheapest mix " : "The cheapest mix that is sure to be one ") + aim + " is "
                + report.label(pick.mix()) + ": " + money(finding.mixes().get(pick.mix())) + may;
    }

    private String cannotTell() {
        return "No mix is sure to meet " + report.target().orElseThrow() + ". It cannot be told of "
                + labels(finding.cheaperAndOpen()) + ". More replications (--runs, --most) would.";
    }

    private String labels(List<MixFinding> open) {
        return open.stream().limit(3).map(mix -> report.label(mix.number())).collect(Collectors.joining("; "))
                + (open.size() > 3 ? "; and " + (open.size() - 3) + " more" : "");
    }

    private String money(MixFinding mix) {
        if (mix.number() == 0) {
            return "nothing needs to be bought.";
        }
        Worth worth = mix.worth().orElseThrow();
        double price = mix.price().perYear();
        double gain = worth.gain().mean();
        double net = worth.net().mean();
        return "it costs " + amount(Math.abs(price)) + " a year" + (price < 0 ? " less" : "")
                + ", full accumulators lose " + amount(Math.abs(gain)) + " a year " + (gain < 0 ? "more" : "less")
                + ", so it " + (net < 0 ? "loses " : "earns ") + amount(Math.abs(net))
                + half(worth.net().halfWidth())
                + " a year (95 %).";
    }

    /** The mix worth most. */
    Optional<String> best() {
        return finding.best().map(pick -> {
            String among = finding.target().isPresent() ? " of those that meet it" : "";
            boolean isTold = finding.cheapest()
                    .filter(cheapest -> cheapest.mix() == pick.mix())
                    .isPresent();
            String which = isTold
                    ? "The same mix is worth most" + among + "."
                    : "Of " + (among.isEmpty() ? "all" : "those that meet it") + " " + report.label(pick.mix())
                            + " is worth most: " + money(finding.mixes().get(pick.mix()));
            return which + nearness(pick);
        });
    }

    /** How far the best may be above it, and what would tell. */
    private String nearness(Pick pick) {
        if (pick.isDecided()) {
            return pick.atMostBelow() > 0
                    ? " Another may be worth more, but by at most " + amount(pick.atMostBelow()) + " a year."
                    : "";
        }
        String rivals = pick.mayBeat().isEmpty()
                ? "another"
                : pick.mayBeat().stream().limit(2).map(report::label).collect(Collectors.joining("; or "))
                        + (pick.mayBeat().size() > 2 ? "; or " + (pick.mayBeat().size() - 2) + " more" : "");
        String way = Double.isFinite(pick.wouldTake())
                ? "some " + Figures.shown(rounded(pick.wouldTake()), 0) + " replications of each (--runs, --most)"
                : "more replications of each (--runs, --most)";
        return " Not closer than asked for: " + rivals + " may be worth more, by at most " + amount(pick.atMostBelow())
                + " a year, where " + amount(pick.within()) + " are wanted. To tell takes " + way
                + " or a larger --within.";
    }

    /** Up to two digits, for it is a guess. */
    private static double rounded(double count) {
        double unit = Math.pow(10, Math.max(0, Math.floor(Math.log10(count)) - 1));
        return Math.ceil(count / unit) * unit;
    }

    /** What is promised, and on what it rests. */
    String promise() {
        String verdicts = finding.target().isPresent()
                ? "no verdict on the target is wrong, and of those sure to meet it none is worth more than the one told, but"
                : "no mix is worth more than the one told, but";
        String most = finding.best().map(pick -> amount(pick.atMostBelow())).orElse("nothing");
        return "With " + Figures.cell(100 * finding.plan().level()) + " % confidence " + verdicts + " by at most "
                + most + " a year" + wanted() + ".";
    }

    private String wanted() {
        return finding.best()
                .filter(pick -> pick.within() > 0)
                .map(pick -> " (" + amount(pick.within()) + " were allowed: "
                        + (finding.plan().within().isPresent()
                                ? "--within"
                                : "a twentieth of what sets mixes apart, --within")
                        + ")")
                .orElse("");
    }

    /**
     * Why no mix meets the target.
     *
     * @param report what was found
     * @return sentences
     */
    public static String limits(InvestReport report) {
        MixFinding nearest = report.finding().nearest();
        List<String> causes = new ArrayList<>();
        for (Map.Entry<OverflowCause, Double> cause : nearest.pctByCause().entrySet()) {
            causes.add(cause.getKey().label() + " " + Figures.shown(cause.getValue(), 2) + " %");
        }
        return "No mix meets it. Nearest comes " + report.label(nearest.number()) + ", with "
                + Figures.shown(nearest.held().mean(), 2) + " "
                + report.unit(report.finding().target().orElseThrow().measure())
                + ". There the accumulator fills, of the swaps, for: " + String.join(", ", causes) + ".";
    }

    private String amount(double money) {
        return report.currency() + " " + Figures.shown(money, 0);
    }

    private String half(OptionalDouble halfWidth) {
        return halfWidth.isPresent() ? " " + plusMinus + " " + Figures.shown(halfWidth.getAsDouble(), 0) : "";
    }
}
