package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Exposure;
import spoolyard.core.plant.FinishingStation;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.OpeningSpools;
import spoolyard.core.plant.Place;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.QualityRules;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.plant.Window;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.RunResult.OrderResult;

/** Hand-worked cases of spools that stand in racks at the start. Packing takes 20 s a spool. */
class OpeningRacksTest {
    private static OpeningSpools spools(String station, Optional<String> order, int spools, double ageS) {
        return new OpeningSpools(station, order, 1, Optional.of(PlantSketch.PLA), spools, ageS);
    }

    private static RunResult run(PlantSketch sketch) {
        return new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();
    }

    /**
     * Of ten spools ordered four stand before packing: packed at 20, 40, 60 and 80 s. The line makes the other six, one
     * in 200 s, and each is packed 20 s after it came. In the system they are for (20 + 40 + 60 + 80 + 6 x 20) / 10 s.
     */
    @Test
    void countTowardsTheirOrderButForNoLine() {
        PlantSketch sketch = new PlantSketch().order("SO-1", PlantSketch.WHITE_PLA, 10);
        sketch.opening.add(spools("packing", Optional.of("SO-1"), 4, 0));

        RunResult result = run(sketch);

        assertThat(result.flow().opening()).isEqualTo(4);
        assertThat(result.flow().made()).isEqualTo(6);
        assertThat(result.flow().packed()).isEqualTo(10);
        assertThat(result.flow().surplus()).isZero();
        assertThat(result.flow().meanInSystemS()).isCloseTo(32, within(1e-9));
        assertThat(result.lines().get(0).goodSpools()).isEqualTo(6);
        OrderResult order = result.orders().get(0);
        assertThat(order.goodSpools()).isEqualTo(6);
        assertThat(order.packedSpools()).isEqualTo(10);
    }

    /** The first order is made before the run: it is packed at 3 x 20 s, and the line begins with the second. */
    @Test
    void letALinePassOverAnOrderThatIsMade() {
        PlantSketch sketch =
                new PlantSketch().order("SO-1", PlantSketch.WHITE_PLA, 3).order("SO-2", PlantSketch.WHITE_PLA, 2);
        sketch.opening.add(spools("packing", Optional.of("SO-1"), 3, 0));

        List<OrderResult> orders = run(sketch).orders();

        assertThat(orders.get(0).startTick()).isEqualTo(Ticks.NEVER);
        assertThat(orders.get(0).madeTick()).isZero();
        assertThat(orders.get(0).packedTick()).isEqualTo(PlantSketch.ticks(60));
        assertThat(orders.get(1).startTick()).isZero();
        assertThat(orders.get(1).goodSpools()).isEqualTo(2);
    }

    /** By rack order: two of no order go first, at 20 and 40 s; the one that is ordered follows at 60 s. */
    @Test
    void arePackedInTheOrderInWhichTheyAreListed() {
        PlantSketch sketch = new PlantSketch().order("SO-1", PlantSketch.WHITE_PLA, 1);
        sketch.opening.add(spools("packing", Optional.empty(), 2, 0));
        sketch.opening.add(spools("packing", Optional.of("SO-1"), 1, 0));

        RunResult result = run(sketch);

        assertThat(result.orders().get(0).packedTick()).isEqualTo(PlantSketch.ticks(60));
        assertThat(result.flow().packed()).isEqualTo(3);
        assertThat(result.flow().made()).isZero();
    }

    /**
     * The limit is 500 s and sealing, 10 s a spool, opens at 50 s. With an age of 430 s the turns come after 480, 490 and
     * 500 s, which is within it. With 445 s they come after 495, 505 and, as the second is ground at once, 505 s: two
     * are lost, and the line makes them again.
     */
    @Test
    void bringTheAgeOfTheirExposure() {
        assertThat(sealed(430).orders().get(0).lostSpools()).isZero();

        RunResult late = sealed(445);

        OrderResult order = late.orders().get(0);
        assertThat(order.lostSpools()).isEqualTo(2);
        assertThat(order.goodSpools()).isEqualTo(2);
        assertThat(order.packedSpools()).isEqualTo(3);
        assertThat(late.lines().get(0).goodSpools()).isEqualTo(2);
        assertThat(late.quality().losses()).hasSize(1);
        assertThat(late.quality().losses().get(0).line()).isEmpty();
        assertThat(late.quality().losses().get(0).kg()).isEqualTo(2);
    }

    private static RunResult sealed(double ageS) {
        PlantSketch sketch =
                new PlantSketch().order("SO-1", PlantSketch.WHITE_PLA, 3).limitExposure(500);
        Polymer polymer = sketch.orders.get(0).product().polymer();
        sketch.opening.add(new OpeningSpools("sealing", Optional.of("SO-1"), 1, Optional.of(polymer), 3, ageS));
        sketch.stations.add(new FinishingStation(
                "sealing",
                TaskKind.SEALING,
                1,
                List.of(new FinishingStation.Cycle(Double.POSITIVE_INFINITY, 1, new Law.Fixed(10))),
                CrewNeed.NOBODY,
                List.of(new Window("open", PlantSketch.ticks(50), PlantSketch.ticks(1e7))),
                1000,
                0,
                List.of(),
                Place.ORIGIN));
        Exposure.Oven oven = new Exposure.Oven(1, 4, new Law.Fixed(300), 0, CrewNeed.NOBODY);
        sketch.quality = new QualityRules(
                Optional.empty(), Optional.of(new Exposure(Exposure.Beyond.SCRAP, Exposure.Order.FIRST_COME, oven)));
        return run(sketch);
    }
}
