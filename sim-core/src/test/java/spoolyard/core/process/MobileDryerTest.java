package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.ChangeoverRules.MeasuredPurge;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.DryingRoom;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.MaterialSupply;
import spoolyard.core.plant.MaterialSupply.Layout;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.StockItem;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.LineState;
import spoolyard.core.record.RunResult;

/**
 * Hand-worked cases of dryers on wheels and blenders. A line makes 18 kg/h, a spool of 1 kg in 200 s, of what is blended
 * first and dried for 3600 s. Its hopper of 18 kg, kept full by a loader, just keeps up. It is cleaned in 600 s and loaded in
 * 300 s by nobody in particular. Every change of colour purges 1 kg, 200 s. What comes next is chosen, and prepared, as soon
 * as a line begins to make spools of an order. All times in seconds.
 */
class MobileDryerTest {
    private static final Colour GREY = new Colour("GRY", "Grey", 60, 0, 0, 2, 1, 0.03);
    private static final Polymer PLA = new Polymer("PLA", 1240, 1, 205, 1200, 3600);
    private static final Product W = new Product(PLA, PlantSketch.WHITE, 1.75, 1);
    private static final Product B = new Product(PLA, PlantSketch.BLACK, 1.75, 1);
    private static final Product G = new Product(PLA, GREY, 1.75, 1);

    private static PlantSketch sketch(int lines, double seconds, DryingRoom drying) {
        PlantSketch sketch = new PlantSketch();
        sketch.hours = seconds / 3600;
        sketch.lineCount = lines;
        sketch.heads = List.of(lines);
        sketch.drying = drying;
        sketch.supply = Optional.of(new MaterialSupply(
                Layout.BLEND_FIRST, 18, 0, new Law.Fixed(300), new Law.Fixed(600), CrewNeed.NOBODY, true));
        ChangeoverRules was = sketch.changeovers;
        sketch.changeovers = new ChangeoverRules(
                purges(), was.unmeasured(), List.of(), List.of(), List.of(), 0, 0, true, ChangeoverRules.Approval.NONE);
        return sketch;
    }

    private static List<MeasuredPurge> purges() {
        List<String> codes = List.of("WHT", "BLK", "GRY");
        List<MeasuredPurge> all = new ArrayList<>();
        for (String from : codes) {
            codes.stream()
                    .filter(to -> !to.equals(from))
                    .forEach(to -> all.add(new MeasuredPurge("*", "*", from, to, 1)));
        }
        return all;
    }

    private static DryingRoom mobile(double kg) {
        return new DryingRoom(1, kg, Integer.MAX_VALUE, true);
    }

    private static RunResult run(PlantSketch sketch) {
        return new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();
    }

    private static double waitedS(RunResult run, int line) {
        return run.lines().get(line).stateS().get(LineState.WAITING_FOR_MATERIAL);
    }

    /**
     * White to 6000; black, dry on wheels at 300 + 3600, purges to 6200 and ends at 9600. From 6200 the own hopper is loaded
     * with white again, which needs no cleaning: dry at 10 100.
     */
    @Test
    void theOwnHopperIsLoadedWhileADryerOnWheelsFeeds() {
        PlantSketch sketch = sketch(1, 12_000, mobile(18))
                .order("1", W, 30)
                .order("2", B, 17)
                .order("3", W, 1000);

        RunResult run = run(sketch);

        assertThat(waitedS(run, 0)).isCloseTo(500, within(1e-6));
        assertThat(run.lines().get(0).fedKg()).isCloseTo((12_000 - 500) * 0.005, within(1e-6));
    }

    /**
     * White to 6000, black to 9600. From 6200 the own hopper is cleaned for grey and loaded: dry at 6200 + 600 + 300 + 3600 =
     * 10 700, 1100 late. Grey purges to 10 900 and ends at 12 900. The wheels, back since 9600, are cleaned of black from
     * 10 900 on and loaded with white: dry at 15 400, 2500 late.
     */
    @Test
    void aDryerOnWheelsIsGivenBackAndCleanedForTheNextMaterial() {
        PlantSketch sketch = sketch(1, 18_000, mobile(18))
                .order("1", W, 30)
                .order("2", B, 17)
                .order("3", G, 10)
                .order("4", W, 1000);

        assertThat(waitedS(run(sketch), 0)).isCloseTo(1100 + 2500, within(1e-6));
    }

