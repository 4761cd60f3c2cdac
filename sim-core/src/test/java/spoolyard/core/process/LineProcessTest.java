package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.FinishingStation;
import spoolyard.core.plant.HeatUp;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.OverflowPolicy;
import spoolyard.core.plant.Place;
import spoolyard.core.plant.Shift;
import spoolyard.core.plant.StartStop;
import spoolyard.core.plant.Stoppage;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.plant.Window;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineState;
import spoolyard.core.record.OverflowCause;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ScrapCause;

/** Hand-worked time lines of one 18 kg/h PLA line (0.005 kg/s, 1.67642 m/s, 1 kg in 200 s). */
class LineProcessTest {
    private static RunResult run(PlantSketch sketch) {
        return new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();
    }

    private static LineResult line(PlantSketch sketch) {
        return run(sketch).lines().get(0);
    }

    private static PlantSketch hours(double hours) {
        PlantSketch sketch = new PlantSketch();
        sketch.hours = hours;
        return sketch;
    }

    private static StartStop start(EndOfPeriod end, double preheatS) {
        return new StartStop(
                new HeatUp.Timed(new Law.Fixed(4500)),
                new Law.Fixed(1800),
                new Law.Fixed(600),
                new Law.Fixed(1080),
                1,
                new Law.Fixed(1800),
                2,
                end,
                preheatS,
                CrewNeed.NOBODY);
    }

    private static Stoppage stoppage(Stoppage.Scope scope, Stoppage.Effect effect, Stoppage.Restart restart) {
        return new Stoppage(
                "cause",
                scope,
                Stoppage.Clock.RUNNING_TIME,
                new Law.Fixed(1100),
                new Law.Fixed(300),
                CrewNeed.NOBODY,
                effect,
                restart,
                Optional.of(new Law.Fixed(100)),
                false,
                false);
    }

    @Test
    void aChangeoverRunsToWasteUntilThePurgeIsThrough() {
        PlantSketch sketch = hours(1);
        sketch.order("SO-1", PlantSketch.WHITE_PLA, 3).order("SO-2", PlantSketch.BLACK_PLA, 100);

        RunResult result = run(sketch);

        // 3 spools to 600 s, then 2 kg of purge at 0.005 kg/s to 1000 s, then black
        RunResult.ChangeoverResult changeover = result.changeovers().get(0);
        assertThat(changeover.startTick()).isEqualTo(PlantSketch.ticks(600));
        assertThat(changeover.endTick()).isEqualTo(PlantSketch.ticks(1000));
        assertThat(changeover.purgeKg()).isCloseTo(2, within(1e-9));
        assertThat(result.lines().get(0).scrapKg().get(ScrapCause.COLOUR_PURGE)).isCloseTo(2, within(1e-9));
        assertThat(result.lines().get(0).fedKg()).isCloseTo(18, within(1e-9));
        assertThat(result.lines().get(0).swaps()).isEqualTo(3 + 13);
    }

    @Test
    void aColdStartHeatsSoaksPurgesThreadsAndSettles() {
        PlantSketch sketch = hours(4).order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.runningAtStart = false;
        sketch.startStop = start(EndOfPeriod.HOT_STANDBY, 0);

        LineResult line = line(sketch);

        // 75 min + 30 min; 0.85 kg of first melt at 18 kg/h = 170 s; 10 min + 18 min at 18 kg/h = 8.4 kg
        assertThat(line.stateS().get(LineState.STARTING)).isCloseTo(6300 + 170 + 1680, within(1e-6));
        assertThat(line.scrapKg().get(ScrapCause.START_UP)).isCloseTo(0.85 + 8.4, within(1e-9));
        assertThat(line.stateS().get(LineState.RUNNING)).isCloseTo(14400 - 8150, within(1e-6));
    }

    @Test
    void preheatingByTimerSavesTheHeatingTimeOfThePeriod() {
        PlantSketch sketch = hours(4).order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.runningAtStart = false;
        sketch.startStop = start(EndOfPeriod.HOT_STANDBY, 6300);
        sketch.periods.add(new Window("day", PlantSketch.ticks(7200), PlantSketch.ticks(14400)));

        LineResult line = line(sketch);

        // hot at 900 + 6300 = 7200 s, when the period begins
        assertThat(line.stateS().get(LineState.RUNNING)).isCloseTo(7200 - 170 - 1680, within(1e-6));
    }

