package spoolyard.analysis.report;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import spoolyard.analysis.buffer.LossMeasure;
import spoolyard.analysis.buffer.Verdict;
import spoolyard.analysis.invest.Counting;
import spoolyard.analysis.invest.Extent;
import spoolyard.analysis.invest.InvestFinding;
import spoolyard.analysis.invest.InvestFinding.MixFinding;
import spoolyard.analysis.invest.InvestFinding.Pick;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Prices;
import spoolyard.scenarios.choice.Choices;
import spoolyard.scenarios.choice.Mix;
import spoolyard.scenarios.choice.Option;

/**
 * What choices are worth, with what was asked for. Immutable.
 *
 * @param provenance where the results come from
 * @param plant the plant as it is
 * @param choices the choices
 * @param file the file of the choices, as it was given
 * @param line the line that is held against the target; empty for all together
 * @param mixes all mixes
 * @param extents of each mix, what it has more than the plant as it is
 * @param rule whose losses counted in money
 * @param isRare whether overflows of the target were expected rather than counted
 * @param finding what was found
 * @param warnings what a reader must know of the mixes that are told, a sentence or two each
 */
public record InvestReport(
        Provenance provenance,
        Plant plant,
        Choices choices,
        String file,
        Optional<String> line,
        List<Mix> mixes,
        List<Extent> extents,
        Counting.Rule rule,
        boolean isRare,
        InvestFinding finding,
        List<String> warnings) {
    private static final int MOST_ROWS = 16;

    /** Copies the lists. */
    public InvestReport {
        mixes = List.copyOf(mixes);
        extents = List.copyOf(extents);
        warnings = List.copyOf(warnings);
    }

    /** Name or sign of the currency. */
    String currency() {
        return plant.economy().prices().map(Prices::currency).orElseThrow();
    }

    /** The target in words, with where it holds. */
    Optional<String> target() {
        return finding.target()
                .map(target ->
                        target.measure().word() + " <= " + Figures.cell(target.atMost()) + " " + unit(target.measure())
                                + line.map(name -> " on " + name).orElse(""));
    }

    /** A measure's unit, money in the scenario's currency. */
    String unit(LossMeasure measure) {
        return measure == LossMeasure.COST ? currency() + " " + measure.unit() : measure.unit();
    }

    /** Names of the options alone, where they tell them apart. */
    String shortLabel(int mix) {
        List<String> names = choices.all().stream()
                .flatMap(choice -> choice.options().stream())
                .map(Option::name)
                .toList();
        boolean isClear = names.stream().distinct().count() == names.size();
        return isClear && !mixes.get(mix).taken().isEmpty()
                ? mixes.get(mix).taken().stream()
                        .map(taken -> taken.option().name())
                        .collect(Collectors.joining(", "))
                : label(mix);
    }

    /** Whose losses counted, in a sentence. */
    String counted() {
        return switch (rule) {
            case USUAL ->
                "Lines that an option leaves alone count only where it changes people or their work (--count).";
            case CHANGED ->
                "Lines that an option leaves alone do not count, so what freed people bring there is left out.";
            case ALL -> "All lines count.";
        };
    }

    String label(int mix) {
        return mixes.get(mix).label();
    }

    /** By price; where there are many, the plant as it is and those that meet the target or may meet it. */
    List<MixFinding> shown() {
        List<MixFinding> byPrice = finding.mixes().stream()
                .sorted(Comparator.comparingDouble(mix -> mix.price().perYear()))
                .toList();
        if (byPrice.size() <= MOST_ROWS) {
            return byPrice;
        }
        int best = finding.best().map(Pick::mix).orElse(0);
        List<MixFinding> wanted = byPrice.stream()
                .filter(mix -> mix.number() == 0 || mix.verdict() != Verdict.MISSES)
                .toList();
        return wanted.stream()
                .filter(mix -> mix.number() == 0 || mix.number() == best || wanted.indexOf(mix) < MOST_ROWS - 2)
                .toList();
    }

    /** The mixes of a single option. */
    List<MixFinding> alone() {
        return finding.mixes().stream()
                .filter(mix -> mixes.get(mix.number()).taken().size() == 1)
                .toList();
    }
}