    /** White to 6000; then black, 9 kg for an hour: 9 kg/h. */
    @Test
    void aSmallDryerOnWheelsLimitsTheRate() {
        PlantSketch sketch = sketch(1, 10_000, mobile(9)).order("1", W, 30).order("2", B, 1000);

        RunResult run = run(sketch);

        assertThat(run.lines().get(0).fedKg()).isCloseTo(30 + 10, within(1e-6));
        assertThat(run.lines().get(0).stateS().get(LineState.PURGING)).isCloseTo(400, within(1e-6));
    }

    /** Cleaned, loaded and dried from 6000 on. */
    @Test
    void nothingIsPreparedWhereNobodyLooksAhead() {
        PlantSketch sketch = sketch(1, 12_000, new DryingRoom(1, 18, Integer.MAX_VALUE, false))
                .order("1", W, 30)
                .order("2", B, 1000);

        assertThat(waitedS(run(sketch), 0)).isCloseTo(600 + 300 + 3600, within(1e-6));
    }

    /** Both hoppers are cleaned by 6600; the first is loaded to 6900, the second to 7200: dry at 10 500 and 10 800. */
    @Test
    void oneBlenderBlendsForOneLineAfterTheOther() {
        PlantSketch sketch = sketch(2, 12_000, new DryingRoom(0, 0, 1, true));
        sketch.orderFor("L1", "1", W, 30).orderFor("L1", "2", B, 1000);
        sketch.orderFor("L2", "3", W, 30).orderFor("L2", "4", B, 1000);

        RunResult run = run(sketch);

        assertThat(waitedS(run, 0)).isCloseTo(4500, within(1e-6));
        assertThat(waitedS(run, 1)).isCloseTo(4800, within(1e-6));
    }

    /**
     * All ask for the wheels at 0 and the first line has them, for black from 4000 to 5000 (4 spools). The second line asked
     * next: black again, which needs no cleaning, is dry at 8900, before 12 000. The third must prepare its own hopper from
     * 12 000 on, in 4500.
     */
    @Test
    void dryersOnWheelsGoToWhoAskedFirst() {
        PlantSketch sketch = sketch(3, 18_000, mobile(18));
        sketch.orderFor("L1", "1", W, 20).orderFor("L1", "2", B, 4).orderFor("L1", "3", W, 1000);
        sketch.orderFor("L2", "4", W, 60).orderFor("L2", "5", B, 1000);
        sketch.orderFor("L3", "6", W, 60).orderFor("L3", "7", B, 1000);

        RunResult run = run(sketch);

        // white again in the own hopper of the first: loaded from 4200 on, dry at 8100
        assertThat(waitedS(run, 0)).isCloseTo(3100, within(1e-6));
        assertThat(waitedS(run, 1)).isZero();
        assertThat(waitedS(run, 2)).isCloseTo(4500, within(1e-6));
    }

    /**
     * The second line draws 0.15 g/s of black concentrate, so that 0.75 kg are gone at 5000. The first ends white at 6000,
     * with black on wheels, and takes grey in its place: its own hopper is cleaned, loaded and dry at 10 500. Grey purges to
     * 10 700 and ends at 14 700. What was on wheels is given up; from 10 700 on they are made ready for white: dry at 15 200.
     */
    @Test
    void whatWasPreparedForAnOrderThatIsPutBackIsGivenUp() {
        PlantSketch sketch = sketch(2, 18_000, mobile(18));
        sketch.orderFor("L1", "1", W, 30)
                .orderFor("L1", "2", B, 100)
                .orderFor("L1", "3", G, 20)
                .orderFor("L1", "4", W, 1000)
                .orderFor("L2", "5", B, 1000);
        sketch.store(StockItem.Kind.CONCENTRATE, "BLK", 0.75);

        RunResult run = run(sketch);

        assertThat(run.lines().get(1).stateS().get(LineState.NO_CONCENTRATE)).isCloseTo(13_000, within(1e-3));
        assertThat(waitedS(run, 0)).isCloseTo(4500 + 500, within(1e-6));
    }
}
