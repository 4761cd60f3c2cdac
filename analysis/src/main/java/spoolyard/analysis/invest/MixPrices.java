package spoolyard.analysis.invest;

import java.util.List;
import java.util.stream.IntStream;
import spoolyard.analysis.theory.CapitalRecovery;
import spoolyard.core.plant.Plant;
import spoolyard.scenarios.choice.Mix;
import spoolyard.scenarios.choice.Option;
import spoolyard.scenarios.choice.Price;

/**
 * Prices mixes: for each option what it costs by itself, for the mix as a whole the pay of its people. Immutable.
 *
 * @param mixes all mixes, the plant as it is first, each option also by itself
 * @param plants the plant of each
 * @param interest rate a year as a share, {@code >= 0}
 * @param runsPerYear how many replications make a year
 */
public record MixPrices(List<Mix> mixes, List<Plant> plants, double interest, double runsPerYear) implements PriceList {
    /** Copies the lists. */
    public MixPrices {
        mixes = List.copyOf(mixes);
        plants = List.copyOf(plants);
    }

    /**
     * The mixes of a single option.
     *
     * @return their numbers
     */
    public List<Integer> alone() {
        return IntStream.range(0, mixes.size())
                .filter(mix -> mixes.get(mix).taken().size() == 1)
                .boxed()
                .toList();
    }

    /**
     * What a mix has more than the plant as it is.
     *
     * @param mix its number
     * @param price what it costs
     * @return how much
     */
    public Extent extent(int mix, MixPrice price) {
        return Extent.between(plants.get(0), plants.get(mix), price.more().hours());
    }

    @Override
    public List<MixPrice> of(List<MixLoss.Pay> pay) {
        return IntStream.range(0, mixes.size()).mapToObj(mix -> price(mix, pay)).toList();
    }

    private MixPrice price(int mix, List<MixLoss.Pay> pay) {
        MixLoss.Pay more = more(mix, pay);
        MixPrice sum = new MixPrice(0, 0, 0, more.wages(), more);
        for (Mix.Taken taken : mixes.get(mix).taken()) {
            int itself = mixes.indexOf(new Mix(List.of(taken)));
            sum = sum.with(
                    price(taken.option(), Extent.between(plants.get(0), plants.get(itself), 0), more(itself, pay)));
        }
        return sum;
    }

    /** Pay a year that a mix has more. */
    private MixLoss.Pay more(int mix, List<MixLoss.Pay> pay) {
        return pay.get(mix).less(pay.get(0)).times(runsPerYear);
    }

    /** Hours with a price of their own cost that in place of the wages, which are those of the mix. */
    private MixPrice price(Option option, Extent extent, MixLoss.Pay more) {
        Price price = option.price();
        double once = price.buy()
                + price.buyPerMetre() * Math.max(0, extent.metres())
                + price.buyPerWinder() * extent.winders();
        double pay = price.perHour().isPresent() ? price.perHour().getAsDouble() * more.ratedHours() - more.wages() : 0;
        return new MixPrice(
                once, once * CapitalRecovery.factor(interest, price.lifeYears()), price.perYear(), pay, more);
    }
}
