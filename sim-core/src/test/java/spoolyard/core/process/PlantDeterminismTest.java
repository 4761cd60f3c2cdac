package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.OrderBook;
import spoolyard.core.plant.Plant;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.RunResult;

/** The promises of reproducibility, and that what should differ does. */
class PlantDeterminismTest {
    private static List<String> trace(Plant plant, long seed, int replication, String station) {
        List<String> told = new ArrayList<>();
        new PlantRun(plant, seed, replication, (tick, where, what, detail) -> {
                    if (station.isEmpty() || where.equals(station)) {
                        told.add(tick + " " + where + " " + what + " " + detail);
                    }
                })
                .run();
        return told;
    }

    /** Two lines, each with an operator of its own, so that one cannot hold up the other. */
    private static PlantSketch twoLines() {
        PlantSketch sketch = new PlantSketch();
        sketch.lineCount = 2;
        sketch.heads = List.of(2);
        sketch.stopTimeS = new Law.Lognormal(25, 0.5);
        sketch.finishTimeS = new Law.Exponential(30);
        sketch.defects = 0.1;
        return sketch;
    }

    @Test
    void theSameSeedTellsTheSameStory() {
        Plant plant = RandomPlants.of(4711).plant();

        assertThat(trace(plant, 1, 0, "")).isEqualTo(trace(plant, 1, 0, ""));
        assertThat(new PlantRun(plant, 1, 3, EventLog.SILENT).run())
                .isEqualTo(new PlantRun(plant, 1, 3, EventLog.SILENT).run());
    }

    @Test
    void anotherSeedOrReplicationTellsAnother() {
        Plant plant = RandomPlants.of(4711).plant();

        assertThat(trace(plant, 2, 0, "")).isNotEqualTo(trace(plant, 1, 0, ""));
        assertThat(trace(plant, 1, 1, "")).isNotEqualTo(trace(plant, 1, 0, ""));
    }

    @Test
    void runsSideBySideEqualRunsOneAfterTheOther() {
        Plant plant = RandomPlants.of(4712).plant();
        List<RunResult> serial = IntStream.range(0, 16)
                .mapToObj(i -> new PlantRun(plant, 9, i, EventLog.SILENT).run())
                .toList();

        List<RunResult> parallel = IntStream.range(0, 16)
                .parallel()
                .mapToObj(i -> new PlantRun(plant, 9, i, EventLog.SILENT).run())
                .toList();

        assertThat(parallel).isEqualTo(serial);
    }

    @Test
    void anUnrelatedLineLeavesTheLuckOfTheOthersAlone() {
        PlantSketch one = twoLines();
        one.lineCount = 1;
        one.order("SO-1", PlantSketch.WHITE_PLA, 1000);
        PlantSketch two =
                twoLines().order("SO-1", PlantSketch.WHITE_PLA, 1000).order("SO-2", PlantSketch.BLACK_PLA, 1000);

        assertThat(trace(two.plant(), 5, 0, "L1")).isNotEmpty().isEqualTo(trace(one.plant(), 5, 0, "L1"));
    }

    @Test
    void theOrderOfTheRowsInTheFilesDoesNotChangeTheLuck() {
        Plant plant = twoLines()
                .orderFor("L1", "SO-1", PlantSketch.WHITE_PLA, 1000)
                .orderFor("L2", "SO-2", PlantSketch.BLACK_PLA, 1000)
                .plant();
        Plant reversed = new Plant(
                plant.name(),
                plant.horizonTicks(),
                reversed(plant.lines()),
                plant.crew(),
                plant.shifts(),
                plant.changeovers(),
                plant.finishing(),
                new OrderBook(reversed(plant.book().orders()), plant.book().rule(), Map.of()));

        for (String line : List.of("L1", "L2")) {
            assertThat(trace(reversed, 5, 0, line)).hasSizeGreaterThan(100).isEqualTo(trace(plant, 5, 0, line));
        }
    }

    private static <T> List<T> reversed(List<T> list) {
        List<T> copy = new ArrayList<>(list);
        Collections.reverse(copy);
        return copy;
    }
}
