package spoolyard.analysis.invest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.sample.SamplePlant;
import spoolyard.core.plant.Plant;
import spoolyard.scenarios.choice.Choice;
import spoolyard.scenarios.choice.Choices;
import spoolyard.scenarios.choice.ChosenValue;
import spoolyard.scenarios.choice.Mix;
import spoolyard.scenarios.choice.Option;
import spoolyard.scenarios.choice.Price;
import spoolyard.scenarios.fault.Origin;

final class MixPricesTest {
    private static final Origin HERE = Origin.ofFile("choices.yaml");

    private static Choice choice(String name, String pointer, Price price) {
        return new Choice(
                name, "now", List.of(new Option("more", List.of(new ChosenValue(pointer, "1", HERE)), price, HERE)));
    }

    /**
     * Hand: bought for 1000 with (A/P, 10 %, 10) = 0.162745 is 162.745 a year, and 50 running; two people more for 10 rated
     * hours a run at wages of 20 and ten runs a year are 2000; an option whose hours cost 25 in place of 20 has 2500. The mix
     * of both has 12 hours more, 2400 at wages, and the 500 that the second option's hours cost above them.
     */
    @Test
    void addsWhatIsBoughtRunningCostsAndPay() {
        Choices choices = new Choices(
                0.1,
                List.of(
                        choice("a", "/a", new Price(1000, 0, 0, 10, 50, OptionalDouble.empty())),
                        choice("b", "/b", new Price(0, 0, 0, 1, 0, OptionalDouble.of(25)))));
        Plant plant = SamplePlant.of(1, 1);
        MixPrices prices = new MixPrices(choices.mixes(), List.of(plant, plant, plant, plant), choices.interest(), 10);

        List<MixPrice> found = prices.of(List.of(
                new MixLoss.Pay(100, 100, 2000),
                new MixLoss.Pay(108, 110, 2200),
                new MixLoss.Pay(100, 100, 2000),
                new MixLoss.Pay(110, 112, 2240)));

        assertThat(choices.mixes())
                .extracting(Mix::label)
                .containsExactly("as it is", "b more", "a more", "a more, b more");
        assertThat(found.get(0).perYear()).isZero();
        assertThat(found.get(1).perYear()).isCloseTo(2500, within(1e-9));
        assertThat(found.get(2).perYear()).isCloseTo(212.745, within(0.001));
        assertThat(found.get(3).perYear()).isCloseTo(212.745 + 2400 + 500, within(0.001));
        assertThat(found.get(3).more().hours()).isCloseTo(100, within(1e-9));
        assertThat(prices.alone()).containsExactly(1, 2);
    }

    /** Bought for 4000, 1500 a year gained, 500 running: back after four years; never where running costs eat it up. */
    @Test
    void paysBackWhatWasPaidOnce() {
        MixPrice price = new MixPrice(4000, 600, 500, 0, new MixLoss.Pay(0, 0, 0));

        assertThat(Worth.payBackYears(price, 1500)).isCloseTo(4, within(1e-12));
        assertThat(Worth.payBackYears(price, 500)).isInfinite();
    }

    /**
     * An option of one line's room leaves the other line to the mix without it; one of its winder changes people's work, so
     * that both lines are those of the mix unless only changed lines shall count; one of people has both lines to itself.
     */
    @Test
    void countsLinesThatNothingChangesWithoutIt() {
        Plant plant = SamplePlant.of(2, 1);
        String line = "/lines/" + plant.lines().get(1).name();

        assertThat(sources(Counting.Rule.USUAL, line + "/accumulator", plant))
                .containsExactly(List.of(0, 0), List.of(0, 1), List.of(2, 2), List.of(2, 3));
        assertThat(sources(Counting.Rule.USUAL, line + "/winder", plant))
                .containsExactly(List.of(0, 0), List.of(1, 1), List.of(2, 2), List.of(3, 3));
        assertThat(sources(Counting.Rule.CHANGED, line + "/winder", plant))
                .containsExactly(List.of(0, 0), List.of(0, 1), List.of(2, 2), List.of(2, 3));
        assertThat(sources(Counting.Rule.ALL, line + "/accumulator", plant))
                .containsExactly(List.of(0, 0), List.of(1, 1), List.of(2, 2), List.of(3, 3));
    }

    private static List<List<Integer>> sources(Counting.Rule rule, String pointer, Plant plant) {
        Price free = new Price(0, 0, 0, 1, 0, OptionalDouble.empty());
        Choices choices = new Choices(0, List.of(choice("people", "/shifts/A", free), choice("line", pointer, free)));
        return Counting.of(rule, choices.mixes(), plant).sources();
    }
}
