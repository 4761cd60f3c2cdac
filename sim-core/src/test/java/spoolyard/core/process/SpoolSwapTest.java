package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Law;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.OverflowCause;
import spoolyard.core.record.RunResult;

/** Hand-worked swaps of one 18 kg/h PLA line: v = 18/3600/1240/(pi 0.00175^2/4) = 1.67642 m/s, 1 kg in 200 s. */
class SpoolSwapTest {
    private static LineResult run(PlantSketch sketch) {
        RunResult result = new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();
        return result.lines().get(0);
    }

    @Test
    void windsASpoolEveryTwoHundredSecondsWhenTheAccumulatorTakesUpEverySwap() {
        PlantSketch sketch = new PlantSketch().order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.hours = 8 + 1 / 60.0;

        LineResult line = run(sketch);

        // 8 h / 200 s = 144 spools full; the last one is off the winder 50 s later.
        assertThat(line.swaps()).isEqualTo(144);
        assertThat(line.goodSpools()).isEqualTo(144);
        assertThat(line.fedKg()).isCloseTo(144.3, within(1e-9));
        assertThat(line.totalScrapKg()).isCloseTo(0, within(1e-9));
    }

    @Test
    void losesTheMetresThatTheAccumulatorCannotTake() {
        PlantSketch sketch = new PlantSketch().order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.stopTimeS = new Law.Fixed(37);

        LineResult line = run(sketch);

        // 37 s x 1.67642 m/s - 60 m = 2.0275 m a swap
        double lostM = line.overflowM().get(OverflowCause.SWAP_TOO_SLOW);
        long done = line.overflows().get(OverflowCause.SWAP_TOO_SLOW);
        assertThat(lostM / done).isCloseTo(2.0275, within(5e-4));
        assertThat(line.peakLevelM()).isCloseTo(60, within(1e-5));
    }

    @Test
    void aWinderThatNeedsNobodyChangesItsSpoolsAtOnce() {
        PlantSketch sketch = new PlantSketch().order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.swapCrew = CrewNeed.NOBODY;
        sketch.heads = List.of(0);

        LineResult line = run(sketch);

        // As with a person at hand: 143 swaps of 18 + 32 s are over after 8 h, and 18 s x 1.67642 m/s is the peak.
        assertThat(line.goodSpools()).isEqualTo(143);
        assertThat(line.longestSwapWaitS()).isZero();
        assertThat(line.peakLevelM()).isCloseTo(30.18, within(0.01));
        assertThat(line.totalScrapKg()).isCloseTo(0, within(1e-9));
    }

    @Test
    void aTwoPositionWinderThatNeedsNobodyUnloadsByItself() {
        PlantSketch sketch = new PlantSketch().order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.twoPosition = true;
        sketch.swapCrew = CrewNeed.NOBODY;
        sketch.heads = List.of(0);

        LineResult line = run(sketch);

        assertThat(line.goodSpools()).isEqualTo(143);
        assertThat(line.totalScrapKg()).isCloseTo(0, within(1e-9));
    }
}