    @Test
    void anOrderlyShutDownEndsWithThePeriod() {
        PlantSketch sketch = hours(4).order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.startStop = start(EndOfPeriod.SHUT_DOWN, 0);
        sketch.periods.add(new Window("day", 0, PlantSketch.ticks(10000)));

        LineResult line = line(sketch);

        // begins 1800 s before the end, when spool 42 is at no metre: 8200 s = 41 spools; purges 2 x 0.85 kg
        assertThat(line.stateS().get(LineState.RUNNING)).isCloseTo(8200, within(1e-6));
        assertThat(line.stateS().get(LineState.SHUTTING_DOWN)).isCloseTo(1800, within(1e-6));
        assertThat(line.stateS().get(LineState.NOT_SCHEDULED)).isCloseTo(4400, within(1e-6));
        assertThat(line.scrapKg().get(ScrapCause.SHUT_DOWN)).isCloseTo(1.7, within(1e-9));
        assertThat(line.goodSpools()).isEqualTo(41);
    }

    @Test
    void hotStandbyBeyondTheLimitPurgesBeforeItMakesAgain() {
        PlantSketch within = hours(4).order("SO-1", PlantSketch.WHITE_PLA, 1000);
        within.startStop = start(EndOfPeriod.HOT_STANDBY, 0);
        within.periods.add(new Window("one", 0, PlantSketch.ticks(4000)));
        within.periods.add(new Window("two", PlantSketch.ticks(5200), PlantSketch.ticks(14400)));
        PlantSketch beyond = hours(4).order("SO-1", PlantSketch.WHITE_PLA, 1000);
        beyond.startStop = start(EndOfPeriod.HOT_STANDBY, 0);
        beyond.periods.add(new Window("one", 0, PlantSketch.ticks(4000)));
        beyond.periods.add(new Window("two", PlantSketch.ticks(5201), PlantSketch.ticks(14400)));

        // the limit of the sketch's PLA is 1200 s; thread-up and stabilising cost 8.4 kg either way
        assertThat(line(within).scrapKg().get(ScrapCause.START_UP)).isCloseTo(8.4, within(1e-9));
        assertThat(line(beyond).scrapKg().get(ScrapCause.START_UP)).isCloseTo(8.4 + 0.85, within(1e-9));
    }

    @Test
    void runningOnUnattendedFillsTheSpoolThenTheAccumulatorThenWastes() {
        PlantSketch sketch = hours(1).order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.startStop = start(EndOfPeriod.RUN_ON, 0);
        sketch.periods.add(new Window("day", 0, PlantSketch.ticks(1300)));
        sketch.shifts.add(new Shift("D", 0, PlantSketch.ticks(1300), List.of(1), List.of(), 0, true, 1));

        LineResult line = line(sketch);

        // spool 7 is full at 1400 s, the accumulator 35.79 s later; the rest of the hour goes to the bin
        assertThat(line.overflowM().get(OverflowCause.NO_CREW)).isCloseTo((3600 - 1400) * 1.67642 - 60, within(0.02));
        assertThat(line.goodSpools()).isEqualTo(6);
    }

    @Test
    void aStopThatNeedsNoRestartKeepsTheSpoolInProgress() {
        PlantSketch sketch = hours(1).order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.stoppages.add(stoppage(Stoppage.Scope.STATION, Stoppage.Effect.STOPS, Stoppage.Restart.NONE));

        LineResult line = line(sketch);

        // runs 1100 s, stands 300 s, ... : strikes at 1100 and 2500 s, the third cycle is cut by the horizon at 3600 s
        assertThat(line.stateS().get(LineState.DOWN)).isCloseTo(600, within(1e-6));
        assertThat(line.totalScrapKg()).isCloseTo(0, within(1e-9));
        assertThat(line.swaps()).isEqualTo(15);
    }

