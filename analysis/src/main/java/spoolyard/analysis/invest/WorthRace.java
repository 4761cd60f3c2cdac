package spoolyard.analysis.invest;

import java.util.List;
import java.util.Optional;
import spoolyard.analysis.experiment.NearBest;
import spoolyard.analysis.experiment.Observations;
import spoolyard.analysis.invest.InvestFinding.Pick;

/**
 * Selects the mix worth most among some, or one that is surely little below it.
 *
 * <p>Which mixes race was seen from the same replications. So the chance of error is shared by all pairs of all mixes: the
 * promise holds whichever of them race.
 */
final class WorthRace {
    private final InvestPlan plan;
    private final List<MixPrice> prices;
    private final double runsPerYear;
    private final MixBook book;
    private final Allowance allowance;

    WorthRace(InvestPlan plan, List<MixPrice> prices, double runsPerYear, MixBook book, Allowance allowance) {
        this.plan = plan;
        this.prices = prices;
        this.runsPerYear = runsPerYear;
        this.book = book;
        this.allowance = allowance;
    }

    Optional<Pick> select(List<Integer> rivals) {
        if (rivals.size() < 2) {
            return rivals.stream().findFirst().map(Pick::only);
        }
        int pairs = prices.size() * (prices.size() - 1) / 2;
        NearBest.Choice choice = new NearBest(plan.alphaOfSelection(), pairs, plan.looksOfSelection())
                .select(
                        observations(rivals),
                        plan.within(),
                        (systems, count) -> allowance.allows(book.missingForMoney(
                                systems.stream().map(rivals::get).toList(), count)));
        return Optional.of(new Pick(
                rivals.get(choice.best()),
                choice.atMostBelow(),
                choice.within(),
                choice.mayBeat().stream().map(rivals::get).toList(),
                choice.wouldTake()));
    }

    private Observations observations(List<Integer> rivals) {
        return new Observations() {
            @Override
            public int systems() {
                return rivals.size();
            }

            @Override
            public double[] at(int number, List<Integer> systems) {
                List<Integer> racing = systems.stream().map(rivals::get).toList();
                book.fillForMoney(racing, lookAfter(number));
                return racing.stream()
                        .mapToDouble(mix -> netPerYear(mix, number))
                        .toArray();
            }
        };
    }

    private int lookAfter(int number) {
        return plan.looksOfSelection().stream()
                .filter(look -> look > number)
                .findFirst()
                .orElseThrow();
    }

    private double netPerYear(int mix, int replication) {
        double lost = book.lostMoney(mix, replication);
        return -lost * runsPerYear - prices.get(mix).perYear();
    }
}
