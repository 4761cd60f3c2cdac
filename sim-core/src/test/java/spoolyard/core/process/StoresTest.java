package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Finishing;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.MaterialSupply;
import spoolyard.core.plant.Materials;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.StockItem;
import spoolyard.core.plant.StockItem.Delivery;
import spoolyard.core.plant.StockItem.Kind;
import spoolyard.core.plant.StockItem.Reorder;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineState;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ServerState;
import spoolyard.core.record.StockResult;

/** Hand-worked cases of what is in store. A line makes 18 kg/h, a spool of 1 kg in 200 s; a colour takes 4 % of white. */
class StoresTest {
    private static final double EXACT = 1e-6;

    private static StockItem resin(double opening, List<Delivery> deliveries, Optional<Reorder> reorder) {
        return new StockItem(Kind.RESIN, "PLA", Optional.empty(), opening, deliveries, reorder);
    }

    private static RunResult run(PlantSketch sketch) {
        return new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();
    }

    private static double seconds(RunResult run, int line, LineState state) {
        return run.lines().get(line).stateS().get(state);
    }

    /** White in natural resin only, so that all mass is resin. */
    private static final Product NATURAL =
            new Product(PlantSketch.PLA, new Colour("NAT", "Natural", 88, 0, 6, 1, 0.2, 0), 1.75, 1);

    /**
     * Demand 18 kg/h, order quantity 90 kg (every 5 h), lead time 2 h, reorder point 54 kg = lead-time demand of 36 kg +
     * 18 kg. Sawtooth between 18 and 108 kg: mean stock Q/2 + R - D L = 63 kg, one order every Q/D = 5 h, never out.
     * Source: Hopp and Spearman, Factory Physics, section 2.2 and 2.4.3 (from memory); arithmetic by hand.
     */
    @Test
    void aSteadyDemandMakesTheSawtoothOfTheTextbook() {
        PlantSketch sketch = new PlantSketch().order("SO-1", NATURAL, 10000);
        sketch.hours = 100;
        sketch.store(resin(108, List.of(), Optional.of(new Reorder(54, 90, new Law.Fixed(7200), 18))));

        StockResult stock = run(sketch).stocks().get(0);

        assertThat(stock.mean()).isCloseTo(63, within(EXACT));
        assertThat(stock.lowest()).isCloseTo(18, within(EXACT));
        assertThat(stock.ordersPlaced()).isEqualTo(20);
        assertThat(stock.outS()).isZero();
        assertThat(stock.used()).isCloseTo(1800, within(EXACT));
    }

    /**
     * As above with a reorder point of 18 kg: the stock is out 1 h after the order and the delivery comes 1 h later. Lost
     * demand: a cycle takes Q/D + 1 h = 6 h, of which 1 h out; 48 h are 8 cycles; mean stock (90/2) x 5/6 = 37.5 kg.
     */
    @Test
    void aReorderPointBelowTheLeadTimeDemandStopsTheLineInEveryCycle() {
        PlantSketch sketch = new PlantSketch().order("SO-1", NATURAL, 10000);
        sketch.hours = 48;
        sketch.store(resin(90, List.of(), Optional.of(new Reorder(18, 90, new Law.Fixed(7200), 0))));

        RunResult run = run(sketch);

        StockResult stock = run.stocks().get(0);
        assertThat(stock.ordersPlaced()).isEqualTo(8);
        assertThat(stock.outS()).isCloseTo(8 * 3600, within(EXACT));
        assertThat(stock.mean()).isCloseTo(37.5, within(EXACT));
        assertThat(seconds(run, 0, LineState.NO_RESIN)).isCloseTo(8 * 3600, within(EXACT));
        assertThat(stock.lineWaitS()).isCloseTo(8 * 3600, within(EXACT));
    }

