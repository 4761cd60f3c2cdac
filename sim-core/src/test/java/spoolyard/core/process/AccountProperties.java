package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Predicate;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.assertj.core.data.Offset;
import spoolyard.core.account.CostAccount;
import spoolyard.core.account.CostPart;
import spoolyard.core.account.EnergyAccount;
import spoolyard.core.account.EnergyPart;
import spoolyard.core.account.LostContribution;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.ChangeoverRules.MeasuredPurge;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.Economy;
import spoolyard.core.plant.EnergyUse;
import spoolyard.core.plant.Materials;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.Prices;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.Regrind;
import spoolyard.core.plant.Shift;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineUse;
import spoolyard.core.record.LineUse.HotPeriod;
import spoolyard.core.record.LineUse.MaterialUse;
import spoolyard.core.record.QualityResult.ApprovalResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ScrapCause;
import spoolyard.core.record.StockResult;

/** Materials, heat, energy and money of any small plant add up, each found a second way from the same run. */
class AccountProperties {
    private static final Polymer PETG = new Polymer("PETG", 1270, 0.95, 240, 600);
    private static final Prices PRICES = new Prices(
            "EUR",
            map("PLA", 2.25, "PETG", 1.875),
            new Prices.Concentrate(10, map("WHT", 6.5)),
            7.5,
            new Prices.Credit(0.25, 0.125, 3),
            1,
            map("operator", 28.0, "fitter", 34.0),
            0.15625,
            Optional.of(map("PLA", 6.0, "PETG", 7.0)));

