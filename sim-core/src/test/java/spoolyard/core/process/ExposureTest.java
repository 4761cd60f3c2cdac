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
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Place;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.QualityRules;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.plant.Window;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.QualityResult.ExposureResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ScrapCause;
import spoolyard.core.record.ServerState;

/** Hand-worked cases of the exposure clock. Spools come from outside, one every 100 s from 100 s on. */
class ExposureTest {
    private static final Polymer QUICK = new Polymer("PA", 1120, 1, 255, 600, 0, 500);
    private static final Polymer SLOW = new Polymer("PLA", 1240, 1, 205, 600, 0, 100_000);

    private static PlantSketch sketch(double hours, double opensAtS) {
        PlantSketch sketch = new PlantSketch();
        sketch.hours = hours;
        sketch.lineCount = 0;
        sketch.inbound.add(new Finishing.Inbound("toll", new Law.Fixed(100), 1, Optional.of(QUICK)));
        sketch.stations.add(new FinishingStation(
                "sealing",
                TaskKind.SEALING,
                1,
                List.of(new FinishingStation.Cycle(Double.POSITIVE_INFINITY, 1, new Law.Fixed(10))),
                CrewNeed.NOBODY,
                List.of(new Window("open", PlantSketch.ticks(opensAtS), PlantSketch.ticks(1e7))),
                1000,
                0,
                List.of(),
                Place.ORIGIN));
        return sketch;
    }

    private static RunResult run(PlantSketch sketch, Exposure.Beyond beyond, Exposure.Order order, double scrapped) {
        Exposure.Oven oven = new Exposure.Oven(1, 4, new Law.Fixed(300), scrapped, CrewNeed.NOBODY);
        sketch.quality = new QualityRules(Optional.empty(), Optional.of(new Exposure(beyond, order, oven)));
        return new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();
    }

