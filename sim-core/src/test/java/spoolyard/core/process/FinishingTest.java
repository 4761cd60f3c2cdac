package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Finishing;
import spoolyard.core.plant.FinishingStation;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Place;
import spoolyard.core.plant.Stoppage;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.plant.Window;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ServerState;
import spoolyard.core.record.StationResult;

/** Hand-worked cases of what happens to spools after the line. Spools come from outside, one every 100 s from 100 s on. */
class FinishingTest {
    private static PlantSketch sketch(double hours) {
        PlantSketch sketch = new PlantSketch();
        sketch.hours = hours;
        sketch.lineCount = 0;
        sketch.inbound.add(new Finishing.Inbound("toll", new Law.Fixed(100), 1));
        return sketch;
    }

    private static FinishingStation station(
            String name, int batch, double cycleS, CrewNeed crew, int rack, List<Window> open, Stoppage... stoppages) {
        return new FinishingStation(
                name,
                TaskKind.PACKING,
                1,
                List.of(new FinishingStation.Cycle(Double.POSITIVE_INFINITY, batch, new Law.Fixed(cycleS))),
                crew,
                open,
                rack,
                0,
                List.of(stoppages),
                Place.ORIGIN);
    }

    private static List<Window> always() {
        return List.of(new Window("all", 0, PlantSketch.ticks(1e7)));
    }

    private static Stoppage jam(Stoppage.Clock clock, double untilNext) {
        return new Stoppage(
                "jam",
                Stoppage.Scope.STATION,
                clock,
                new Law.Fixed(untilNext),
                new Law.Fixed(30),
                CrewNeed.NOBODY,
                Stoppage.Effect.STOPS,
                Stoppage.Restart.NONE,
                Optional.empty(),
                false,
                false);
    }

    private static RunResult run(PlantSketch sketch) {
        return new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();
    }

    @Test
    void aCycleStartsWithWhatIsThere() {
        PlantSketch sketch = sketch(1);
        sketch.stations.add(station("sealing", 2, 150, CrewNeed.NOBODY, 10, always()));

        StationResult sealing = run(sketch).finishing().get(0);

        // 100-250 s: the spool of 100. 250-400: that of 200. 400-550: that of 300, for what arrives at 400 comes
        // after what finishes at 400. 550-700: those of 400 and 500. 700-850: that of 600 ... 3 spools in each 300
        // s from 400 s on; 21 cycles from then end by 3550 s: 11 x 1 + 10 x 2.
        assertThat(sealing.spools()).isEqualTo(1 + 1 + 11 + 20);
        // the spool of 400 waits to 550 s
        assertThat(sealing.longestWaitS()).isCloseTo(150, within(1e-6));
        assertThat(sealing.stateS().get(ServerState.WORKING)).isCloseTo(3500, within(1e-6));
    }

    @Test
    void aFullNextRackBlocksThePlace() {
        PlantSketch sketch = sketch(1);
        sketch.stations.add(station("sealing", 1, 10, CrewNeed.NOBODY, 5, always()));
        sketch.stations.add(station("packing", 1, 10, CrewNeed.NOBODY, 2, List.of()));

        RunResult result = run(sketch);

        // packing never opens: 2 spools in its rack, 1 blocked on sealing since 310 s, 5 in the first rack, the
        // rest go back
        assertThat(result.finishing().get(0).stateS().get(ServerState.BLOCKED)).isCloseTo(3600 - 310, within(1e-6));
        assertThat(result.flow().waiting()).isEqualTo(7);
        assertThat(result.flow().inWork()).isEqualTo(1);
        assertThat(result.inbound().get(0).arrived()).isEqualTo(36);
        assertThat(result.inbound().get(0).turnedAway()).isEqualTo(36 - 8);
    }

    @Test
    void aMachineGoesOnWhereItStoodAfterAJam() {
        PlantSketch sketch = sketch(640 / 3600.0);
        sketch.stations.add(
                station("sealing", 1, 80, CrewNeed.NOBODY, 10, always(), jam(Stoppage.Clock.RUNNING_TIME, 130)));

        StationResult sealing = run(sketch).finishing().get(0);

        // Works 100-180 and 200-250, where 130 s of work are over; jam to 280; goes on 280-310. 310-390; 400-420,
        // jam to 450, 450-510; 510-580, jam to 610, 610-620; 620 on: the spool of 600 has waited for 20 s.
        assertThat(sealing.spools()).isEqualTo(5);
        assertThat(sealing.longestWaitS()).isCloseTo(20, within(1e-6));
        assertThat(sealing.stateS().get(ServerState.DOWN)).isCloseTo(90, within(1e-6));
        assertThat(sealing.stateS().get(ServerState.WORKING)).isCloseTo(5 * 80 + 20, within(1e-6));
    }

    @Test
    void aPersonStopsWhenThePlaceFailsAndFinishesAfterwards() {
        PlantSketch sketch = sketch(390 / 3600.0);
        sketch.stations.add(
                station("packing", 1, 80, PlantSketch.OPERATOR, 10, always(), jam(Stoppage.Clock.RUNNING_TIME, 50)));

        RunResult result = run(sketch);

        // Spool 1: 100-150, jam to 180, 180-210. Spool 2 (came at 200): 210-230, jam to 260, 260-310, jam to 340,
        // 340-350. Spool 3 (came at 300): 350-390, where the next jam is due.
        assertThat(result.flow().packed()).isEqualTo(2);
        assertThat(result.finishing().get(0).stateS().get(ServerState.DOWN)).isCloseTo(90, within(1e-6));
        assertThat(result.crew().get(0).busyS()).isCloseTo(80 + 20 + 50 + 50, within(1e-6));
    }

    @Test
    void aClockByMassCountsFinishedSpools() {
        PlantSketch sketch = sketch(1);
        sketch.stations.add(station("sealing", 1, 20, CrewNeed.NOBODY, 10, always(), jam(Stoppage.Clock.MASS, 5)));

        StationResult sealing = run(sketch).finishing().get(0);

        // 35 spools of 1 kg are done by 3600 s: a jam after each fifth
        assertThat(sealing.spools()).isEqualTo(35);
        assertThat(sealing.stateS().get(ServerState.DOWN)).isCloseTo(7 * 30, within(1e-6));
    }

    @Test
    void nobodyStartsACycleOutsideOpeningHours() {
        PlantSketch sketch = sketch(1);
        List<Window> morning = List.of(new Window("early", 0, PlantSketch.ticks(1000)));
        sketch.stations.add(station("packing", 1, 60, CrewNeed.NOBODY, 100, morning));

        RunResult result = run(sketch);

        // the spool of 900 s is done at 960 s; that of 1000 s comes when the station has just closed
        assertThat(result.flow().packed()).isEqualTo(9);
        assertThat(result.finishing().get(0).stateS().get(ServerState.CLOSED)).isCloseTo(2600, within(1e-6));
    }

    @Test
    void cartonsAndPalletsCloseWhenFullOrWhenTheOrderIs() {
        PlantSketch sketch = new PlantSketch();
        sketch.hours = 2;
        sketch.cartons.add(new Finishing.CartonSize(1, 4));
        sketch.order("SO-1", PlantSketch.WHITE_PLA, 10).order("SO-2", PlantSketch.BLACK_PLA, 4);

        RunResult result = run(sketch);

        // 10 spools: 4 + 4 + 2; then 4
        assertThat(result.flow().cartons()).isEqualTo(4);
        assertThat(result.flow().packed()).isEqualTo(14);
    }
}
