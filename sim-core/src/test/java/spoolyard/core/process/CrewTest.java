package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.Break;
import spoolyard.core.plant.Crew;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Place;
import spoolyard.core.plant.Role;
import spoolyard.core.plant.Shift;
import spoolyard.core.record.Activity;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.OverflowCause;
import spoolyard.core.record.RunResult;

/**
 * Hand-worked cases of who comes when. The line is that of {@link SpoolSwapTest}: a full spool every 200 s, 18 s of swap
 * with the winder stopped, 32 s of finishing; the accumulator holds 60 m, which is 35.79 s at 1.67642 m/s.
 */
class CrewTest {
    private static final Role OPERATOR = new Role("operator", List.of(), false, List.of(), List.of());

    private static RunResult run(PlantSketch sketch) {
        return new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();
    }

    private static PlantSketch hour() {
        PlantSketch sketch = new PlantSketch();
        sketch.hours = 1;
        return sketch.order("SO-1", PlantSketch.WHITE_PLA, 1000);
    }

    private static Shift shift(String name, double fromS, double toS, List<Integer> heads, Break... breaks) {
        return new Shift(name, PlantSketch.ticks(fromS), PlantSketch.ticks(toS), heads, List.of(breaks), 0, true, 1);
    }

    private static Break rest(double afterS, double lengthS, boolean staggered, boolean relieved) {
        return new Break(PlantSketch.ticks(afterS), PlantSketch.ticks(lengthS), staggered, relieved);
    }

    @Test
    void walkingCountsAsWaiting() {
        PlantSketch sketch = hour();
        sketch.walkingSpeedMPerS = 1.2;
        sketch.linePlace = new Place(12, 0);

        LineResult line = run(sketch).lines().get(0);

        // the first walk is 12 m at 1.2 m/s = 10 s; afterwards the operator stands at the line
        assertThat(line.longestSwapWaitS()).isCloseTo(10, within(1e-6));
        assertThat(line.meanSwapWaitS() * (line.swaps() - 1)).isCloseTo(10, within(1e-6));
    }

    @Test
    void tasksThatFollowEachOtherAtOnceAreOneActivePeriod() {
        PlantSketch oneLine = hour().order("SO-2", PlantSketch.WHITE_PLA, 1000);
        PlantSketch twoLines = hour();
        twoLines.lineCount = 2;
        twoLines.order("SO-2", PlantSketch.WHITE_PLA, 1000);
        oneLine.hours = 0.3;
        twoLines.hours = 0.3;

        RunResult one = run(oneLine);
        RunResult two = run(twoLines);

        // Line 1 is full at 200, 400 ... 1000 s and takes 50 s each time. Line 2 is full at 200 s too, waits 50 s,
        // loses
        // 50 + 18 - 35.79 = 32.2 s of filament and is full at 432.2, 632.2 ... 1032.2 s: always while the operator is
        // at
        // line 1, who then goes straight on. The fifth time ends at 1100 s, after the run.
        assertThat(one.crew().get(0).tasks()).isEqualTo(5);
        assertThat(activity(one, Activity.Kind.CREW).periods()).isEqualTo(5);
        assertThat(activity(two, Activity.Kind.CREW).periods()).isEqualTo(5);
        assertThat(two.crew().get(0).tasks()).isEqualTo(9);
    }