    private static ExposureResult of(RunResult result, String polymer) {
        return result.quality().exposure().stream()
                .filter(each -> each.polymer().equals(polymer))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void countsWhatIsSealedBeyondItsLimit() {
        RunResult result = run(sketch(1, 1050), Exposure.Beyond.SEAL, Exposure.Order.FIRST_COME, 0);

        // At 1050 s ten spools wait, the oldest for 950 s. The spool of 100 k s has its turn at 1050 + 10 (k - 1) s:
        // exposed for 1040 - 90 k s, more than 500 s for k = 1 to 5 (k = 6: exactly 500, which is within the limit).
        ExposureResult pa = of(result, "PA");
        assertThat(pa.beyond()).isEqualTo(5);
        assertThat(pa.longestS()).isCloseTo(950, within(1e-6));
        // By k = 11 (1100 s, turn at 1150 s) they sum to 11 x 1040 - 90 x 66 = 5500 s; later ones do not wait.
        assertThat(pa.exposedS()).isCloseTo(5500, within(1e-6));
        assertThat(pa.spools()).isEqualTo(35);
        assertThat(pa.scrapped() + pa.redried()).isZero();
    }

    @Test
    void grindsWhatIsBeyondItsLimitAtItsTurn() {
        RunResult result = run(sketch(1, 1050), Exposure.Beyond.SCRAP, Exposure.Order.FIRST_COME, 0);

        // At 1050 s those of 100 to 500 s are beyond 500 s (950 to 550 s); the sixth has stood for 450 s.
        assertThat(of(result, "PA").scrapped()).isEqualTo(5);
        assertThat(result.quality().losses()).hasSize(1);
        assertThat(result.quality().losses().get(0).cause()).isEqualTo(ScrapCause.EXPOSURE);
        assertThat(result.flow().packed()).isEqualTo(30);
    }

    @Test
    void driesAgainWhatIsBeyondItsLimit() {
        RunResult result = run(sketch(1, 1050), Exposure.Beyond.RE_DRY, Exposure.Order.FIRST_COME, 0);

        // Five go to the oven at 1050 s: the first alone, for it starts with what is there; 1350 s: the other four.
        ExposureResult pa = of(result, "PA");
        assertThat(pa.redried()).isEqualTo(5);
        assertThat(pa.beyond()).isEqualTo(5);
        assertThat(result.flow().packed()).isEqualTo(35);
        assertThat(result.quality().rework().get(0).spools()).isEqualTo(5);
        assertThat(result.quality().rework().get(0).stateS().get(ServerState.WORKING))
                .isCloseTo(600, within(1e-6));
    }

    @Test
    void grindsWhatDryingSpoils() {
        RunResult result = run(sketch(1, 1050), Exposure.Beyond.RE_DRY, Exposure.Order.FIRST_COME, 1);

        assertThat(of(result, "PA").scrapped()).isEqualTo(5);
        assertThat(result.flow().packed()).isEqualTo(30);
    }

    /**
     * Two spools come every 100 s, PA and after it PLA; from 3050 s on 60 wait, and one is sealed in 10 s, so that all
     * have had their turn at 3790 s. First come: PA of 100 k s has its turn at 3030 + 20 k s, PLA 10 s later, to k = 37;
     * after that PA goes at once and PLA in 10 s. By clock: PA of 100 k s at 3040 + 10 k s to k = 33, which ends at 3380
     * s; then PLA, and the PA of 3400 to 3700 s, each of which comes when a PLA has just begun, 10 s after they came.
     */
    @Test
    void theTightestClockGoesFirst() {
        RunResult byArrival = run(mixed(), Exposure.Beyond.SEAL, Exposure.Order.FIRST_COME, 0);
        RunResult byClock = run(mixed(), Exposure.Beyond.SEAL, Exposure.Order.TIGHTEST_CLOCK_FIRST, 0);

        // PA 3030 - 80 k s: 55 870 s in all, over 500 s to k = 31. PLA 3040 - 80 k s: 56 240 s, and 34 x 10 s.
        assertExposure(of(byArrival, "PA"), 31, 2950, 55_870);
        assertExposure(of(byArrival, "PLA"), 0, 2960, 56_580);
        // PA 3040 - 90 k s: 49 830 s in all, over 500 s to k = 28; and 4 x 10 s. The first PLA goes at 3380 s. The
        // sum of all turns is the same, as every turn takes 10 s: PLA has 55 870 + 56 580 - 49 870 s.
        assertExposure(of(byClock, "PA"), 28, 2950, 49_870);
        assertExposure(of(byClock, "PLA"), 0, 3280, 62_580);
        assertThat(byClock.flow().packed()).isEqualTo(byArrival.flow().packed()).isEqualTo(2 * 71);
    }

    private static void assertExposure(ExposureResult of, long beyond, double longestS, double exposedS) {
        assertThat(of.spools()).isEqualTo(71);
        assertThat(of.beyond()).isEqualTo(beyond);
        assertThat(of.longestS()).isCloseTo(longestS, within(1e-6));
        assertThat(of.exposedS()).isCloseTo(exposedS, within(1e-6));
    }

    private static PlantSketch mixed() {
        PlantSketch sketch = sketch(2, 3050);
        sketch.inbound.add(new Finishing.Inbound("hall 2", new Law.Fixed(100), 1, Optional.of(SLOW)));
        return sketch;
    }

    @Test
    void polymersWithoutALimitAreNotCounted() {
        PlantSketch sketch = sketch(1, 0);
        sketch.inbound.add(new Finishing.Inbound("hall 2", new Law.Fixed(100), 1));

        RunResult result = run(sketch, Exposure.Beyond.SCRAP, Exposure.Order.FIRST_COME, 0);

        assertThat(result.quality().exposure())
                .extracting(ExposureResult::polymer)
                .containsExactly("PA");
        assertThat(of(result, "PA").beyond()).isZero();
        assertThat(of(result, "PA").exposedS()).isZero();
    }

    @Test
    void aClockWithoutLimitsChangesNothing() {
        for (int seed = 1; seed <= 20; seed++) {
            PlantSketch without = RandomPlants.of(seed);
            without.quality = new QualityRules(without.quality.lab(), Optional.empty());
            without.limitExposure(Double.POSITIVE_INFINITY);
            PlantSketch with = RandomPlants.of(seed);
            with.limitExposure(Double.POSITIVE_INFINITY);
            Exposure clock = new Exposure(Exposure.Beyond.SCRAP, Exposure.Order.FIRST_COME, Exposure.Oven.NONE);
            with.quality = new QualityRules(without.quality.lab(), Optional.of(clock));

            RunResult before = new PlantRun(without.plant(), 5, 0, EventLog.SILENT).run();
            RunResult after = new PlantRun(with.plant(), 5, 0, EventLog.SILENT).run();

            assertThat(after.lines()).isEqualTo(before.lines());
            assertThat(after.orders()).isEqualTo(before.orders());
            assertThat(after.crew()).isEqualTo(before.crew());
            assertThat(after.finishing()).isEqualTo(before.finishing());
            assertThat(after.flow()).isEqualTo(before.flow());
        }
    }
}