    /**
     * Two lines draw 36 kg/h from 54 kg: out after 1.5 h, each line on its 28th spool (27 x 200 s = 5400 s, so 27 are
     * full). 18 kg come at 2 h and last half an hour, the next 9 spools each; then nothing comes.
     */
    @Test
    void twoLinesRunOutOfOneResinTogether() {
        PlantSketch sketch = new PlantSketch();
        sketch.lineCount = 2;
        sketch.heads = List.of(2);
        sketch.hours = 8;
        sketch.order("SO-1", NATURAL, 1000).order("SO-2", NATURAL, 1000);
        sketch.store(resin(54, List.of(new Delivery(Ticks.ofSeconds(7200), 18)), Optional.empty()));

        RunResult run = run(sketch);

        for (int line = 0; line < 2; line++) {
            assertThat(run.lines().get(line).fedKg()).isCloseTo(36, within(EXACT));
            assertThat(seconds(run, line, LineState.RUNNING)).isCloseTo(7200, within(1e-3));
            assertThat(seconds(run, line, LineState.NO_RESIN)).isCloseTo(21600, within(1e-3));
        }
        assertThat(run.stocks().get(0).timesOut()).isEqualTo(2);
        assertThat(run.stocks().get(0).closing()).isCloseTo(0, within(EXACT));
        assertThat(run.stocks().get(0).outS()).isCloseTo(1800 + 19800, within(1e-3));
        assertThat(run.stocks().get(0).lineWaitS()).isCloseTo(2 * 21600, within(1e-3));
    }

    /**
     * 0.4 kg of white concentrate last for 10 kg, 2000 s; then the black order is made, of which there is enough, from 2400 s
     * on: the 131st spool is off the winder at 28 650 s.
     */
    @Test
    void aLineThatLacksAColourMakesAnotherOrder() {
        PlantSketch sketch = shortOfWhite();

        RunResult run = run(sketch);

        assertThat(run.lines().get(0).stateS().get(LineState.PURGING)).isCloseTo(400, within(EXACT));
        assertThat(seconds(run, 0, LineState.NO_CONCENTRATE)).isZero();
        assertThat(run.orders().get(0).goodSpools()).isEqualTo(10);
        assertThat(run.orders().get(1).goodSpools()).isEqualTo(131);
        assertThat(run.stocks().get(0).used()).isCloseTo(0.4, within(EXACT));
    }

    @Test
    void aLineThatMayMakeNoOtherOrderWaits() {
        PlantSketch sketch = shortOfWhite();
        sketch.materials = new Materials(sketch.materials.stocks(), Materials.WhenShort.WAIT, Optional.empty());

        RunResult run = run(sketch);

        assertThat(seconds(run, 0, LineState.NO_CONCENTRATE)).isCloseTo(8 * 3600 - 2000, within(EXACT));
        assertThat(run.orders().get(1).goodSpools()).isZero();
    }

    private static PlantSketch shortOfWhite() {
        return new PlantSketch()
                .order("SO-1", PlantSketch.WHITE_PLA, 1000)
                .order("SO-2", PlantSketch.BLACK_PLA, 1000)
                .store(Kind.CONCENTRATE, "WHT", 0.4);
    }

    /** Five spools: the line fills five and stops, for its strand gets no sixth. */
    @Test
    void aLineStopsWhenItGetsNoEmptySpool() {
        PlantSketch sketch = new PlantSketch().order("SO-1", NATURAL, 1000).store(Kind.SPOOLS, "all", 5);

        RunResult run = run(sketch);

        assertThat(run.lines().get(0).goodSpools()).isEqualTo(5);
        assertThat(run.stocks().get(0).used()).isEqualTo(5);
        assertThat(seconds(run, 0, LineState.NO_EMPTY_SPOOL)).isCloseTo(8 * 3600 - 1000, within(EXACT));
    }

