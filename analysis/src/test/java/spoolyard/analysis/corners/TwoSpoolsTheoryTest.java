package spoolyard.analysis.corners;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spoolyard.core.account.CostAccount;
import spoolyard.core.account.CostAccount.CostItem;
import spoolyard.core.account.CostPart;
import spoolyard.core.account.EnergyAccount;
import spoolyard.core.account.EnergyPart;
import spoolyard.core.account.LineEnergy;
import spoolyard.core.account.LostContribution;
import spoolyard.core.plant.Economy;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Prices;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineUse.MaterialUse;
import spoolyard.core.record.RunResult;

/**
 * Energy and money of a run of two spools, worked by hand. 18 kg/h are 0.005 kg/s; all times in seconds.
 *
 * <pre>
 *     0 heat up          1200 soak            1800 compound 0.5 kg   1900 colour purge 1 kg
 *  2100 first melt 0.5   2200 thread 1.5 kg   2500 stabilise 1.5 kg  2800 first spool 1 kg
 *  3000 second spool     3200 no order        4800 shut down 0.5 kg  5400 cold, shift over
 * </pre>
 *
 * <p>Fed: 0.5 kg of compound and 7.0 kg of red PLA, of which 3 % are concentrate. Scrap: 0.5 kg mixed, 5.0 kg of PLA. Hot:
 * 5400 s; in standby 600 s of soak and 1600 s without an order.
 */
final class TwoSpoolsTheoryTest {
    private static final double EXACT = 1e-6;

    private final Plant plant = Corner.of("two-spools").plant();
    private final RunResult run = Corner.of("two-spools").run();
    private final LineResult line = run.lines().get(0);
    private final EnergyAccount energy =
            EnergyAccount.of(plant.economy().energy().orElseThrow(), run);
    private final CostAccount cost = CostAccount.of(plant.economy().prices().orElseThrow(), Optional.of(energy), run);

    @Test
    void feedsWhatTheHandCounts() {
        assertThat(line.fedKg()).isCloseTo(7.5, within(EXACT));
        assertThat(line.use().compoundKg()).isCloseTo(0.5, within(EXACT));
        assertThat(line.totalScrapKg()).isCloseTo(5.5, within(EXACT));
        assertThat(line.goodSpools()).isEqualTo(2);
        assertThat(run.flow().packed()).isEqualTo(2);
        assertThat(line.use().materials()).extracting(MaterialUse::polymer).containsExactly("PETG", "PLA");
        assertThat(line.use().materials().get(0).fedKg()).isZero();
        assertThat(line.use().materials().get(1).fedKg()).isCloseTo(7.0, within(EXACT));
    }

    /** 55 kW x 1.5 h, 20 kW x 0.5 h, 0.55 kWh/kg x 7.5 kg, one heat-up of 18 kWh, 3.6 kW x 2200 s. */
    @Test
    void drawsEnergyByBaseLoadMassHeatUpAndStandby() {
        assertThat(energy.anyLineHotH()).isCloseTo(1.5, within(EXACT));
        assertThat(energy.kwh().get(EnergyPart.BASE_HOT)).isCloseTo(82.5, within(EXACT));
        assertThat(energy.kwh().get(EnergyPart.BASE_COLD)).isCloseTo(10, within(EXACT));
        assertThat(energy.kwh().get(EnergyPart.MASS)).isCloseTo(4.125, within(EXACT));
        assertThat(energy.kwh().get(EnergyPart.HEAT_UP)).isCloseTo(18, within(EXACT));
        assertThat(energy.kwh().get(EnergyPart.STANDBY)).isCloseTo(2.2, within(EXACT));
        assertThat(energy.totalKwh()).isCloseTo(116.825, within(EXACT));
        LineEnergy own = energy.lines().get(0);
        assertThat(own.totalKwh()).isCloseTo(24.325, within(EXACT));
        assertThat(own.heatUps()).isEqualTo(1);
        assertThat(own.hotH()).isCloseTo(1.5, within(EXACT));
    }

    /**
     * Resin 7 x 0.97 x 2.3; concentrate 7 x 0.03 x 10; compound 0.5 x 7.5; pack-out 2 x 1; labour 1.5 h x 28 x 1.25;
     * energy 116.825 x 0.16; credit 5 x 0.25 and 0.5 x 0.1.
     */
    @Test
    void costsTheSumOfItsParts() {
        assertPart(CostPart.RESIN, 15.617);
        assertPart(CostPart.CONCENTRATE, 2.1);
        assertPart(CostPart.COMPOUND, 3.75);
        assertPart(CostPart.PACK_OUT, 2);
        assertPart(CostPart.LABOUR, 52.5);
        assertPart(CostPart.ENERGY, 18.692);
        assertPart(CostPart.CREDIT, -1.3);
        assertThat(cost.total()).isCloseTo(93.359, within(EXACT));
        assertThat(cost.perGoodSpool(cost.total())).isCloseTo(46.6795, within(EXACT));
    }

