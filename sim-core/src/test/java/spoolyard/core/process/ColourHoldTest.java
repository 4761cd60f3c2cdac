package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.ChangeoverRules.Approval;
import spoolyard.core.plant.ChangeoverRules.Approval.Meanwhile;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Role;
import spoolyard.core.plant.Shift;
import spoolyard.core.plant.Stoppage;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineState;
import spoolyard.core.record.QualityResult.ApprovalResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ScrapCause;

/**
 * Hand-worked colour approvals with product held, on one line of 18 kg/h (0.005 kg/s, 1 kg in 200 s). Three white spools are
 * full at 600 s, 2 kg of purge take it to 1000 s, then it makes black ones, full at 1200, 1400, 1600 s and so on.
 */
class ColourHoldTest {
    private static final CrewNeed APPROVER = new CrewNeed(List.of("approver"));

    /** An approval of 900 s, a further purge of half of 2 kg after a refusal. */
    private static PlantSketch sketch(Meanwhile meanwhile, double refused) {
        PlantSketch sketch = new PlantSketch();
        sketch.hours = 1;
        sketch.roles = List.of(
                new Role("operator", List.of(), false, List.of(), List.of()),
                new Role("approver", List.of(), false, List.of(), List.of()));
        sketch.heads = List.of(1, 1);
        ChangeoverRules plain = sketch.changeovers;
        sketch.changeovers = new ChangeoverRules(
                plain.measured(),
                plain.unmeasured(),
                List.of(),
                List.of(),
                List.of(),
                0,
                0,
                true,
                new Approval(new Law.Fixed(900), APPROVER, refused, 0.5, meanwhile));
        return sketch.order("SO-1", PlantSketch.WHITE_PLA, 3).order("SO-2", PlantSketch.BLACK_PLA, 100);
    }

    private static RunResult run(PlantSketch sketch, long seed) {
        return new PlantRun(sketch.plant(), seed, 0, EventLog.SILENT).run();
    }

    private static ApprovalResult approvals(RunResult result) {
        return result.quality().approvals().get(0);
    }

    /** The first seed with which the first judgement refuses and the second approves. */
    private static RunResult refusedOnce(PlantSketch sketch) {
        return LongStream.rangeClosed(1, 200)
                .mapToObj(seed -> run(sketch, seed))
                .filter(result ->
                        approvals(result).judged() == 2 && approvals(result).refused() == 1)
                .filter(result -> approvals(result).released() > 0)
                .findFirst()
                .orElseThrow();
    }

    /** To waste 900 s are 4.5 kg and the next spool is full at 2100 s; held, spools go on from 1200 s and nothing is lost. */
    @Test
    void holdingSavesTheScrapOfTheWait() {
        RunResult wasted = run(sketch(Meanwhile.RUN_TO_WASTE, 0), 1);
        RunResult held = run(sketch(Meanwhile.HOLD, 0), 1);

        assertThat(wasted.lines().get(0).scrapKg().get(ScrapCause.APPROVAL)).isCloseTo(4.5, within(1e-9));
        assertThat(wasted.lines().get(0).swaps()).isEqualTo(3 + 8);
        assertThat(wasted.quality().approvals()).isEmpty();
        assertThat(held.lines().get(0).totalScrapKg()).isCloseTo(2, within(1e-9));
        assertThat(held.lines().get(0).swaps()).isEqualTo(3 + 13);
        assertThat(held.lines().get(0).stateS().get(LineState.APPROVAL)).isZero();
        assertThat(held.changeovers().get(0).endTick()).isEqualTo(PlantSketch.ticks(1000));
    }

    /**
     * Called at 1000 s, approved at 1900 s. Off the winder 50 s after they are full: at 1250, 1450 and 1650, 1850 s. Packing
     * takes 20 s each, from 1900 s on.
     */
    @Test
    void heldSpoolsGoOnTogetherWhenTheColourIsApproved() {
        PlantSketch sketch = sketch(Meanwhile.HOLD, 0);
        sketch.hours = 1960 / 3600.0;

        RunResult result = run(sketch, 1);

        assertThat(approvals(result)).isEqualTo(new ApprovalResult("L1", 1, 0, 4, 4, 0, 900, 900));
        assertThat(result.flow().made()).isEqualTo(7);
        assertThat(result.flow().packed()).isEqualTo(3 + 3);
        assertThat(result.flow().inWork()).isEqualTo(1);
        assertThat(result.orders().get(1).packedSpools()).isEqualTo(3);
    }