    private static Activity activity(RunResult run, Activity.Kind kind) {
        return run.activity().stream()
                .filter(each -> each.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    /** A role is active while nobody of it is idle: two operators at one line never are, as one of them has no work. */
    @Test
    void aRoleIsActiveOnlyWhileAllItsPeopleAre() {
        PlantSketch sketch = hour();
        sketch.heads = List.of(2);

        Activity crew = activity(run(sketch), Activity.Kind.CREW);

        assertThat(crew.periods()).isZero();
        assertThat(crew.meanActiveS()).isNaN();
    }

    @Test
    void nobodySwapsDuringABreakWithoutRelief() {
        PlantSketch sketch = hour();
        sketch.shifts.add(shift("D", 0, 3600, List.of(1), rest(1190, 600, false, false)));

        LineResult line = run(sketch).lines().get(0);

        // Spool 6 is full at 1200 s; the break lasts from 1190 to 1790 s; the swap then takes 18 s.
        // The accumulator is full after 35.79 s, so 590 + 18 - 35.79 s of filament is lost: 18 s of it while swapped.
        assertThat(line.longestSwapWaitS()).isCloseTo(590, within(1e-6));
        assertThat(line.overflows()).containsEntry(OverflowCause.NO_CREW, 1L);
        assertThat(line.overflowM().get(OverflowCause.NO_CREW)).isCloseTo((590 - 35.79) * 1.67642, within(0.02));
        assertThat(line.overflowM().get(OverflowCause.SWAP_TOO_SLOW)).isCloseTo(18 * 1.67642, within(0.001));
    }

    @Test
    void theLeadStandsInDuringABreakWithRelief() {
        PlantSketch sketch = hour();
        sketch.roles = List.of(OPERATOR, new Role("lead", List.of(), false, List.of(), List.of("operator")));
        sketch.shifts.add(shift("D", 0, 3600, List.of(1, 1), rest(1190, 600, false, true)));

        RunResult result = run(sketch);

        assertThat(result.lines().get(0).longestSwapWaitS()).isZero();
        // spools 6, 7 and 8 are full at 1200, 1400 and 1600 s, within the break
        assertThat(result.crew().get(1).tasks()).isEqualTo(3);
    }

    @Test
    void theLeadDoesNoSwapsOutsideBreaks() {
        PlantSketch sketch = hour();
        sketch.roles = List.of(OPERATOR, new Role("lead", List.of(), false, List.of(), List.of("operator")));
        sketch.shifts.add(shift("D", 0, 3600, List.of(0, 1)));

        assertThat(run(sketch).lines().get(0).goodSpools()).isZero();
    }

    @Test
    void staggeredBreaksLeaveSomebodyAtWork() {
        PlantSketch together = hour();
        together.shifts.add(shift("D", 0, 3600, List.of(2), rest(1190, 600, false, false)));
        PlantSketch staggered = hour();
        staggered.shifts.add(shift("D", 0, 3600, List.of(2), rest(1190, 600, true, false)));

        assertThat(run(together).lines().get(0).longestSwapWaitS()).isCloseTo(590, within(1e-6));
        assertThat(run(staggered).lines().get(0).longestSwapWaitS()).isZero();
        assertThat(run(staggered).crew().get(0).breakS()).isCloseTo(1200, within(1e-6));
    }

    @Test
    void aBreakWaitsForTheTaskInHand() {
        PlantSketch sketch = hour();
        sketch.shifts.add(shift("D", 0, 3600, List.of(1), rest(1210, 100, false, false)));

        RunResult result = run(sketch);

        // The swap of 1200 s lasts to 1250 s; the break is then taken in full, to 1350 s, before the spool of 1400 s.
        assertThat(result.crew().get(0).breakS()).isCloseTo(100, within(1e-6));
        assertThat(result.lines().get(0).longestSwapWaitS()).isZero();
    }

    @Test
    void aPersonWhoFinishesTheTaskLeavesTheNextOneFree() {
        PlantSketch sketch = hour();
        sketch.shifts.add(shift("D", 0, 1205, List.of(1)));
        sketch.shifts.add(shift("E", 1205, 3600, List.of(1)));

        RunResult result = run(sketch);

        // the swap in hand at 1205 s goes on to 1250 s: 45 s beyond the shift
        assertThat(result.crew().get(0).presentS()).isCloseTo(1250, within(1e-6));
        assertThat(result.crew().get(0).paidS()).isCloseTo(1205, within(1e-6));
        assertThat(result.lines().get(0).totalScrapKg()).isCloseTo(0, within(1e-9));
    }

    @Test
    void aTaskHandedOverGoesOnWhereItStood() {
        PlantSketch sketch = hour();
        sketch.endOfShift = Crew.EndOfShift.HAND_OVER;
        sketch.shifts.add(shift("D", 0, 1205, List.of(1)));
        sketch.shifts.add(shift("E", 1205, 3600, List.of(1)));
        List<String> told = new ArrayList<>();

        RunResult result = new PlantRun(sketch.plant(), 1, 0, (tick, where, what, detail) -> {
                    if (what.equals("good spool")) {
                        told.add(Long.toString(tick));
                    }
                })
                .run();

        // 13 s of the stop and 32 s of finishing are left at 1205 s: the spool is still taken off at 1250 s
        assertThat(told.get(5)).isEqualTo("1250000000");
        assertThat(result.crew().get(0).presentS()).isCloseTo(1205, within(1e-6));
    }

    @Test
    void strictZonesLeaveACallUnansweredOnPurpose() {
        PlantSketch strict = hour();
        strict.lineCount = 2;
        strict.roles = List.of(new Role("operator", List.of(List.of("L2"), List.of("L2")), true, List.of(), List.of()));
        strict.heads = List.of(2);

        assertThat(run(strict).lines().get(0).goodSpools()).isZero();
    }

    @Test
    void aNightPaceLengthensAttendedTime() {
        PlantSketch sketch = hour();
        sketch.stopTimeS = new Law.Fixed(20);
        sketch.shifts.add(new Shift("N", 0, PlantSketch.ticks(3600), List.of(1), List.of(), 0, true, 1.1));

        // 17 swaps of (20 + 32) s at 1.1, the 18th is full at the horizon
        assertThat(run(sketch).crew().get(0).busyS()).isCloseTo(17 * 52 * 1.1, within(1e-4));
    }

    @Test
    void aHandOverInsideTheShiftCostsCover() {
        PlantSketch sketch = hour();
        sketch.shifts.add(
                new Shift("D", 0, PlantSketch.ticks(3600), List.of(1), List.of(), PlantSketch.ticks(600), false, 1));

        // the spool that is full at 200 s waits for the end of the briefing at 600 s
        assertThat(run(sketch).lines().get(0).longestSwapWaitS()).isCloseTo(400, within(1e-6));
    }

    @Test
    void anOverlappingHandOverIsPaidOnTop() {
        PlantSketch sketch = hour();
        sketch.shifts.add(
                new Shift("D", 0, PlantSketch.ticks(3600), List.of(1), List.of(), PlantSketch.ticks(600), true, 1));

        RunResult result = run(sketch);

        assertThat(result.crew().get(0).paidS()).isCloseTo(4200, within(1e-6));
        assertThat(result.lines().get(0).longestSwapWaitS()).isZero();
    }
}
