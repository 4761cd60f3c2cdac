package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spoolyard.core.account.CostAccount;
import spoolyard.core.account.CostPart;
import spoolyard.core.account.EnergyAccount;
import spoolyard.core.account.EnergyPart;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.EnergyUse;
import spoolyard.core.plant.HeatUp;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.MaterialSupply;
import spoolyard.core.plant.Materials;
import spoolyard.core.plant.Prices;
import spoolyard.core.plant.Regrind;
import spoolyard.core.plant.Regrind.Scrap;
import spoolyard.core.plant.StartStop;
import spoolyard.core.plant.StockItem;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.RegrindResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ScrapCause;
import spoolyard.core.record.StockResult;

/**
 * Hand-worked cases of regrind: 10 % of the natural part, in black only. A line makes 18 kg/h = 5 g/s; black is 97 % natural,
 * so it takes 4.85 g/s of natural, of which 0.485 g/s regrind. White is 96 % natural. All arithmetic by hand.
 */
class RegrindTest {
    private static final double EXACT = 1e-6;
    private static final List<Scrap> ALL = List.of(Scrap.values());

    private static Regrind regrind(List<Scrap> scrap, double roomKg, double openingKg) {
        return new Regrind(
                List.of("PLA"),
                List.of("BLK"),
                0.1,
                scrap,
                new Regrind.Grinding(2, 0.1, roomKg),
                Map.of("PLA", openingKg));
    }

    private static PlantSketch with(PlantSketch sketch, Regrind regrind) {
        sketch.materials = new Materials(sketch.materials.stocks(), sketch.materials.whenShort(), Optional.of(regrind));
        return sketch;
    }

    private static RunResult run(PlantSketch sketch) {
        return new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();
    }

    private static StockResult stock(RunResult run, String kind) {
        return run.stocks().stream()
                .filter(each -> each.kind().equals(kind))
                .findFirst()
                .orElseThrow();
    }

    /** Ten white spools after a start of 600 s to waste, then black: 3 kg of white start-up scrap. */
    private static PlantSketch whiteThenBlack() {
        PlantSketch sketch =
                new PlantSketch().order("SO-1", PlantSketch.WHITE_PLA, 10).order("SO-2", PlantSketch.BLACK_PLA, 1000);
        sketch.runningAtStart = false;
        sketch.startStop = new StartStop(
                new HeatUp.Timed(Law.ZERO),
                Law.ZERO,
                Law.ZERO,
                new Law.Fixed(600),
                0,
                Law.ZERO,
                0,
                EndOfPeriod.SHUT_DOWN,
                0,
                CrewNeed.NOBODY);
        return sketch;
    }

    /**
     * 5 kg of regrind last 5000 / 0.485 = 10309.278 s of black; of 8 h the line then runs 18490.722 s on natural alone. Of
     * 144 kg fed 139.68 kg are natural: 5 kg regrind, 134.68 kg resin. Mean level 2.5 kg x 10309.278 / 28800 = 0.894902 kg.
     */
    @Test
    void blackTakesItsShareOfRegrindUntilThereIsNone() {
        PlantSketch sketch = new PlantSketch()
                .order("SO-1", PlantSketch.BLACK_PLA, 1000)
                .store(StockItem.Kind.RESIN, "PLA", 500)
                .store(StockItem.Kind.CONCENTRATE, "BLK", 50);

        RunResult run = run(with(sketch, regrind(ALL, 100, 5)));

        assertThat(stock(run, "regrind").used()).isCloseTo(5, within(EXACT));
        assertThat(stock(run, "regrind").closing()).isCloseTo(0, within(EXACT));
        assertThat(stock(run, "regrind").timesOut()).isEqualTo(1);
        assertThat(stock(run, "regrind").outS()).isCloseTo(18490.722, within(1e-3));
        assertThat(stock(run, "regrind").mean()).isCloseTo(0.894902, within(EXACT));
        assertThat(stock(run, "resin").used()).isCloseTo(134.68, within(EXACT));
        assertThat(stock(run, "concentrate").used()).isCloseTo(4.32, within(EXACT));
        assertThat(run.lines().get(0).fedKg()).isCloseTo(144, within(EXACT));
    }