    /** Seen a second before: four spools stand, nobody packs them. */
    @Test
    void nobodyTakesAHeldSpool() {
        PlantSketch sketch = sketch(Meanwhile.HOLD, 0);
        sketch.hours = 1899 / 3600.0;

        RunResult result = run(sketch, 1);

        assertThat(approvals(result)).isEqualTo(new ApprovalResult("L1", 0, 0, 4, 0, 0, 0, 0));
        assertThat(result.flow().waiting()).isEqualTo(4);
        assertThat(result.flow().packed()).isEqualTo(3);
        assertThat(result.finishing().get(0).peakWaiting()).isEqualTo(4);
        assertThat(result.orders().get(1).goodSpools()).isEqualTo(4);
    }

    /**
     * Refused at 1900 s: four spools held, 0.5 kg on the spool in progress (full at 2000 s). A further 1 kg of purge to 2100 s,
     * then spools are full from 2300 s on; approved at 3000 s with those of 2300, 2500, 2700 and 2900 s off the winder.
     */
    @Test
    void aRefusalScrapsWhatIsHeldPurgesOnAndIsJudgedAgain() {
        PlantSketch sketch = sketch(Meanwhile.HOLD, 0.4);
        sketch.hours = 3001 / 3600.0;

        RunResult result = refusedOnce(sketch);

        LineResult line = result.lines().get(0);
        assertThat(approvals(result)).isEqualTo(new ApprovalResult("L1", 2, 1, 4 + 4, 4, 4, 1800, 900));
        assertThat(line.scrapKg().get(ScrapCause.REFUSED_COLOUR)).isCloseTo(4.5, within(1e-5));
        assertThat(line.scrapKg().get(ScrapCause.APPROVAL)).isCloseTo(1, within(1e-9));
        assertThat(line.stateS().get(LineState.PURGING)).isCloseTo(400 + 200, within(1e-6));
        assertThat(line.goodSpools()).isEqualTo(3 + 4);
        assertThat(result.quality().losses().get(0).spools()).isEqualTo(4);
        assertThat(result.orders().get(1).goodSpools()).isEqualTo(4);
        assertThat(result.orders().get(1).lostSpools()).isEqualTo(4);
    }

    /**
     * Off the winder 138 s after they are full: at 1338, 1538 and 1738 s. Refused at 1900 s, the fourth spool, full at 1800 s,
     * is still in hand until 1938 s: scrap as well, with 0.5 kg of the fifth. Three more by 2838 s.
     */
    @Test
    void aSpoolStillAtTheWinderSharesTheJudgement() {
        PlantSketch sketch = sketch(Meanwhile.HOLD, 0.4);
        sketch.hours = 2900 / 3600.0;
        sketch.finishTimeS = new Law.Fixed(120);

        RunResult result = LongStream.rangeClosed(1, 200)
                .mapToObj(seed -> run(sketch, seed))
                .filter(each -> approvals(each).refused() == 1)
                .findFirst()
                .orElseThrow();

        assertThat(approvals(result).held()).isEqualTo(3 + 3);
        assertThat(approvals(result).scrapped()).isEqualTo(4);
        assertThat(result.lines().get(0).scrapKg().get(ScrapCause.REFUSED_COLOUR))
                .isCloseTo(4.5, within(1e-5));
    }