    @Test
    void aStopWithThreadUpCutsTheSpoolAndScrapsWhileItSettles() {
        PlantSketch sketch = hours(1).order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.startStop = start(EndOfPeriod.HOT_STANDBY, 0);
        sketch.stoppages.add(stoppage(Stoppage.Scope.STATION, Stoppage.Effect.STOPS, Stoppage.Restart.THREAD_UP));

        LineResult line = line(sketch);

        // strikes at 1100 s with 0.5 kg on the spool; 300 s repair, 600 s thread-up and 100 s settling at 0.005 kg/s;
        // makes from 2100 to 3200 s, where it strikes again with 0.5 kg on the spool; the repair ends at 3500 s
        assertThat(line.scrapKg().get(ScrapCause.SHORT_SPOOL)).isCloseTo(1.0, within(1e-9));
        assertThat(line.scrapKg().get(ScrapCause.STOPPAGE)).isCloseTo(3.5 + 0.5, within(1e-9));
        assertThat(line.stateS().get(LineState.RUNNING)).isCloseTo(2200, within(1e-6));
    }

    @Test
    void aStrandBreakLeavesTheOtherStrandRunning() {
        PlantSketch sketch = hours(1);
        sketch.strands = 2;
        sketch.heads = List.of(2);
        sketch.order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.startStop = start(EndOfPeriod.HOT_STANDBY, 0);
        sketch.stoppages.add(
                stoppage(Stoppage.Scope.STRAND, Stoppage.Effect.RUNS_TO_WASTE, Stoppage.Restart.THREAD_UP));

        LineResult line = line(sketch);

        // both strands break at 1100 s (fixed), so the line is down; each wastes 0.0025 kg/s for 300 + 100 s,
        // makes from 1500 to 2600 s, and wastes again to 3000 s
        assertThat(line.scrapKg().get(ScrapCause.STOPPAGE)).isCloseTo(2 * 2 * 0.0025 * 400, within(1e-9));
        assertThat(line.stateS().get(LineState.DOWN)).isCloseTo(800, within(1e-6));
        assertThat(line.fedKg()).isCloseTo(18, within(1e-9));
    }

    @Test
    void aPlannedStopAtAFullSpoolScrapsNoShortSpool() {
        PlantSketch sketch = hours(1).order("SO-1", PlantSketch.WHITE_PLA, 1000);
        Stoppage screen = new Stoppage(
                "screen",
                Stoppage.Scope.STATION,
                Stoppage.Clock.MASS,
                new Law.Fixed(5.5),
                new Law.Fixed(900),
                CrewNeed.NOBODY,
                Stoppage.Effect.STOPS,
                Stoppage.Restart.STABILISE,
                Optional.of(new Law.Fixed(480)),
                true,
                true);
        sketch.stoppages.add(screen);

        LineResult line = line(sketch);

        // due at 5.5 kg (1100 s), begins at 6 kg (1200 s), stands to 2100 s, settles to 2580 s
        assertThat(line.stateS().get(LineState.PLANNED_STOP)).isCloseTo(900, within(1e-6));
        assertThat(line.scrapKg().get(ScrapCause.SHORT_SPOOL)).isCloseTo(0, within(1e-9));
        assertThat(line.scrapKg().get(ScrapCause.STOPPAGE)).isCloseTo(2.4, within(1e-9));
    }