    private void assertPart(CostPart part, double amount) {
        assertThat(cost.byPart().get(part)).as(part.label()).isCloseTo(amount, within(EXACT));
    }

    @Test
    void namesWhatEachCostIsFor() {
        List<CostItem> ofInterest = cost.items().stream()
                .filter(item -> item.amount() != 0 && item.part() != CostPart.ENERGY)
                .toList();

        assertThat(ofInterest)
                .extracting(CostItem::item)
                .containsExactly("PLA", "RED", "", "", "operator", CostAccount.CLEAN, CostAccount.MIXED);
    }

    /** 1.5 h at 18 kg/h are 27 kg, less 2 kg; 1600 s without an order are 8 kg of it. Six a kilogram. */
    @Test
    void losesTheContributionOfWhatItCouldHaveMade() {
        List<LostContribution> lost = LostContribution.of(
                plant.economy().prices().orElseThrow().contributionPerKg().orElseThrow(), plant.book(), run);

        assertThat(lost).extracting(LostContribution::polymer).containsExactly("PLA", "PETG");
        assertThat(lost.get(0).lostKg()).isCloseTo(25, within(EXACT));
        assertThat(lost.get(0).amount()).isCloseTo(150, within(EXACT));
        assertThat(lost.get(0).noOrderAmount()).isCloseTo(48, within(EXACT));
        assertThat(lost.get(1).amount()).isZero();
    }

    /** Without energy its cost falls away, and nothing else. */
    @Test
    void costsNothingForEnergyThatNobodyAskedFor() {
        CostAccount without = CostAccount.of(plant.economy().prices().orElseThrow(), Optional.empty(), run);

        assertThat(without.total()).isCloseTo(93.359 - 18.692, within(EXACT));
    }

    /**
     * The same run with the line heated as one zone of 9 kW, 45 kJ/K and 2 h in air of 20 °C. To 205 °C it takes 7200
     * ln(1440 / 1255) = 990.054 s at 9 kW, so all is made 209.946 s earlier, and there is no order for so much longer. To
     * hold 185 K takes 185 x 45 / 7200 = 1.15625 kW, in 600 s of soak and 1809.946 s without an order.
     */
    @Test
    void drawsEnergyByZone() {
        Corner zoned = Corner.of("two-spools")
                .with(
                        "/every_line/heat_up",
                        "{zones: {barrel: {heater: 9 kW, heat_capacity: 45 kJ/K, cooling_time: 2 h}}}");

        EnergyAccount drawn = EnergyAccount.of(plant.economy().energy().orElseThrow(), zoned.run());

        assertThat(drawn.kwh().get(EnergyPart.HEAT_UP)).isCloseTo(9 * 990.054295 / 3600, within(EXACT));
        assertThat(drawn.kwh().get(EnergyPart.STANDBY)).isCloseTo(1.15625 * 2409.945705 / 3600, within(EXACT));
        assertThat(drawn.kwh().get(EnergyPart.MASS)).isCloseTo(4.125, within(EXACT));
        assertThat(drawn.totalKwh()).isCloseTo(82.5 + 10 + 4.125 + 2.475136 + 0.774028, within(2 * EXACT));
        assertThat(zoned.run().lines().get(0).fedKg()).isCloseTo(7.5, within(EXACT));
    }

    @Test
    void runsAlikeWithoutEnergyAndCosts() {
        Corner unasked = Corner.of("two-spools").with("/energy", "null").with("/costs", "null");

        assertThat(unasked.plant().economy()).isEqualTo(Economy.NONE);
        assertThat(unasked.run()).isEqualTo(run);
    }

    /**
     * Both spools are defective and a sample of a lot of two is the lot: the lab grinds them, and the order is content.
     * Nothing is packed, which saves 2; 2 kg more are clean scrap at 0.25; 2 kg less are sold, of 27 possible.
     */
    @Test
    void soldSpoolsAreThoseThatTheLabLets() {
        Corner refused = Corner.of("two-spools")
                .with("/orders/accept_shortfall", "100 %")
                .with(
                        "/lab",
                        "{lot: {spools: 2}, quarantine: 10 spools, defective: {spools: 100 %},"
                                + " sampling: {level: II, aql: 0.65 %}}");
        RunResult ground = refused.run();
        Prices prices = refused.plant().economy().prices().orElseThrow();

        CostAccount account = CostAccount.of(prices, Optional.of(energy), ground);
        List<LostContribution> lost = LostContribution.of(
                prices.contributionPerKg().orElseThrow(), refused.plant().book(), ground);

        assertThat(account.goodSpools()).isZero();
        assertThat(account.byPart().get(CostPart.PACK_OUT)).isZero();
        assertThat(account.byPart().get(CostPart.CREDIT)).isCloseTo(-1.8, within(EXACT));
        assertThat(account.total()).isCloseTo(93.359 - 2 - 0.5, within(EXACT));
        assertThat(lost.get(0).lostKg()).isCloseTo(27, within(EXACT));
    }
}
