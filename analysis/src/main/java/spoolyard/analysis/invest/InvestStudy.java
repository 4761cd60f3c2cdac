package spoolyard.analysis.invest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import spoolyard.analysis.buffer.Limits;
import spoolyard.analysis.buffer.Loss;
import spoolyard.analysis.buffer.LossMean;
import spoolyard.analysis.buffer.LossTarget;
import spoolyard.analysis.buffer.Verdict;
import spoolyard.analysis.experiment.CommonNumbers;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.experiment.Progress;
import spoolyard.analysis.experiment.Simultaneous;
import spoolyard.analysis.invest.InvestFinding.MixFinding;
import spoolyard.analysis.invest.InvestFinding.Pick;

/**
 * Finds the cheapest mix that meets a target, and the one worth most, in three steps: every mix is held against the target;
 * those that meet it are compared in money with the plant as it is; the best of them is selected. For one thread, once.
 *
 * <p>With the plan's confidence no verdict on the target is wrong, and the selection is right if the best is ahead by the
 * plan's indifference: decision 0016 says why, {@link InvestPlan} how the chance of error is shared.
 *
 * <p>Cost: {@code mixes * firstLook} runs at least, {@code mixes * most} at most. Verdicts begin no look that goes beyond half
 * of the plan's runs, the selections none beyond all; intervals of money may take a few more.
 */
public final class InvestStudy {
    private static final double ROUNDING = 1e-9;

    private final InvestPlan plan;
    private final int mixes;
    private final double runsPerYear;
    private final MixBook book;
    private final BooleanSupplier mayGoOn;

    /**
     * Prepares a study.
     *
     * @param plan how
     * @param runsPerYear how many replications make a year, {@code > 0}
     * @param counting from where the money of each mix is taken, of two mixes or more; the first is the plant as it is
     * @param numbers runs replications of mixes
     * @param progress hears of each run
     * @param mayGoOn asked before each look that takes further runs
     */
    public InvestStudy(
            InvestPlan plan,
            double runsPerYear,
            Counting counting,
            CommonNumbers<MixLoss> numbers,
            Progress progress,
            BooleanSupplier mayGoOn) {
        this.plan = plan;
        this.mixes = counting.sources().size();
        this.runsPerYear = runsPerYear;
        this.book = new MixBook(numbers, counting, progress);
        this.mayGoOn = mayGoOn;
    }

    /**
     * Runs it.
     *
     * @param target what is to be met; empty for nothing: then there is no cheapest
     * @param priceList prices the mixes
     * @param alone mixes whose worth is wanted whether they meet the target or not
     * @return what was found
     */
    public InvestFinding run(Optional<LossTarget> target, PriceList priceList, List<Integer> alone) {
        List<Integer> all = IntStream.range(0, mixes).boxed().toList();
        book.fill(all, plan.firstLook());
        List<MixPrice> prices =
                priceList.of(all.stream().map(mix -> book.one(mix, 0).pay()).toList());
        List<Verdict> verdicts = target.map(wanted -> new Screening(
                                plan, wanted, book, new Allowance(plan.mostRuns() / 2, book::runs, mayGoOn))
                        .verdicts(all))
                .orElse(all.stream().map(mix -> Verdict.MEETS).toList());
        List<Integer> meeting =
                all.stream().filter(mix -> verdicts.get(mix) == Verdict.MEETS).toList();
        book.fillForMoney(
                Stream.of(List.of(0), meeting, alone).flatMap(List::stream).toList(), plan.replications());
        WorthRace race =
                new WorthRace(plan, prices, runsPerYear, book, new Allowance(plan.mostRuns(), book::runs, mayGoOn));
        Optional<Pick> cheapest = target.isEmpty() ? Optional.empty() : race.select(cheapest(meeting, prices));
        Optional<Pick> best = race.select(meeting);
        int told = Stream.of(cheapest, best)
                .flatMap(Optional::stream)
                .mapToInt(pick -> book.seenForMoney(pick.mix()))
                .max()
                .orElse(0);
        book.fill(List.of(0), told);
        List<MixFinding> found = new ArrayList<>();
        for (int mix : all) {
            boolean isValued = mix > 0 && (meeting.contains(mix) || alone.contains(mix));
            Optional<Worth> worth = isValued ? Optional.of(worth(mix, prices.get(mix))) : Optional.empty();
            found.add(finding(mix, prices.get(mix), verdicts.get(mix), target, worth));
        }
        return new InvestFinding(plan, target, found, cheapest, best, book.runs());
    }

    private static List<Integer> cheapest(List<Integer> meeting, List<MixPrice> prices) {
        double least = meeting.stream()
                .mapToDouble(mix -> prices.get(mix).perYear())
                .min()
                .orElse(0);
        return meeting.stream()
                .filter(mix -> prices.get(mix).perYear() <= least + ROUNDING * (1 + Math.abs(least)))
                .toList();
    }

    /** From as many replications as there are; their number is one of a few laid down, and the level allows for each. */
    private Worth worth(int mix, MixPrice price) {
        List<Integer> counts = plan.countsOfMoney();
        int seen = Math.min(book.seenForMoney(mix), book.seenForMoney(0));
        int count = counts.stream().filter(each -> each <= seen).reduce(plan.replications(), Math::max);
        int statements = (mixes - 1) * plan.statementsOfMoney(count);
        double level = new Simultaneous(Interval.USUAL_LEVEL, statements).eachLevel();
        return Worth.of(
                perYear(book::lostMoney, mix, count),
                perYear((each, i) -> -book.one(each, i).contribution(), mix, count),
                price,
                level);
    }

    /** What a mix loses less a year than the plant as it is, by replication. */
    private double[] perYear(ToDoubleBiFunction<Integer, Integer> lost, int mix, int count) {
        return IntStream.range(0, count)
                .mapToDouble(i -> (lost.applyAsDouble(0, i) - lost.applyAsDouble(mix, i)) * runsPerYear)
                .toArray();
    }

    private MixFinding finding(
            int mix, MixPrice price, Verdict verdict, Optional<LossTarget> target, Optional<Worth> worth) {
        List<MixLoss> seen = book.at(mix, book.seen(mix));
        List<Loss> held = seen.stream().map(MixLoss::held).toList();
        return new MixFinding(
                mix,
                price,
                verdict,
                target.map(wanted -> LossMean.of(wanted.measure(), held, plan.level()))
                        .orElse(new Interval(Double.NaN, OptionalDouble.empty(), plan.level(), 0)),
                Limits.pctOfSwaps(held),
                worth,
                seen.stream().mapToDouble(MixLoss::busiestShare).average().orElse(0),
                seen.size());
    }
}
