package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Exposure;
import spoolyard.core.plant.Finishing;
import spoolyard.core.plant.FinishingStation;
import spoolyard.core.plant.Gauge;
import spoolyard.core.plant.InspectionLevel;
import spoolyard.core.plant.Lab;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Place;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.QualityRules;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.plant.Window;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.QualityResult.ExposureResult;
import spoolyard.core.record.QualityResult.LotResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ServerState;

/**
 * Hand-worked ways through lab, rework, oven and sealing. Spools come from outside, one every 100 s from 100 s on, unless
 * said; sealing takes 10 s, packing 1 s. Shares are held against 99.9 % binomial ranges.
 */
class LabRouteTest {
    private static final Polymer QUICK = new Polymer("PA", 1120, 1, 255, 600, 0, 500);
    private static final Lab.LotQuality ALL_DEFECTIVE = new Lab.LotQuality(1, 0, 0);
    private static final Optional<Lab.Sampling> SAMPLING = Optional.of(new Lab.Sampling(InspectionLevel.II, 2.5));

    private static PlantSketch inbound(double seconds) {
        PlantSketch sketch = new PlantSketch();
        sketch.hours = seconds / 3600;
        sketch.lineCount = 0;
        sketch.inbound.add(new Finishing.Inbound("toll", new Law.Fixed(100), 1, Optional.of(QUICK)));
        return sketch;
    }

    private static FinishingStation station(String name, TaskKind kind, double takesS, double opensS) {
        return new FinishingStation(
                name,
                kind,
                1,
                List.of(new FinishingStation.Cycle(Double.POSITIVE_INFINITY, 1, new Law.Fixed(takesS))),
                CrewNeed.NOBODY,
                List.of(new Window("open", PlantSketch.ticks(opensS), PlantSketch.ticks(1e7))),
                1000,
                0,
                List.of(),
                Place.ORIGIN);
    }

    private static Lab lab(
            int lotSpools,
            Lab.LotQuality quality,
            Optional<Lab.Sampling> sampling,
            Lab.Refusal refusal,
            Lab.Test... tests) {
        return new Lab(
                Lab.Hold.BEFORE_PACKING,
                1000,
                lotSpools,
                Double.POSITIVE_INFINITY,
                quality,
                sampling,
                List.of(tests),
                refusal,
                Place.ORIGIN);
    }

    private static Lab.Test test(String name, double takesS, double shareOfLots, boolean holds) {
        return new Lab.Test(name, 1, 1, new Law.Fixed(takesS), CrewNeed.NOBODY, shareOfLots, false, holds);
    }

    private static Lab.Work work(double takesS) {
        return new Lab.Work(1, new Law.Fixed(takesS), CrewNeed.NOBODY);
    }

    private static RunResult run(PlantSketch sketch, Lab lab) {
        sketch.stations.add(station("packing", TaskKind.PACKING, 1, 0));
        sketch.quality = new QualityRules(Optional.of(lab), Optional.empty());
        return new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();
    }

    private static LotResult lots(RunResult result) {
        return result.quality().lots().stream()
                .filter(l -> l.judged() > 0)
                .findFirst()
                .orElseThrow();
    }

    /**
     * Lots of ten are closed at 1000, 2000 and 3000 s; the slower of two tests holds them for 900 s. The third holds nothing;
     * one apparatus works on it from 1000 s on.
     */
    @Test
    void theSlowestTestThatHoldsALotDecides() {
        Lab lab = lab(
                10,
                ALL_DEFECTIVE,
                Optional.empty(),
                Lab.Refusal.GRIND,
                test("moisture", 600, 1, true),
                test("print", 900, 1, true),
                test("ageing", 2000, 1, false));

        RunResult result = run(inbound(3600), lab);

        assertThat(lots(result).judged()).isEqualTo(2);
        assertThat(lots(result).holdS()).isCloseTo(1800, within(1e-6));
        assertThat(lots(result).longestHoldS()).isCloseTo(900, within(1e-6));
        assertThat(result.flow().packed()).isEqualTo(20);
        assertThat(result.quality().lab().get(2).stateS().get(ServerState.WORKING))
                .isCloseTo(2600, within(1e-6));
        // nobody takes a sample: all that is defective passes
        assertThat(lots(result).defectivePassed()).isEqualTo(20);
    }

    /** 360 lots of one, of which about half are held for 10 s: 149 to 211. A test that no lot gets holds none. */
    @Test
    void aTestIsForItsShareOfTheLots() {
        Lab lab = lab(
                1,
                new Lab.LotQuality(0, 0, 1),
                SAMPLING,
                Lab.Refusal.GRIND,
                test("half", 10, 0.5, true),
                test("none", 50, 0, true));

        RunResult result = run(inbound(36_050), lab);

        long tested = result.quality().lab().get(0).spools();
        assertThat(tested).isBetween(149L, 211L);
        assertThat(result.quality().lab().get(1).spools()).isZero();
        assertThat(lots(result).holdS()).isCloseTo(10.0 * tested, within(1e-6));
        // no lot is a bad one
        assertThat(lots(result).refused()).isZero();
        assertThat(result.flow().packed()).isEqualTo(360);
    }