    /**
     * 3 kg of white come at 600 s: a batch of 2 kg is ground, 1 kg waits; less 10 % dust 1.8 kg are in store. Black draws
     * from its purge on, at 600 + 10 x 200 = 2600 s, and has taken them 1800 / 0.485 = 3711.340 s later. Level 1.8 kg for
     * 2000 s, then falling to 0: mean (3600 + 0.9 x 3711.340) / 28800 = 0.240979 kg.
     */
    @Test
    void cleanScrapIsGroundByTheBatch() {
        RunResult run = run(with(whiteThenBlack(), regrind(ALL, 100, 0)));

        assertThat(run.lines().get(0).scrapKg().get(ScrapCause.START_UP)).isCloseTo(3, within(EXACT));
        assertThat(run.lines().get(0).scrapKg().get(ScrapCause.COLOUR_PURGE)).isCloseTo(2, within(EXACT));
        RegrindResult regrind = run.regrind().get(0);
        assertThat(regrind.broughtKg()).isCloseTo(3, within(EXACT));
        assertThat(regrind.groundKg()).isCloseTo(2, within(EXACT));
        assertThat(regrind.dustKg()).isCloseTo(0.2, within(EXACT));
        assertThat(regrind.heldKg()).isCloseTo(1, within(EXACT));
        assertThat(regrind.takenKg()).isCloseTo(1.8, within(EXACT));
        assertThat(stock(run, "regrind").received()).isCloseTo(1.8, within(EXACT));
        assertThat(stock(run, "regrind").outS()).isCloseTo(600 + 28800 - 6311.340, within(1e-3));
        assertThat(stock(run, "regrind").mean()).isCloseTo(0.240979, within(EXACT));
    }

    /**
     * As above, in money. White 13 kg x 0.96 + black 131 kg x 0.97 = 139.55 kg natural, less 1.8 kg of regrind = 137.75 kg
     * at 2.25. Scrap 3 + 2 kg, of which 2 kg are ground and 3 kg sold at 0.25. Grinding 2 kg x 0.125 kWh/kg at 0.16.
     */
    @Test
    void regrindSavesResinAndCostsCreditAndEnergy() {
        RunResult run = run(with(whiteThenBlack(), regrind(ALL, 100, 0)));
        Prices prices = new Prices(
                "EUR",
                Map.of("PLA", 2.25),
                new Prices.Concentrate(10, Map.of()),
                0,
                new Prices.Credit(0.25, 0, 0),
                0,
                Map.of("operator", 0.0),
                0.16,
                Optional.empty());
        EnergyUse use = new EnergyUse(0, 0, 0, 0.125, List.of(new EnergyUse.LineEnergy(0, 0)));

        EnergyAccount energy = EnergyAccount.of(use, run);
        Map<CostPart, Double> cost =
                CostAccount.of(prices, Optional.of(energy), run).byPart();

        assertThat(energy.kwh().get(EnergyPart.GRINDING)).isCloseTo(0.25, within(EXACT));
        assertThat(cost.get(CostPart.RESIN)).isCloseTo(137.75 * 2.25, within(EXACT));
        assertThat(cost.get(CostPart.CONCENTRATE)).isCloseTo((13 * 0.04 + 131 * 0.03) * 10, within(EXACT));
        assertThat(cost.get(CostPart.CREDIT)).isCloseTo(-0.75, within(EXACT));
        assertThat(cost.get(CostPart.ENERGY)).isCloseTo(0.04, within(EXACT));
    }

    /** It would be fed a second time. */
    @Test
    void scrapOfWhatTakesRegrindIsNeverGround() {
        PlantSketch sketch = whiteThenBlack();
        sketch.orders.remove(0);

        RunResult run = run(with(sketch, regrind(ALL, 100, 5)));

        assertThat(run.lines().get(0).scrapKg().get(ScrapCause.START_UP)).isCloseTo(3, within(EXACT));
        assertThat(run.regrind().get(0).broughtKg()).isZero();
    }

    /**
     * Of the white spools, a known number by the time at which black begins, all but the 40 good ones are ground: with 1/2
     * each, negative binomial, 15 to 74 in 99.9 %. Less 400 s of purge 142 spools are full in 8 h, the last at the end.
     */
    @Test
    void rejectedSpoolsAreScrapOfTheirOwnProduct() {
        PlantSketch sketch =
                new PlantSketch().order("SO-1", PlantSketch.WHITE_PLA, 40).order("SO-2", PlantSketch.BLACK_PLA, 1000);
        sketch.defects = 0.5;

        RunResult run = run(with(sketch, regrind(List.of(Scrap.SPOOLS), 100, 0)));

        double rejectedKg = run.lines().get(0).scrapKg().get(ScrapCause.WINDING_DEFECT);
        double whiteS = run.changeovers().get(0).startTick() / (double) Ticks.ofSeconds(1);
        assertThat(run.regrind().get(0).broughtKg()).isCloseTo(whiteS / 200 - 40, within(1e-4));
        assertThat(run.regrind().get(0).broughtKg()).isBetween(15.0, 74.0);
        assertThat(rejectedKg).isCloseTo(141 - run.lines().get(0).goodSpools(), within(EXACT));
    }

