package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spoolyard.core.engine.Engine;
import spoolyard.core.plant.ChangeoverRules.Approval.Meanwhile;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Finishing;
import spoolyard.core.plant.FinishingStation;
import spoolyard.core.plant.Gauge;
import spoolyard.core.plant.InspectionLevel;
import spoolyard.core.plant.Lab;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Place;
import spoolyard.core.plant.QualityRules;
import spoolyard.core.plant.Role;
import spoolyard.core.plant.Shift;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.plant.Window;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.random.Streams;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.QualityResult.LotResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.RunResult.OrderResult;
import spoolyard.core.record.ScrapCause;
import spoolyard.core.record.ServerState;
import spoolyard.core.record.SwapLog;

/** Hand-worked cases of lots, tests and refusals. Spools come from outside, one every 100 s from 100 s on, unless said. */
class LabTest {
    private static final Lab.LotQuality SOUND = new Lab.LotQuality(0, 0, 0);
    private static final Lab.LotQuality ALL_DEFECTIVE = new Lab.LotQuality(1, 0, 0);
    private static final Optional<Lab.Sampling> SAMPLING = Optional.of(new Lab.Sampling(InspectionLevel.II, 2.5));

    private static PlantSketch inbound(double hours) {
        PlantSketch sketch = new PlantSketch();
        sketch.hours = hours;
        sketch.lineCount = 0;
        sketch.inbound.add(new Finishing.Inbound("toll", new Law.Fixed(100), 1));
        sketch.stations.add(packing(sketch.rackPlaces));
        return sketch;
    }

    private static FinishingStation packing(int rack) {
        return new FinishingStation(
                "packing",
                TaskKind.PACKING,
                1,
                List.of(new FinishingStation.Cycle(Double.POSITIVE_INFINITY, 1, new Law.Fixed(1))),
                CrewNeed.NOBODY,
                List.of(new Window("all", 0, PlantSketch.ticks(1e7))),
                rack,
                0,
                List.of(),
                Place.ORIGIN);
    }

    private static Lab lab(
            int lotSpools, int places, Lab.LotQuality quality, Lab.Refusal refusal, List<Lab.Test> tests) {
        return new Lab(
                Lab.Hold.BEFORE_PACKING,
                places,
                lotSpools,
                Double.POSITIVE_INFINITY,
                quality,
                quality == SOUND ? Optional.empty() : SAMPLING,
                tests,
                refusal,
                Place.ORIGIN);
    }

    private static Lab.Test test(double takesS, CrewNeed crew) {
        return new Lab.Test("moisture", 1, 1, new Law.Fixed(takesS), crew, 1, false, true);
    }

    private static RunResult run(PlantSketch sketch, Lab lab) {
        sketch.quality = new QualityRules(Optional.of(lab), Optional.empty());
        return new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();
    }