    /**
     * A stop that keeps the spool in progress, from 1500 s (1100 s made) to 2100 s: refused at 1900 s, two spools held and 0.5 kg
     * on the strand are scrap; then 1 kg of purge to 2300 s.
     */
    @Test
    void aRefusalDuringAStopScrapsTheSpoolInProgress() {
        PlantSketch sketch = sketch(Meanwhile.HOLD, 0.4);
        sketch.hours = 2800 / 3600.0;
        sketch.stoppages.add(new Stoppage(
                "tangle",
                Stoppage.Scope.STATION,
                Stoppage.Clock.RUNNING_TIME,
                new Law.Fixed(1100),
                new Law.Fixed(600),
                CrewNeed.NOBODY,
                Stoppage.Effect.STOPS,
                Stoppage.Restart.NONE,
                Optional.empty(),
                false,
                false));

        RunResult result = LongStream.rangeClosed(1, 200)
                .mapToObj(seed -> run(sketch, seed))
                .filter(each -> approvals(each).refused() == 1)
                .findFirst()
                .orElseThrow();

        LineResult line = result.lines().get(0);
        assertThat(line.scrapKg().get(ScrapCause.REFUSED_COLOUR)).isCloseTo(2.5, within(1e-5));
        assertThat(line.stateS().get(LineState.PURGING)).isCloseTo(400 + 200, within(1e-6));
        assertThat(line.swaps()).isEqualTo(3 + 2 + 2);
    }

    /** A rack of two: the third black spool, full at 1600 s, stays on the winder until the colour is approved at 1900 s. */
    @Test
    void heldSpoolsFillTheRackAndBlockTheWinder() {
        PlantSketch sketch = sketch(Meanwhile.HOLD, 0);
        sketch.rackPlaces = 2;

        RunResult result = run(sketch, 1);

        assertThat(result.lines().get(0).blockedS()).isCloseTo(300, within(1e-6));
        assertThat(result.finishing().get(0).peakWaiting()).isEqualTo(2);
        assertThat(approvals(result).held()).isEqualTo(2);
    }

    /** The approver begins at 2600 s: judged at 3500 s, and all that was off the winder by then was held. */
    @Test
    void productIsHeldUntilAnApproverComes() {
        PlantSketch sketch = sketch(Meanwhile.HOLD, 0);
        sketch.shifts.add(new Shift("D", 0, PlantSketch.ticks(2600), List.of(1, 0), List.of(), 0, true, 1));
        sketch.shifts.add(
                new Shift("E", PlantSketch.ticks(2600), PlantSketch.ticks(3600), List.of(1, 1), List.of(), 0, true, 1));

        RunResult result = run(sketch, 1);

        // full at 1200, 1400, ... 3400 s, off 50 s later: the twelfth at 3450 s
        assertThat(approvals(result)).isEqualTo(new ApprovalResult("L1", 1, 0, 12, 12, 0, 2500, 2500));
    }

    /** An order of two black spools is full at 1400 s; refused at 1900 s it is made again, with the purge that it now takes. */
    @Test
    void anOrderThatIsRefusedAfterItsLineWentOnIsMadeAgain() {
        PlantSketch sketch = sketch(Meanwhile.HOLD, 0.4);
        sketch.orders.clear();
        sketch.hours = 4;
        sketch.order("SO-1", PlantSketch.WHITE_PLA, 3)
                .order("SO-2", PlantSketch.BLACK_PLA, 2)
                .order("SO-3", PlantSketch.WHITE_PLA, 3);

        RunResult result = LongStream.rangeClosed(1, 200)
                .mapToObj(seed -> run(sketch, seed))
                .filter(each -> each.orders().get(1).lostSpools() == 2)
                .filter(each -> approvals(each).refused() == 1)
                .findFirst()
                .orElseThrow();

        assertThat(result.orders()).allMatch(order -> order.packedSpools() == order.goodSpools());
        assertThat(result.orders().get(1).goodSpools()).isEqualTo(2);
        assertThat(result.changeovers()).hasSize(3);
    }

    /** Without a person the instrument takes its 900 s. */
    @Test
    void anInstrumentNeedsNobody() {
        PlantSketch sketch = sketch(Meanwhile.HOLD, 0);
        ChangeoverRules rules = sketch.changeovers;
        sketch.changeovers = new ChangeoverRules(
                rules.measured(),
                rules.unmeasured(),
                List.of(),
                List.of(),
                List.of(),
                0,
                0,
                true,
                new Approval(new Law.Fixed(900), CrewNeed.NOBODY, 0, 0.5, Meanwhile.HOLD));

        assertThat(approvals(run(sketch, 1)).waitS()).isEqualTo(900);
        assertThat(approvals(run(sketch, 1)).released()).isEqualTo(4);
    }
}