    /** Two strands, a spool in 400 s each, and five spools: after two each, at 800 s, the fifth is too few for both. */
    @Test
    void everyStrandNeedsASpool() {
        PlantSketch sketch = new PlantSketch().order("SO-1", NATURAL, 1000).store(Kind.SPOOLS, "all", 5);
        sketch.strands = 2;

        RunResult run = run(sketch);

        assertThat(run.stocks().get(0).used()).isEqualTo(4);
        assertThat(run.stocks().get(0).closing()).isEqualTo(1);
        assertThat(seconds(run, 0, LineState.NO_EMPTY_SPOOL)).isCloseTo(8 * 3600 - 800, within(1e-3));
    }

    /**
     * Cartons for 4 spools each: three of them hold 12 spools; the 13th comes at 2650 s and waits, until 2 more come at
     * 14 400 s. Eight are packed by 14 560 s, and the others wait to the end.
     */
    @Test
    void withoutCartonsNothingIsPacked() {
        PlantSketch sketch = new PlantSketch().order("SO-1", NATURAL, 1000);
        sketch.cartons.add(new Finishing.CartonSize(1, 4));
        sketch.store(new StockItem(
                Kind.CARTONS,
                "all",
                Optional.empty(),
                3,
                List.of(new Delivery(Ticks.ofSeconds(4 * 3600), 2)),
                Optional.empty()));

        RunResult run = run(sketch);

        assertThat(run.flow().packed()).isEqualTo(20);
        assertThat(run.flow().cartons()).isEqualTo(5);
        assertThat(run.stocks().get(0).closing()).isZero();
        assertThat(run.finishing().get(0).stateS().get(ServerState.NO_CARTON))
                .isCloseTo(14_400 - 2650 + 28_800 - 14_560, within(1e-3));
    }

    /** A size without cartons does not hold up the other. */
    @Test
    void spoolsThatThereAreCartonsForArePackedFirst() {
        Product small = new Product(PlantSketch.PLA, NATURAL.colour(), 1.75, 0.5);
        PlantSketch sketch = new PlantSketch().order("SO-1", NATURAL, 5).order("SO-2", small, 20);
        sketch.store(new StockItem(Kind.CARTONS, "1", Optional.of(1.0), 0, List.of(), Optional.empty()));

        RunResult run = run(sketch);

        assertThat(run.orders().get(0).packedSpools()).isZero();
        assertThat(run.orders().get(1).packedSpools()).isEqualTo(20);
    }

    /**
     * Batches of 10 kg into a hopper of 30 kg that starts full: 30 kg are taken at once. After each 10 kg, which last 2000 s,
     * there is room for a batch, which takes 60 s to load; 70 kg are through after 70 kg / 18 kg/h = 14000 s.
     */
    @Test
    void batchesAreTakenWhenTheyAreWeighed() {
        PlantSketch sketch = batches(MaterialSupply.Layout.DOSE_AT_THROAT).store(Kind.RESIN, "PLA", 70);

        RunResult run = run(sketch);

        assertThat(run.lines().get(0).fedKg()).isCloseTo(70, within(EXACT));
        assertThat(run.stocks().get(0).used()).isCloseTo(70, within(EXACT));
        assertThat(seconds(run, 0, LineState.WAITING_FOR_MATERIAL)).isZero();
        assertThat(seconds(run, 0, LineState.NO_RESIN)).isCloseTo(28800 - 14000, within(1e-3));
    }

    /** Colour is dosed at the throat: 48 kg of natural in store make 48 / 0.96 kg of white with 2 kg of concentrate. */
    @Test
    void aHopperOfNaturalHoldsNoColourThatIsDosedAtTheThroat() {
        PlantSketch sketch = batches(MaterialSupply.Layout.DOSE_AT_THROAT);
        sketch.orders.clear();
        sketch.order("SO-1", PlantSketch.WHITE_PLA, 1000)
                .store(Kind.RESIN, "PLA", 48)
                .store(Kind.CONCENTRATE, "WHT", 10);

        RunResult run = run(sketch);

        assertThat(run.lines().get(0).fedKg()).isCloseTo(50, within(EXACT));
        assertThat(run.stocks().get(0).used()).isCloseTo(48, within(EXACT));
        assertThat(run.stocks().get(1).used()).isCloseTo(2, within(EXACT));
    }