    @Test
    void aPlannedWindowStopsTheLineAndThreadsUpAfterwards() {
        PlantSketch sketch = hours(2).order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.startStop = start(EndOfPeriod.HOT_STANDBY, 0);
        sketch.plannedStops.add(new Window("maintenance", PlantSketch.ticks(1100), PlantSketch.ticks(2000)));

        LineResult line = line(sketch);

        assertThat(line.stateS().get(LineState.PLANNED_STOP)).isCloseTo(900, within(1e-6));
        assertThat(line.stateS().get(LineState.STARTING)).isCloseTo(1680, within(1e-6));
        assertThat(line.scrapKg().get(ScrapCause.SHORT_SPOOL)).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void slowingStretchesTheAccumulatorAndCostsOutput() {
        PlantSketch sketch = hours(1).order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.stopTimeS = new Law.Fixed(40);
        sketch.overflow = new OverflowPolicy.Slow(0.5, 0.6, 0.25);

        LineResult line = line(sketch);

        // 30 m are in after 17.895 s; then 0.6 x 1.67642 m/s of which 75 % is kept: 30 + 22.105 x 0.75439 = 46.7 m < 60
        // m
        assertThat(line.overflows().values()).containsOnly(0L);
        assertThat(line.peakLevelM()).isCloseTo(46.675, within(0.01));
        // 46.6755 m are wound back in 47.135 s at 2.66667 m/s, 125.69 of 335.284 m; a spool in 212.17 s: full at 200 s,
        // 412.17 s ... 3594.6 s, the last too late to slow the line again
        double slowedS = line.stateS().get(LineState.SLOWED);
        assertThat(line.swaps()).isEqualTo(17);
        assertThat(slowedS).isCloseTo(16 * 22.1047, within(0.01));
        assertThat(line.slowedLossKg()).isCloseTo(slowedS * 0.005 * 0.4, within(1e-6));
        assertThat(line.scrapKg().get(ScrapCause.SLOWED)).isCloseTo(slowedS * 0.005 * 0.6 * 0.25, within(1e-6));
    }

    @Test
    void stoppingAtAFullAccumulatorThreadsUpAgain() {
        PlantSketch sketch = hours(1).order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.stopTimeS = new Law.Fixed(40);
        sketch.startStop = start(EndOfPeriod.HOT_STANDBY, 0);
        sketch.overflow = new OverflowPolicy.Stop();

        LineResult line = line(sketch);

        // full at 200 s, accumulator full 35.79 s later, stands to 240 s, then 1680 s of thread-up and settling
        assertThat(line.overflows()).containsEntry(OverflowCause.SWAP_TOO_SLOW, 2L);
        assertThat(line.stateS().get(LineState.OVERFLOW_STOP)).isCloseTo(2 * (40 - 35.790), within(0.002));
        // again from 1920 s: full at 2120 s, stands to 2160 s, to waste for the last 1440 s; each time the 60 m held
        // are cut off as a spool too short
        assertThat(line.goodSpools()).isEqualTo(2);
        assertThat(line.scrapKg().get(ScrapCause.OVERFLOW)).isCloseTo(8.4 + 7.2, within(1e-9));
        assertThat(line.scrapKg().get(ScrapCause.SHORT_SPOOL)).isCloseTo(2 * 0.178953, within(1e-6));
    }

    @Test
    void aTwoPositionWinderWaitsOnlyForTheUnloadedSpool() {
        PlantSketch sketch = hours(1).order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.twoPosition = true;
        sketch.stopTimeS = new Law.Fixed(4);
        sketch.finishTimeS = new Law.Fixed(250);

        LineResult line = line(sketch);

        // Unloading takes 250 s from the transfer at 204 s to 454 s; the next spool is full at 400 s and waits 54 s:
        // 90.5 m of filament, 60 m of room. From then on unloading sets the pace: the third begins at 458 s, is full
        // 164.2 s later, 35.8 s after which the accumulator is too, and so on every 254 s: twelve more by 3452 s.
        assertThat(line.overflows().get(OverflowCause.SWAP_TOO_SLOW)).isEqualTo(13);
        assertThat(line.goodSpools()).isEqualTo((3600 - 204) / 254);
    }

    @Test
    void aFullRackHoldsTheSpoolOnTheWinder() {
        PlantSketch sketch = hours(1).order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.rackPlaces = 2;
        sketch.stations.add(new FinishingStation(
                "sealing",
                TaskKind.SEALING,
                1,
                List.of(new FinishingStation.Cycle(Double.POSITIVE_INFINITY, 1, new Law.Fixed(20))),
                CrewNeed.NOBODY,
                List.of(),
                2,
                0,
                List.of(),
                Place.ORIGIN));

        RunResult result = run(sketch);

        // never open: two spools fill the rack, the third (full at 600 s) stays on the winder for good
        assertThat(result.lines().get(0).goodSpools()).isEqualTo(2);
        assertThat(result.lines().get(0).blockedS()).isCloseTo(3000, within(1e-6));
        assertThat(result.lines().get(0).overflows()).containsEntry(OverflowCause.RACK_FULL, 1L);
        assertThat(result.flow().waiting()).isEqualTo(2);
    }
}