    /** 360 refused lots of one: half are sorted, that is ground, and the others wound anew. */
    @Test
    void refusedLotsAreDividedByTheirShares() {
        Lab.Refusal halves = new Lab.Refusal(0.5, work(30), 0.5, work(60));

        RunResult result = run(inbound(36_090), lab(1, ALL_DEFECTIVE, SAMPLING, halves));

        LotResult lots = lots(result);
        assertThat(lots.refused()).isEqualTo(360);
        assertThat(lots.sorted()).isBetween(149L, 211L);
        assertThat(lots.respooled()).isEqualTo(360 - lots.sorted());
        assertThat(lots.ground()).isEqualTo(lots.sorted());
        assertThat(result.flow().packed()).isEqualTo(lots.respooled());
        assertThat(result.quality().losses().get(0).spools()).isEqualTo(lots.sorted());
    }

    /**
     * Sealed at once, a lot of five is full at 510 s and wound anew by 570, 630, 690, 750 and 810 s. Each is out in the air
     * from then on only, and is sealed again at once; none is tested again. By 850 s 8 came and 13 were sealed.
     */
    @Test
    void whatIsWoundAnewIsSealedAgainWithAFreshClock() {
        PlantSketch sketch = inbound(850);
        sketch.stations.add(station("sealing", TaskKind.SEALING, 10, 0));
        sketch.stations.add(station("packing", TaskKind.PACKING, 1, 0));
        Lab.Refusal respool = new Lab.Refusal(0, Lab.Work.NONE, 1, work(60));
        sketch.quality = new QualityRules(
                Optional.of(lab(5, ALL_DEFECTIVE, SAMPLING, respool)),
                Optional.of(new Exposure(Exposure.Beyond.SEAL, Exposure.Order.FIRST_COME, Exposure.Oven.NONE)));

        RunResult result = new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();

        ExposureResult pa = result.quality().exposure().get(0);
        assertThat(pa.spools()).isEqualTo(13);
        assertThat(pa.exposedS()).isZero();
        assertThat(lots(result).judged()).isEqualTo(1);
        assertThat(result.flow().packed()).isEqualTo(5);
    }

    /**
     * Off the winder at 250, 450, 650, 850 and 1050 s, 50 s after they are full; sealing opens at 1050 s: out in the air for
     * 800, 610, 420, 230 and 40 s.
     */
    @Test
    void theClockOfALinesSpoolStartsWhenItIsOffTheWinder() {
        PlantSketch sketch =
                new PlantSketch().order("SO-1", PlantSketch.WHITE_PLA, 1000).limitExposure(500);
        sketch.hours = 1200 / 3600.0;
        sketch.stations.add(station("sealing", TaskKind.SEALING, 10, 1050));
        sketch.quality = new QualityRules(
                Optional.empty(),
                Optional.of(new Exposure(Exposure.Beyond.SEAL, Exposure.Order.FIRST_COME, Exposure.Oven.NONE)));

        RunResult result = new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();

        ExposureResult pla = result.quality().exposure().get(0);
        assertThat(pla.spools()).isEqualTo(5);
        assertThat(pla.beyond()).isEqualTo(2);
        assertThat(pla.longestS()).isCloseTo(800, within(1e-6));
        assertThat(pla.exposedS()).isCloseTo(2100, within(1e-6));
    }

    /**
     * Sealing opens at 36 000 s, when 354 spools have stood for more than 500 s: the first is dried alone, the others in 89
     * batches of four, 300 s each. Half of them are spoilt by it: 146 to 208.
     */
    @Test
    void dryingSpoilsItsShare() {
        PlantSketch sketch = inbound(64_800);
        sketch.stations.add(station("sealing", TaskKind.SEALING, 10, 36_000));
        Exposure.Oven oven = new Exposure.Oven(1, 4, new Law.Fixed(300), 0.5, CrewNeed.NOBODY);
        sketch.quality = new QualityRules(
                Optional.empty(), Optional.of(new Exposure(Exposure.Beyond.RE_DRY, Exposure.Order.FIRST_COME, oven)));

        RunResult result = new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();

        ExposureResult pa = result.quality().exposure().get(0);
        assertThat(pa.beyond()).isEqualTo(354);
        assertThat(pa.scrapped()).isBetween(146L, 208L);
        assertThat(pa.redried()).isEqualTo(354 - pa.scrapped());
        assertThat(result.quality().rework().get(0).stateS().get(ServerState.WORKING))
                .isCloseTo(90 * 300, within(1e-6));
    }

    /** In 72 000 s 359 spools come off; every one sees an excursion of 10 s each 110 s, and half of them are rejected. */
    @Test
    void theGaugeRejectsItsShareOfWhatItFlags() {
        PlantSketch sketch = new PlantSketch().order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.hours = 20;
        sketch.gauge = Optional.of(new Gauge(
                List.of(Gauge.Excursions.ofAll(new Law.Fixed(100), new Law.Fixed(10))),
                new Gauge.Policy.Flag(0.5),
                Optional.empty()));

        RunResult result = new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();

        long rejected = result.lines().get(0).gauge().flaggedRejectedSpools();
        assertThat(rejected).isBetween(148L, 211L);
        assertThat(result.lines().get(0).goodSpools()).isEqualTo(359 - rejected);
    }
}
