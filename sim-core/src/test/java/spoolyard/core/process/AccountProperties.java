package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.assertj.core.data.Offset;
import spoolyard.core.account.LostContribution;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.ChangeoverRules.MeasuredPurge;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.Economy;
import spoolyard.core.plant.Materials;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.Regrind;
import spoolyard.core.plant.Shift;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineUse;
import spoolyard.core.record.LineUse.MaterialUse;
import spoolyard.core.record.QualityResult.ApprovalResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ScrapCause;

/** Materials, heat, energy and money of any small plant add up, each found a second way from the same run. */
class AccountProperties {
    private static final Polymer PETG = new Polymer("PETG", 1270, 0.95, 240, 600);
    private static final Regrind REGRIND = new Regrind(
            List.of("PLA", "PETG"),
            List.of("BLK"),
            0.4,
            List.of(Regrind.Scrap.values()),
            new Regrind.Grinding(1, 0.2, Double.POSITIVE_INFINITY),
            Map.of("PETG", 3.0));
    private static final Materials GRINDING = new Materials(List.of(), Materials.WhenShort.WAIT, Optional.of(REGRIND));

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
                        plant.drying(),
                        Economy.NONE,
                        Materials.NONE)
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
            double hotS = Ticks.toSeconds(SecondAccount.hotTicksOneByOne(List.of(line)));
            assertThat(line.use().standbyS()).isBetween(0.0, hotS);
            assertThat(line.use().hot()).allMatch(period -> period.endTick() > period.startTick());
            assertThat(line.use().materials()).allMatch(use -> use.noOrderKg() <= use.scheduledKg() + 1e-9);
        }
    }

    @Property(tries = 200, seed = "20270305")
    void energyAndMoneyAddUpToWhatTheCountersGive(@ForAll long seed) {
        Plant plant = plant(seed);

        RunResult run = run(plant, seed);

        assertThat(SecondAccount.findings(plant, run)).isEmpty();
    }

    @Property(tries = 50, seed = "20270306")
    void lostContributionIsScheduledLessGoodOutput(@ForAll long seed) {
        Plant plant = plant(seed);

        RunResult run = run(plant, seed);

        List<LostContribution> lost =
                LostContribution.of(SecondAccount.PRICES.contributionPerKg().orElseThrow(), plant.book(), run);
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
        Plant valued =
                plant.with(new Economy(Optional.of(SecondAccount.energy(plant)), Optional.of(SecondAccount.PRICES)));

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
}