    private static LotResult lots(RunResult result) {
        return result.quality().lots().stream()
                .filter(l -> l.judged() > 0)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aLotIsHeldUntilItsTestIsDone() {
        RunResult result =
                run(inbound(1), lab(10, 1000, SOUND, Lab.Refusal.GRIND, List.of(test(600, CrewNeed.NOBODY))));

        // lots are complete at 1000, 2000, 3000 s and released 600 s later, the third at the last instant: 20
        // spools are packed, 10 wait to be and 6 are held
        assertThat(result.flow().packed()).isEqualTo(20);
        assertThat(lots(result).judged()).isEqualTo(3);
        assertThat(result.flow().waiting() + result.flow().inWork()).isEqualTo(16);
        assertThat(lots(result).holdS()).isCloseTo(1800, within(1e-6));
    }

    @Test
    void aLabWithoutStaffHoldsSpoolsUntilTheShift() {
        PlantSketch sketch = inbound(4);
        sketch.roles = List.of(new Role("lab", List.of(), false, List.of(), List.of()));
        long two = PlantSketch.ticks(7200);
        sketch.shifts.add(new Shift("D", two, 2 * two, List.of(1), List.of(), 0, true, 1));

        RunResult result =
                run(sketch, lab(10, 1000, SOUND, Lab.Refusal.GRIND, List.of(test(60, new CrewNeed(List.of("lab"))))));

        // seven lots by 7200 s wait for the technician; then one a minute. The first came at 1000 s.
        assertThat(lots(result).longestHoldS()).isCloseTo(7200 - 1000 + 60, within(1e-6));
        assertThat(result.quality().lab().get(0).stateS().get(ServerState.WAITING_FOR_CREW))
                .isCloseTo(6200, within(1e-6));
        assertThat(result.crew().get(0).busyS()).isCloseTo(14 * 60, within(1e-6));
    }

    @Test
    void aTestOfEachSampledSpoolTakesItsTimeForEach() {
        Lab.Test look = new Lab.Test("look", 1, 1, new Law.Fixed(10), CrewNeed.NOBODY, 1, true, true);
        Lab lab = lab(20, 1000, new Lab.LotQuality(0, 0, 1), Lab.Refusal.GRIND, List.of(look));

        RunResult result = run(inbound(1), lab);

        // a lot of 20 at 2000 s, level II: letter C, AQL 2.5: n = 5; the next would be full at 4000 s
        assertThat(lots(result).judged()).isEqualTo(1);
        assertThat(lots(result).holdS()).isCloseTo(50, within(1e-6));
        assertThat(lots(result).sampled()).isEqualTo(5);
    }

    @Test
    void aFullQuarantineOfOpenLotsIsCutSoThatItCanEmpty() {
        RunResult result = run(inbound(1), lab(1000, 4, SOUND, Lab.Refusal.GRIND, List.of(test(50, CrewNeed.NOBODY))));

        // every fourth spool fills it: lots of 4 at 400, 800 ... 3600 s, out 50 s later
        assertThat(lots(result).cut()).isEqualTo(8);
        assertThat(result.flow().packed()).isEqualTo(32);
        assertThat(result.inbound().get(0).turnedAway()).isZero();
    }

    @Test
    void aLotIsClosedInTime() {
        Lab lab = new Lab(
                Lab.Hold.BEFORE_PACKING,
                1000,
                1000,
                950,
                SOUND,
                Optional.empty(),
                List.of(),
                Lab.Refusal.GRIND,
                Place.ORIGIN);

        RunResult result = run(inbound(1), lab);

        // opened at 100 s, closed at 1050 s with 10 spools; the next opens at 1100 s, closed at 2050 s; 2100 to 3050 s
        assertThat(result.flow().packed()).isEqualTo(30);
        assertThat(lots(result).judged()).isEqualTo(3);
    }

    @Test
    void groundSpoolsAreScrapOfTheirLineAndTheOrderIsMadeAgain() {
        PlantSketch sketch = new PlantSketch();
        sketch.hours = 2;
        sketch.stations.add(packing(1000));
        sketch.order("SO-1", PlantSketch.WHITE_PLA, 10);

        RunResult result =
                run(sketch, lab(1000, 1000, ALL_DEFECTIVE, Lab.Refusal.GRIND, List.of(test(60, CrewNeed.NOBODY))));

        // Nothing is ever accepted: ten spools after the other are made and ground. The tenth is full at 10 x 200 s and
        // the swap's 50 s; a minute later the lot is refused, and the line begins again: at 2110, 4220 and 6330 s. Four
        // more are full by 7130 s and off the winder by 7180 s.
        OrderResult order = result.orders().get(0);
        assertThat(lots(result).refused()).isEqualTo(lots(result).judged()).isEqualTo(3);
        assertThat(order.packedSpools()).isZero();
        assertThat(order.lostSpools()).isEqualTo(30);
        assertThat(result.lines().get(0).scrapKg().get(ScrapCause.REFUSED_BY_LAB))
                .isCloseTo(30, within(1e-3));
        assertThat(result.flow().made()).isEqualTo(34);
        assertThat(result.lines().get(0).goodSpools()).isEqualTo(4);
        assertThat(order.startTick()).isZero();
        assertThat(order.madeTick()).isEqualTo(Ticks.NEVER);
    }

    @Test
    void anAcceptedShortfallIsDeliveredShort() {
        PlantSketch sketch = new PlantSketch();
        sketch.hours = 2;
        sketch.acceptedShortfall = 1;
        sketch.stations.add(packing(1000));
        sketch.order("SO-1", PlantSketch.WHITE_PLA, 10);

        RunResult result = run(sketch, lab(1000, 1000, ALL_DEFECTIVE, Lab.Refusal.GRIND, List.of()));

        OrderResult order = result.orders().get(0);
        assertThat(result.flow().made()).isEqualTo(10);
        assertThat(order.shortSpools()).isEqualTo(10);
        // the tenth is full at 2000 s and off the winder 50 s later, when the lot is judged
        assertThat(order.packedTick()).isEqualTo(PlantSketch.ticks(2050));
    }

    @Test
    void theLabRejectsWhatTheGaugeFlaggedAndTheOrderMakesItAgain() {
        PlantSketch sketch = new PlantSketch();
        sketch.hours = 3;
        sketch.stations.add(packing(1000));
        sketch.order("SO-1", PlantSketch.WHITE_PLA, 10);
        sketch.gauge = Optional.of(new Gauge(
                List.of(Gauge.Excursions.ofAll(new Law.Fixed(500), new Law.Fixed(10))),
                new Gauge.Policy.Flag(1),
                Optional.empty()));

        RunResult result = run(sketch, lab(10, 1000, SOUND, Lab.Refusal.GRIND, List.of(test(600, CrewNeed.NOBODY))));

        // In running time, spool n is made from 200 (n - 1) to 200 n s, and 500, 1010, 1520, 2030, 2540, 3050 s
        // fall on spools 3, 6, 8, 11, 13 and 16. Spool 10 is off the winder at 2050 s, its lot judged at 2650 s
        // without 3, 6 and 8. Three more are off at 3300 s, and 11 and 13 are rejected at 3900 s. 14 and 15 are off
        // at 4350 s, released at 4950 s and packed in a second each.
        OrderResult order = result.orders().get(0);
        assertThat(order.lostSpools()).isEqualTo(5);
        assertThat(order.packedSpools()).isEqualTo(10);
        assertThat(order.packedTick()).isEqualTo(PlantSketch.ticks(4952));
        assertThat(lots(result).judged()).isEqualTo(3);
        LineResult line = result.lines().get(0);
        assertThat(line.gauge().flaggedSpools()).isEqualTo(5);
        assertThat(line.gauge().flaggedRejectedSpools()).isEqualTo(5);
        assertThat(line.goodSpools()).isEqualTo(10);
        assertThat(line.scrapKg().get(ScrapCause.FLAGGED_SPOOL)).isCloseTo(5, within(1e-6));
    }

    /**
     * The sample of a lot of five (letter A, at AQL 2.5 % the plan n = 5, Ac = 0) is the lot: it is refused if any spool is
     * defective, and what is defective in the samples is all that is. 72 lots, at 500, 1000 ... 36 000 s, are sorted in 150 s
     * at most, before the next is full. 360 spools are defective with 1/2 each, 72 lots are good with 1/32 each: 99.9 %
     * binomial ranges 149 to 211 and 0 to 8.
     */
    @Test
    void sortingTakesTheDefectiveSpoolsOut() {
        PlantSketch sketch = inbound(10.05);

        RunResult result = run(sketch, lab(5, 1000, new Lab.LotQuality(0.5, 0, 0), sorting(), List.of()));

        LotResult lots = lots(result);
        assertThat(lots.judged()).isEqualTo(72);
        assertThat(lots.sampled()).isEqualTo(360);
        assertThat(lots.defectiveSampled()).isBetween(149L, 211L);
        assertThat(lots.refused()).isBetween(72L - 8, 72L);
        assertThat(lots.defectivePassed()).isZero();
        assertThat(lots.sorted()).isEqualTo(5 * lots.refused());
        assertThat(lots.ground()).isEqualTo(lots.defectiveSampled());
        assertThat(result.quality().losses().get(0).spools()).isEqualTo(lots.ground());
        assertThat(result.flow().packed()).isEqualTo(360 - lots.ground());
        assertThat(result.flow().waiting() + result.flow().inWork()).isEqualTo(1);
        assertThat(sortingS(result)).isCloseTo(30.0 * lots.sorted(), within(1e-6));
    }

    /** All defective: lots of 50 at 5000, 10 000 ... 35 000 s, each sorted in 1500 s, but the last in 1000 s: 33 of it. */
    @Test
    void sortingTakesThirtySecondsForEachSpool() {
        RunResult result = run(inbound(10), lab(50, 1000, ALL_DEFECTIVE, sorting(), List.of()));

        assertThat(lots(result).refused()).isEqualTo(7);
        assertThat(lots(result).sorted()).isEqualTo(350);
        assertThat(lots(result).ground()).isEqualTo(350);
        assertThat(result.quality().rework().get(0).station()).isEqualTo("sorting");
        assertThat(result.quality().rework().get(0).spools()).isEqualTo(333);
        assertThat(result.quality().losses().get(0).spools()).isEqualTo(333);
        assertThat(sortingS(result)).isCloseTo(6 * 1500 + 1000, within(1e-6));
        assertThat(result.flow().packed()).isZero();
        assertThat(result.flow().waiting() + result.flow().inWork()).isEqualTo(17 + 10);
    }

    private static Lab.Refusal sorting() {
        return new Lab.Refusal(1, new Lab.Work(1, new Law.Fixed(30), CrewNeed.NOBODY), 0, Lab.Work.NONE);
    }

    private static double sortingS(RunResult result) {
        return result.quality().rework().get(0).stateS().get(ServerState.WORKING);
    }

    /** Lots of 50 at 5000, 10 000 ... 35 000 s, wound anew in 3000 s each; of the last 16 spools in the last 1000 s. */
    @Test
    void reSpoolingPutsEverySpoolRight() {
        PlantSketch sketch = inbound(10);
        Lab.Refusal respool = new Lab.Refusal(0, Lab.Work.NONE, 1, new Lab.Work(1, new Law.Fixed(60), CrewNeed.NOBODY));

        RunResult result = run(sketch, lab(50, 1000, ALL_DEFECTIVE, respool, List.of()));

        assertThat(lots(result).respooled()).isEqualTo(350);
        assertThat(result.quality().losses()).isEmpty();
        assertThat(result.quality().rework().get(0).spools()).isEqualTo(6 * 50 + 16);
        assertThat(result.flow().packed()).isEqualTo(6 * 50 + 16);
    }

    /**
     * Of random plants those whose rack never fills, for a quarantine beside it has more room. No product is held for its
     * colour: it would stand in the quarantine. No gauge flags spools for the lab.
     */
    @Test
    void aLabThatTestsNothingChangesNothing() {
        Lab idle = new Lab(
                Lab.Hold.BEFORE_PACKING,
                Integer.MAX_VALUE,
                1,
                Double.POSITIVE_INFINITY,
                SOUND,
                Optional.empty(),
                List.of(),
                Lab.Refusal.GRIND,
                Place.ORIGIN);
        int compared = 0;

        for (int seed = 1; seed <= 40; seed++) {
            RunResult before = runOfRandomPlant(seed, QualityRules.NONE);
            if (isEverBlocked(before)) {
                continue;
            }
            RunResult after = runOfRandomPlant(seed, new QualityRules(Optional.of(idle), Optional.empty()));
            assertThat(after.lines()).isEqualTo(before.lines());
            assertThat(after.shifts()).isEqualTo(before.shifts());
            assertThat(after.orders()).isEqualTo(before.orders());
            assertThat(after.crew()).isEqualTo(before.crew());
            assertThat(after.finishing()).isEqualTo(before.finishing());
            assertThat(after.flow()).isEqualTo(before.flow());
            compared += before.flow().packed() > 0 ? 1 : 0;
        }
        assertThat(compared).isGreaterThanOrEqualTo(5);
    }

    private static RunResult runOfRandomPlant(int seed, QualityRules quality) {
        PlantSketch sketch = RandomPlants.of(seed);
        sketch.judgeColour(Meanwhile.RUN_TO_WASTE);
        sketch.gauge = Optional.empty();
        sketch.quality = quality;
        return new PlantRun(sketch.plant(), 5, 0, EventLog.SILENT).run();
    }

    private static boolean isEverBlocked(RunResult result) {
        return result.lines().stream().anyMatch(line -> line.blockedS() > 0)
                || result.inbound().stream().anyMatch(gate -> gate.turnedAway() > 0)
                || result.finishing().stream()
                        .anyMatch(station -> station.stateS().get(ServerState.BLOCKED) > 0);
    }

    /** C(16, 5) / C(20, 5) = 4368 / 15504 of the samples of 5 from 20 with 4 defective have none; 99 % interval. */
    @Test
    void aSampleIsDrawnWithoutPuttingBack() {
        PlantSketch sketch = inbound(1);
        sketch.quality =
                new QualityRules(Optional.of(lab(20, 100, SOUND, Lab.Refusal.GRIND, List.of())), Optional.empty());
        World world =
                new World(sketch.plant(), new Engine(), new Streams(20270301, 0), EventLog.SILENT, SwapLog.SILENT);
        LotLuck luck = LotLuck.of(world, "check").orElseThrow();
        List<Spool> lot = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            Spool spool = Spool.fromOutside(1, Optional.empty());
            spool.defective = i < 4;
            lot.add(spool);
        }
        int none = 0;
        int samples = 40_000;

        for (int i = 0; i < samples; i++) {
            none += luck.defectiveInSample(lot, 5) == 0 ? 1 : 0;
        }

        double truth = 4368.0 / 15504;
        double halfWidth = 2.576 * Math.sqrt(truth * (1 - truth) / samples);
        assertThat(none / (double) samples).isCloseTo(truth, within(halfWidth));
    }
}