    /** Only spools are to be ground; the start is sold. */
    @Test
    void scrapOfASortThatIsNotAskedForIsSold() {
        RunResult run = run(with(whiteThenBlack(), regrind(List.of(Scrap.SPOOLS, Scrap.STRANDS), 100, 0)));

        assertThat(run.regrind().get(0).broughtKg()).isZero();
    }

    /** 2 kg become 1.8 kg, which find 1.9 kg of room. */
    @Test
    void dustTakesNoRoom() {
        RunResult run = run(with(whiteThenBlack(), regrind(ALL, 1.9, 0)));

        assertThat(run.regrind().get(0).noRoomKg()).isZero();
        assertThat(stock(run, "regrind").received()).isCloseTo(1.8, within(EXACT));
    }

    /** 1.8 kg find 1.5 kg of room. */
    @Test
    void aBatchThatFindsNoRoomIsSold() {
        RunResult run = run(with(whiteThenBlack(), regrind(ALL, 1.5, 0)));

        assertThat(run.regrind().get(0).noRoomKg()).isCloseTo(2, within(EXACT));
        assertThat(run.regrind().get(0).groundKg()).isZero();
        assertThat(stock(run, "regrind").received()).isZero();
    }

    /**
     * A blend by the batch of 10 kg into a hopper of 30 kg that starts full takes 0.097 kg of regrind for each kg: 2.91 kg at
     * once, then 0.97 kg, then the last 0.12 kg of 4 kg. Each 2000 s there is room for a batch, loaded 60 s later, the
     * fourteenth at 28060 s. Of 170 kg weighed 164.9 kg are natural.
     */
    @Test
    void aBlendTakesItsRegrindByTheBatch() {
        PlantSketch sketch =
                new PlantSketch().order("SO-1", PlantSketch.BLACK_PLA, 1000).store(StockItem.Kind.RESIN, "PLA", 500);
        sketch.supply = Optional.of(new MaterialSupply(
                MaterialSupply.Layout.BLEND_FIRST,
                30,
                10,
                new Law.Fixed(60),
                new Law.Fixed(600),
                CrewNeed.NOBODY,
                true));

        RunResult run = run(with(sketch, regrind(ALL, 100, 4)));

        assertThat(stock(run, "regrind").used()).isCloseTo(4, within(EXACT));
        assertThat(stock(run, "resin").used()).isCloseTo(160.9, within(EXACT));
    }

    /** 30 kg of a black blend, 10 kg of it fed, then the order is over: 20 kg go back, with a tenth of their natural part. */
    @Test
    void whatIsEmptiedOutOfADryerGivesBackItsRegrind() {
        PlantSketch sketch =
                new PlantSketch().order("SO-1", PlantSketch.BLACK_PLA, 10).order("SO-2", PlantSketch.WHITE_PLA, 10);
        sketch.supply = Optional.of(new MaterialSupply(
                MaterialSupply.Layout.BLEND_FIRST,
                30,
                30,
                new Law.Fixed(60),
                new Law.Fixed(600),
                CrewNeed.NOBODY,
                true));

        RunResult run = run(with(sketch, regrind(ALL, 100, 4)));

        assertThat(stock(run, "regrind").used()).isCloseTo(10 * 0.097, within(EXACT));
        assertThat(stock(run, "regrind").closing()).isCloseTo(4 - 0.97, within(EXACT));
    }

    /**
     * A hopper of natural that is loaded by the batch holds no regrind: that is dosed at the throat, and the hopper lasts
     * longer, as does the 3 % of black. Of 5 g/s 0.15 are colour and 0.485 regrind; 30000 / 4.365 = 6872.852 s; 5 kg of
     * regrind last longer than that: 3.333333 kg are taken until then, and 30 / 0.873 kg fed.
     */
    @Test
    void aHopperOfNaturalLastsLongerBesideRegrind() {
        PlantSketch sketch =
                new PlantSketch().order("SO-1", PlantSketch.BLACK_PLA, 1000).store(StockItem.Kind.RESIN, "PLA", 30);
        sketch.supply = Optional.of(new MaterialSupply(
                MaterialSupply.Layout.DOSE_AT_THROAT,
                30,
                30,
                new Law.Fixed(60),
                new Law.Fixed(600),
                CrewNeed.NOBODY,
                true));

        RunResult run = run(with(sketch, regrind(ALL, 100, 5)));

        assertThat(run.lines().get(0).fedKg()).isCloseTo(34.364261, within(EXACT));
        assertThat(stock(run, "regrind").used()).isCloseTo(3.333333, within(EXACT));
    }
}