    /**
     * 4 % of 30 kg + 10 kg are 1.6 kg of white; the last batch is as large as the 0.2 kg that are left, 5 kg. 45 kg are
     * through after 9000 s.
     */
    @Test
    void aBlendTakesItsColourByTheBatch() {
        PlantSketch sketch = batches(MaterialSupply.Layout.BLEND_FIRST);
        sketch.orders.clear();
        sketch.order("SO-1", PlantSketch.WHITE_PLA, 1000).store(Kind.CONCENTRATE, "WHT", 1.8);

        RunResult run = run(sketch);

        assertThat(run.lines().get(0).fedKg()).isCloseTo(45, within(EXACT));
        assertThat(run.stocks().get(0).closing()).isCloseTo(0, within(EXACT));
        assertThat(seconds(run, 0, LineState.NO_CONCENTRATE)).isCloseTo(28_800 - 9000, within(1e-3));
    }

    private static PlantSketch batches(MaterialSupply.Layout layout) {
        PlantSketch sketch = new PlantSketch().order("SO-1", NATURAL, 1000);
        sketch.supply = Optional.of(
                new MaterialSupply(layout, 30, 10, new Law.Fixed(60), new Law.Fixed(600), CrewNeed.NOBODY, true));
        return sketch;
    }

    /** 10 kg of purge at 18 kg/h take 2000 s of white; 0.2 kg of it are gone after 5 kg, and the line stands. */
    @Test
    void aPurgeStopsWhenItsColourIsOut() {
        PlantSketch sketch = new PlantSketch()
                .order("SO-1", PlantSketch.BLACK_PLA, 3)
                .order("SO-2", PlantSketch.WHITE_PLA, 100)
                .store(Kind.CONCENTRATE, "WHT", 0.2);

        RunResult run = run(sketch);

        LineResult line = run.lines().get(0);
        assertThat(line.stateS().get(LineState.PURGING)).isCloseTo(1000, within(EXACT));
        assertThat(line.stateS().get(LineState.NO_CONCENTRATE)).isCloseTo(8 * 3600 - 600 - 1000, within(EXACT));
    }

    /**
     * Lead time 5 h, reorder point 99 kg = 90 kg + 9 kg, 18 kg an order: with 108 kg at first an order goes out at 0.5, 1.5 ...
     * 19.5 h, five of them always on their way; the first comes at 5.5 h into 9 kg. Area to 5.5 h (108 + 9) / 2 x 5.5 = 321.75
     * kg h, then 18 kg on average to 19.5 h and 22.5 kg x 0.5 h.
     */
    @Test
    void whatIsOnItsWayCountsAgainstTheReorderPoint() {
        PlantSketch sketch = new PlantSketch().order("SO-1", NATURAL, 10000);
        sketch.hours = 20;
        sketch.store(resin(108, List.of(), Optional.of(new Reorder(99, 18, new Law.Fixed(18_000), 9))));

        StockResult stock = run(sketch).stocks().get(0);

        assertThat(stock.ordersPlaced()).isEqualTo(20);
        assertThat(stock.lowest()).isCloseTo(9, within(EXACT));
        assertThat(stock.mean()).isCloseTo((321.75 + 14 * 18 + 0.5 * 22.5) / 20, within(EXACT));
    }

    /** 90 kg and 27 kg that come at 3 h are 54 kg at 3.5 h, not at 2 h; what is ordered then comes at 5.5 h, after the run. */
    @Test
    void aKnownDeliveryCountsAgainstTheReorderPoint() {
        PlantSketch sketch = new PlantSketch().order("SO-1", NATURAL, 10000);
        sketch.hours = 5;
        sketch.store(resin(
                90,
                List.of(new Delivery(Ticks.ofSeconds(3 * 3600), 27)),
                Optional.of(new Reorder(54, 90, new Law.Fixed(7200), 18))));

        StockResult stock = run(sketch).stocks().get(0);

        assertThat(stock.ordersPlaced()).isEqualTo(1);
        assertThat(stock.received()).isCloseTo(27, within(EXACT));
        assertThat(stock.lowest()).isCloseTo(27, within(EXACT));
    }

