package spoolyard.analysis.invest;

import java.util.List;
import java.util.Optional;
import spoolyard.analysis.experiment.KimNelson;
import spoolyard.analysis.experiment.Observations;
import spoolyard.analysis.experiment.Selection;
import spoolyard.analysis.experiment.Zone;
import spoolyard.analysis.invest.InvestFinding.Pick;

/**
 * Selects the mix worth most among some, by the procedure of Kim and Nelson.
 *
 * <p>Which mixes race was seen from the same replications. So each pair has the chance of error that it would have in a race
 * of all mixes: by Bonferroni's inequality over these pairs the promise holds whichever of them race.
 */
final class WorthRace {
    private final InvestPlan plan;
    private final int mixes;
    private final List<MixPrice> prices;
    private final double runsPerYear;
    private final MixBook book;

    WorthRace(InvestPlan plan, int mixes, List<MixPrice> prices, double runsPerYear, MixBook book) {
        this.plan = plan;
        this.mixes = mixes;
        this.prices = prices;
        this.runsPerYear = runsPerYear;
        this.book = book;
    }

    Optional<Pick> select(List<Integer> rivals) {
        if (rivals.size() < 2) {
            return rivals.stream().findFirst().map(only -> new Pick(only, true));
        }
        double alphaOfAPair = plan.alphaOfSelection() / (mixes - 1);
        Zone zone = new Zone(1 - alphaOfAPair * (rivals.size() - 1), plan.within(), plan.firstLook());
        Selection selection = new KimNelson(zone).select(observations(rivals), plan.most());
        return Optional.of(new Pick(rivals.get(selection.best()), selection.isDecided()));
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
                int ahead = Math.min(plan.most(), number - number % plan.firstLook() + plan.firstLook());
                book.fillForMoney(racing, ahead);
                return racing.stream()
                        .mapToDouble(mix -> netPerYear(mix, number))
                        .toArray();
            }
        };
    }

    private double netPerYear(int mix, int replication) {
        double lost = book.lostMoney(mix, replication);
        return -lost * runsPerYear - prices.get(mix).perYear();
    }
}
