package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.DryingRoom;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.MaterialSupply;
import spoolyard.core.plant.MaterialSupply.Layout;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.Product;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineState;
import spoolyard.core.record.RunResult;

/**
 * Hand-worked cases of drying. The line makes 18 kg/h; its polymer dries 4 h. A dryer of H kg dries at most H / 4 h
 * (plug flow: residence = content / rate). White takes 4 % of concentrate, black 3 %.
 */
class MaterialSupplyTest {
    private static final Polymer PLA = new Polymer("PLA", 1240, 1, 205, 1200, 4 * 3600);
    private static final Product WHITE = new Product(PLA, PlantSketch.WHITE, 1.75, 1);
    private static final Product BLACK = new Product(PLA, PlantSketch.BLACK, 1.75, 1);

    private static PlantSketch sketch(double hours, Layout layout, double hopperKg, double batchKg) {
        PlantSketch sketch = new PlantSketch();
        sketch.hours = hours;
        sketch.supply = Optional.of(new MaterialSupply(
                layout, hopperKg, batchKg, new Law.Fixed(900), new Law.Fixed(1800), CrewNeed.NOBODY, true));
        return sketch;
    }

    private static RunResult run(PlantSketch sketch) {
        return new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();
    }

    private static LineResult line(PlantSketch sketch) {
        return run(sketch).lines().get(0);
    }

    @Test
    void aHopperThatIsLargeEnoughCostsNothing() {
        LineResult line = line(sketch(10, Layout.DOSE_AT_THROAT, 72, 0).order("SO-1", WHITE, 1000));

        assertThat(line.fedKg()).isCloseTo(180, within(1e-9));
        assertThat(line.ratedKg()).isCloseTo(180, within(1e-9));
    }

    @Test
    void aSmallHopperLimitsTheRateToItsContentOverTheDryingTime() {
        LineResult line = line(sketch(10, Layout.DOSE_AT_THROAT, 60, 0).order("SO-1", WHITE, 1000));

        // 60 kg / 4 h = 15 kg/h of natural, 96 % of what passes the die: 15.625 kg/h
        assertThat(line.fedKg()).isCloseTo(156.25, within(1e-6));
        assertThat(line.ratedKg()).isCloseTo(180, within(1e-6));
        assertThat(line.slowedLossKg()).isCloseTo(23.75, within(1e-6));
    }

    @Test
    void batchesLeaveTheHopperShortByOneBatch() {
        LineResult line = line(sketch(20, Layout.BLEND_FIRST, 60, 10).order("SO-1", WHITE, 1000));

        // (60 - 10) kg / 4 h = 12.5 kg/h, a batch of 10 kg lasts 0.8 h. The hopper starts with six; there is room
        // for the seventh at 0.8 h, it is loaded by 1.05 h and dry at 5.05 h, but needed at 4.8 h. The eighth is
        // dry at 5.85 h, when the seventh is gone, and so on to the twelfth; the thirteenth has room at 5.85 h and
        // is dry at 10.1 h, again 0.25 h late. In 20 h: four times 4.8 h of drawing, three waits of 0.25 h and 0.05
        // h of the fourth.
        assertThat(line.stateS().get(LineState.WAITING_FOR_MATERIAL)).isCloseTo(0.8 * 3600, within(1e-3));
        assertThat(line.fedKg()).isCloseTo(19.2 * 12.5, within(1e-6));
    }

    @Test
    void aColourChangeDoesNotTouchTheHopperThatHoldsNatural() {
        LineResult line = line(
                sketch(2, Layout.DOSE_AT_THROAT, 72, 0).order("SO-1", WHITE, 3).order("SO-2", BLACK, 1000));

        assertThat(line.stateS().get(LineState.WAITING_FOR_MATERIAL)).isZero();
    }

    @Test
    void aColourChangeWaitsForCleaningLoadingAndDryingWhereColourIsBlendedFirst() {
        RunResult result = run(
                sketch(7, Layout.BLEND_FIRST, 72, 36).order("SO-1", WHITE, 3).order("SO-2", BLACK, 1000));

        // At (72 - 36) / 4 = 9 kg/h the order ends at 1200 s; clean 1800 s, load 900 s, dry 14400 s; then 2 kg of
        // purge to 19 100 s, and 15.25 kg of black in the last 6100 s.
        LineResult line = result.lines().get(0);
        assertThat(line.stateS().get(LineState.WAITING_FOR_MATERIAL)).isCloseTo(17100, within(1e-6));
        assertThat(line.stateS().get(LineState.PURGING)).isCloseTo(800, within(1e-6));
        assertThat(line.fedKg()).isCloseTo(3 + 2 + 15.25, within(1e-6));
    }

    @Test
    void aMobileDryerPreparedAheadHidesTheDryingTime() {
        PlantSketch sketch =
                sketch(8, Layout.BLEND_FIRST, 72, 0).order("SO-1", WHITE, 90).order("SO-2", BLACK, 1000);
        sketch.drying = new DryingRoom(1, 72, 1, true);

        // The first order takes 90 x 200 s = 18000 s; the mobile dryer is loaded at 900 s and dry at 15300 s.
        assertThat(line(sketch).stateS().get(LineState.WAITING_FOR_MATERIAL)).isZero();
    }

    @Test
    void preparationThatIsLateIsWaitedFor() {
        PlantSketch sketch =
                sketch(8, Layout.BLEND_FIRST, 72, 0).order("SO-1", WHITE, 60).order("SO-2", BLACK, 1000);
        sketch.drying = new DryingRoom(1, 72, 1, true);

        // the first order ends at 12000 s; the mobile dryer is dry at 900 + 14400 s
        assertThat(line(sketch).stateS().get(LineState.WAITING_FOR_MATERIAL)).isCloseTo(3300, within(1e-6));
    }

    @Test
    void twoLinesShareOneMobileDryer() {
        PlantSketch sketch = sketch(8, Layout.BLEND_FIRST, 72, 0);
        sketch.lineCount = 2;
        sketch.heads = List.of(2);
        sketch.drying = new DryingRoom(1, 72, 1, true);
        sketch.orderFor("L1", "SO-1", WHITE, 90)
                .orderFor("L1", "SO-2", BLACK, 1000)
                .orderFor("L2", "SO-3", WHITE, 90)
                .orderFor("L2", "SO-4", BLACK, 1000);

        RunResult result = run(sketch);

        // L1 has the mobile dryer; L2 must clean, load and dry its own hopper after 18000 s: 17100 s, beyond the
        // horizon
        assertThat(result.lines().get(0).stateS().get(LineState.WAITING_FOR_MATERIAL))
                .isZero();
        assertThat(result.lines().get(1).stateS().get(LineState.WAITING_FOR_MATERIAL))
                .isCloseTo(10800, within(1e-6));
    }

    @Test
    void aHopperThatStartsEmptyIsLoadedAndDriedFirst() {
        PlantSketch sketch = sketch(8, Layout.DOSE_AT_THROAT, 72, 0).order("SO-1", WHITE, 1000);
        MaterialSupply dry = sketch.supply.get();
        sketch.supply = Optional.of(new MaterialSupply(
                dry.layout(), dry.hopperKg(), dry.batchKg(), dry.loadS(), dry.cleanS(), dry.crew(), false));

        assertThat(line(sketch).stateS().get(LineState.WAITING_FOR_MATERIAL)).isCloseTo(15300, within(1e-6));
        assertThat(run(sketch).orders().get(0).startTick()).isEqualTo(Ticks.ofSeconds(0));
    }
}