    /**
     * 30 kg of a white blend, 10 kg of it fed, then the order is over: 20 kg go back, with 4 % of white. The hopper is cleaned
     * to 2600 s and loaded with 30 kg of black, which last 6000 s, and again at 8660, 14 720, 20 780 and 26 840 s: 150 kg.
     */
    @Test
    void whatIsEmptiedOutOfADryerGoesBackToTheStore() {
        PlantSketch sketch = new PlantSketch()
                .order("SO-1", PlantSketch.WHITE_PLA, 10)
                .order("SO-2", PlantSketch.BLACK_PLA, 1000)
                .store(Kind.RESIN, "PLA", 500)
                .store(Kind.CONCENTRATE, "WHT", 5)
                .store(Kind.CONCENTRATE, "BLK", 50);
        sketch.supply = Optional.of(new MaterialSupply(
                MaterialSupply.Layout.BLEND_FIRST,
                30,
                30,
                new Law.Fixed(60),
                new Law.Fixed(600),
                CrewNeed.NOBODY,
                true));

        List<StockResult> stocks = run(sketch).stocks();

        assertThat(stocks.get(0).used()).isCloseTo(9.6 + 150 * 0.97, within(EXACT));
        assertThat(stocks.get(1).used()).isCloseTo(0.4, within(EXACT));
        assertThat(stocks.get(2).used()).isCloseTo(4.5, within(EXACT));
    }

    /** A size of its own goes before what is for every size. */
    @Test
    void spoolsOfASizeAreTakenFromTheirOwnStock() {
        PlantSketch sketch = new PlantSketch().order("SO-1", NATURAL, 20);
        sketch.store(Kind.SPOOLS, "all", 50);
        sketch.store(new StockItem(Kind.SPOOLS, "1", Optional.of(1.0), 50, List.of(), Optional.empty()));

        List<StockResult> stocks = run(sketch).stocks();

        assertThat(stocks.get(0).used()).isZero();
        assertThat(stocks.get(1).used()).isEqualTo(20);
    }

    /**
     * Three spools of PLA to 600 s; two melt volumes of compound, 1.7 kg in 340 s, from no store; then 2660 s of black PETG, 400
     * s of it purge: 13.3 kg, 3 % of them concentrate.
     */
    @Test
    void purgeCompoundTakesNothingFromTheStores() {
        Product petg = new Product(new Polymer("PETG", 1270, 1, 205, 1200), PlantSketch.BLACK, 1.75, 1);
        PlantSketch sketch = new PlantSketch()
                .order("SO-1", PlantSketch.WHITE_PLA, 3)
                .order("SO-2", petg, 1000)
                .store(Kind.RESIN, "PETG", 500)
                .store(Kind.CONCENTRATE, "BLK", 50);
        sketch.hours = 1;
        ChangeoverRules was = sketch.changeovers;
        sketch.changeovers = new ChangeoverRules(
                was.measured(), was.unmeasured(), List.of(), List.of(), List.of(), 0, 2, true, was.approval());

        RunResult run = run(sketch);

        assertThat(run.lines().get(0).use().compoundKg()).isCloseTo(1.7, within(EXACT));
        assertThat(run.lines().get(0).fedKg()).isCloseTo(18, within(EXACT));
        assertThat(run.stocks().get(0).used()).isCloseTo(13.3 * 0.97, within(EXACT));
        assertThat(run.stocks().get(1).used()).isCloseTo(13.3 * 0.03, within(EXACT));
    }
}