    private static Map<String, Double> map(Object... keysAndValues) {
        Map<String, Double> map = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            map.put((String) keysAndValues[i], (Double) keysAndValues[i + 1]);
        }
        return map;
    }

    private static final Regrind REGRIND = new Regrind(
            List.of("PLA", "PETG"),
            List.of("BLK"),
            0.4,
            List.of(Regrind.Scrap.values()),
            new Regrind.Grinding(1, 0.2, Double.POSITIVE_INFINITY),
            Map.of("PETG", 3.0));
    private static final Materials GRINDING = new Materials(List.of(), Materials.WhenShort.WAIT, Optional.of(REGRIND));

    private static EnergyUse energy(Plant plant) {
        return new EnergyUse(
                55,
                20,
                0.5625,
                0.125,
                plant.lines().stream()
                        .map(line -> new EnergyUse.LineEnergy(18, 3.5))
                        .toList());
    }

    /** A random small plant in which the polymer changes too. */
    private static Plant plant(long seed) {
        PlantSketch sketch = RandomPlants.of(seed);
        ChangeoverRules rules = sketch.changeovers;
        sketch.changeovers = new ChangeoverRules(
                List.of(
                        new MeasuredPurge("*", "*", "WHT", "BLK", 2),
                        new MeasuredPurge("*", "*", "BLK", "WHT", 4),
                        new MeasuredPurge("*", "*", "WHT", "WHT", 0),
                        new MeasuredPurge("*", "*", "BLK", "BLK", 1)),
                rules.unmeasured(),
                rules.colourSteps(),
                rules.polymerSteps(),
                rules.diameterSteps(),
                10,
                seed % 3 == 0 ? 0 : 1.5,
                seed % 2 == 0,
                rules.approval());
        orderAnew(sketch, new Random(~seed));
        Plant plant = sketch.plant();
        List<Shift> shifts = plant.shifts().stream()
                .map(shift -> new Shift(
                        shift.name(),
                        shift.startTick(),
                        shift.endTick(),
                        shift.heads(),
                        shift.breaks(),
                        shift.handOverTicks(),
                        shift.handOverOverlaps(),
                        shift.pace(),
                        shift.name().equals("N") ? 1.25 : 1))
                .toList();
        return new Plant(
                        plant.name(),
                        plant.horizonTicks(),
                        plant.lines(),
                        plant.crew(),
                        shifts,
                        plant.changeovers(),
                        plant.finishing(),
                        plant.book(),
                        plant.drying())
                .with(seed % 2 == 0 ? GRINDING : Materials.NONE);
    }

    private static void orderAnew(PlantSketch sketch, Random random) {
        sketch.orders.clear();
        sketch.opening.clear();
        int orders = 3 + random.nextInt(20);
        for (int i = 0; i < orders; i++) {
            Polymer polymer = random.nextBoolean() ? PETG : PlantSketch.DRIED_PLA;
            Colour colour = random.nextBoolean() ? PlantSketch.WHITE : PlantSketch.BLACK;
            sketch.order("SO-" + i, new Product(polymer, colour, 1.75, 0.5), 2 + random.nextInt(12));
        }
        RandomPlants.fillRacks(sketch, random);
    }

    private static RunResult run(Plant plant, long seed) {
        return new PlantRun(plant, seed, 0, EventLog.SILENT).run();
    }

    @Property(tries = 200, seed = "20270304")
    void materialsAndHeatAddUpOnEveryLine(@ForAll long seed) {
        Plant plant = plant(seed);

        RunResult run = run(plant, seed);

        for (LineResult line : run.lines()) {
            double fedKg = line.use().materials().stream()
                    .mapToDouble(MaterialUse::fedKg)
                    .sum();
            assertThat(fedKg + line.use().compoundKg()).isCloseTo(line.fedKg(), slack(line.fedKg()));
            assertThat(line.use().compoundKg())
                    .isLessThanOrEqualTo(line.scrapKg().get(ScrapCause.POLYMER_PURGE) + 1e-9);
            double hotS = Ticks.toSeconds(hotTicksOneByOne(List.of(line)));
            assertThat(line.use().standbyS()).isBetween(0.0, hotS);
            assertThat(line.use().hot()).allMatch(period -> period.endTick() > period.startTick());
            assertThat(line.use().materials()).allMatch(use -> use.noOrderKg() <= use.scheduledKg() + 1e-9);
        }
    }

    @Property(tries = 200, seed = "20270305")
    void energyAndMoneyAddUpToWhatTheCountersGive(@ForAll long seed) {
        Plant plant = plant(seed);

        RunResult run = run(plant, seed);

        EnergyAccount energy = EnergyAccount.of(energy(plant), run);
        CostAccount cost = CostAccount.of(PRICES, Optional.of(energy), run);
        BigDecimal kwh = kwh(run);
        assertThat(energy.totalKwh()).isCloseTo(kwh.doubleValue(), slack(kwh.doubleValue()));
        assertThat(energy.kwh().containsKey(EnergyPart.GRINDING))
                .isEqualTo(!run.regrind().isEmpty());
        assertThat(energy.kwh())
                .hasSize(EnergyPart.values().length - (run.regrind().isEmpty() ? 1 : 0));
        double expected = money(plant, run, kwh);
        assertThat(cost.total()).isCloseTo(expected, slack(expected));
        assertThat(cost.byPart().keySet()).containsExactly(CostPart.values());
        assertThat(cost.byPart().values().stream().mapToDouble(x -> x).sum()).isCloseTo(cost.total(), slack(expected));
    }

    @Property(tries = 50, seed = "20270306")
    void lostContributionIsScheduledLessGoodOutput(@ForAll long seed) {
        Plant plant = plant(seed);

        RunResult run = run(plant, seed);

        List<LostContribution> lost =
                LostContribution.of(PRICES.contributionPerKg().orElseThrow(), plant.book(), run);
        double scheduledKg = run.lines().stream()
                .flatMap(line -> line.use().materials().stream())
                .filter(use -> !use.polymer().isEmpty())
                .mapToDouble(MaterialUse::scheduledKg)
                .sum();
        double goodKg = run.lines().stream().mapToDouble(LineResult::goodKg).sum();
        assertThat(lost.stream().mapToDouble(LostContribution::lostKg).sum())
                .isCloseTo(scheduledKg - goodKg, within(1e-6 * (1 + scheduledKg)));
    }

    @Property(tries = 50, seed = "20270307")
    void askingForEnergyAndMoneyChangesNothingElse(@ForAll long seed) {
        Plant plant = plant(seed);
        Plant valued = plant.with(new Economy(Optional.of(energy(plant)), Optional.of(PRICES)));

        assertThat(run(valued, seed)).isEqualTo(run(plant, seed));
    }

    @Example
    void randomPlantsUseEveryCounter() {
        List<RunResult> runs = new Random(20270308)
                .longs(100)
                .mapToObj(seed -> run(plant(seed), seed))
                .toList();

        List<LineUse> uses = runs.stream()
                .flatMap(run -> run.lines().stream())
                .map(LineResult::use)
                .toList();
        List<ApprovalResult> approvals =
                runs.stream().flatMap(run -> run.quality().approvals().stream()).toList();
        assertThat(approvals).anyMatch(each -> each.released() > 0).anyMatch(each -> each.scrapped() > 0);
        assertThat(count(uses, use -> use.heaters()
                        .filter(drawn -> drawn.heatUpKwh() > 0 && drawn.standbyKwh() > 0)
                        .isPresent()))
                .isPositive();
        assertThat(count(uses, use -> use.compoundKg() > 0)).isPositive();
        assertThat(count(uses, use -> use.heatUps() > 1)).isPositive();
        assertThat(count(uses, use -> use.standbyS() > 0)).isPositive();
        assertThat(count(uses, use -> use.materials().size() > 2)).isPositive();
        assertThat(count(uses, use -> use.materials().stream().anyMatch(each -> each.noOrderKg() > 0)))
                .isPositive();
    }

    private static long count(List<LineUse> uses, Predicate<LineUse> holds) {
        return uses.stream().filter(holds).count();
    }

    private static Offset<Double> slack(double size) {
        return within(1e-9 * (1 + Math.abs(size)));
    }

    /** Sweeps over all beginnings and ends of heat, counting the lines that are hot. */
    private static long hotTicksOneByOne(List<LineResult> lines) {
        TreeMap<Long, Integer> changes = new TreeMap<>();
        for (LineResult line : lines) {
            for (HotPeriod period : line.use().hot()) {
                changes.merge(period.startTick(), 1, Integer::sum);
                changes.merge(period.endTick(), -1, Integer::sum);
            }
        }
        long ticks = 0;
        int hot = 0;
        long since = 0;
        for (Map.Entry<Long, Integer> change : changes.entrySet()) {
            ticks += hot > 0 ? change.getKey() - since : 0;
            since = change.getKey();
            hot += change.getValue();
        }
        return ticks;
    }

    private static BigDecimal kwh(RunResult run) {
        BigDecimal hotH = big(Ticks.toHours(hotTicksOneByOne(run.lines())));
        BigDecimal kwh = big(55).multiply(hotH)
                .add(big(20).multiply(big(Ticks.toHours(run.horizonTicks())).subtract(hotH)));
        for (LineResult line : run.lines()) {
            kwh = kwh.add(big(0.5625).multiply(big(line.fedKg()))).add(heaters(line.use()));
        }
        return kwh.add(big(0.125).multiply(big(groundKg(run))));
    }

    /** From the stock alone: what came into it is ground scrap less a fifth as dust. */
    private static double groundKg(RunResult run) {
        return run.stocks().stream().mapToDouble(StockResult::received).sum() / 0.8;
    }

    private static BigDecimal heaters(LineUse use) {
        return use.heaters()
                .map(drawn -> big(drawn.heatUpKwh()).add(big(drawn.standbyKwh())))
                .orElse(big(18).multiply(big(use.heatUps())).add(big(3.5).multiply(big(use.standbyS() / 3600))));
    }

    private static double money(Plant plant, RunResult run, BigDecimal kwh) {
        BigDecimal sum = kwh.multiply(big(0.15625)).add(big(run.flow().packed()));
        for (StockResult regrind : run.stocks()) {
            sum = sum.subtract(big(regrind.used()).multiply(big(regrind.name().equals("PLA") ? 2.25 : 1.875)));
        }
        sum = sum.add(big(groundKg(run)).multiply(big(0.25)));
        for (LineResult line : run.lines()) {
            for (MaterialUse use : line.use().materials()) {
                double resin =
                        use.polymer().equals("PLA") ? 2.25 : use.polymer().equals("PETG") ? 1.875 : 0;
                double concentrate =
                        use.colour().equals("WHT") ? 0.04 * 6.5 : use.colour().equals("BLK") ? 0.03 * 10 : 0;
                double pure = use.colour().equals("WHT") ? 0.96 : use.colour().equals("BLK") ? 0.97 : 1;
                sum = sum.add(
                        big(use.fedKg()).multiply(big(pure).multiply(big(resin)).add(big(concentrate))));
            }
            BigDecimal mixedKg = big(line.scrapKg().get(ScrapCause.POLYMER_PURGE));
            sum = sum.subtract(big(line.gauge().bGradeKg()).multiply(big(3)));
            sum = sum.add(big(line.use().compoundKg()).multiply(big(7.5)))
                    .subtract(big(line.totalScrapKg()).subtract(mixedKg).multiply(big(0.25)))
                    .subtract(mixedKg.multiply(big(0.125)));
        }
        return sum.add(big(pay(plant))).doubleValue();
    }

    /** From the calendar alone: heads times hours in the run times rate, the hand-over before the shift on top. */
    private static double pay(Plant plant) {
        double sum = 0;
        for (Shift shift : plant.shifts()) {
            long from = Math.max(0, shift.startTick());
            long to = Math.min(plant.horizonTicks(), shift.endTick());
            boolean briefed = shift.handOverOverlaps() && shift.startTick() >= 0;
            double hours = to > from ? Ticks.toHours(to - from + (briefed ? shift.handOverTicks() : 0)) : 0;
            double perH = 28 * shift.heads().get(0) + 34 * shift.heads().get(1);
            sum += hours * perH * (shift.name().equals("N") ? 1.25 : 1);
        }
        return sum;
    }

    private static BigDecimal big(double value) {
        return BigDecimal.valueOf(value);
    }
}
