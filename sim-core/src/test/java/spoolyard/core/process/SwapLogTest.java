package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.Law;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.OverflowCause;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.Swap;
import spoolyard.core.record.SwapLog;

/** Hand-worked swaps of one 18 kg/h PLA line as they are told: v = 1.67642 m/s, 1 kg in 200 s, room for 60 m. */
class SwapLogTest {
    private static final double SPEED_M_PER_S = 1.67642;

    private final List<Swap> told = new ArrayList<>();

    private RunResult run(PlantSketch sketch, SwapLog log) {
        return new PlantRun(sketch.plant(), PlantLaws.tables(sketch.plant()), 1, 0, EventLog.SILENT, log).run();
    }

    private static PlantSketch slowSwaps() {
        PlantSketch sketch = new PlantSketch().order("SO-1", PlantSketch.WHITE_PLA, 1000);
        sketch.stopTimeS = new Law.Fixed(37);
        return sketch;
    }

    /** Full at 200 s, somebody there at once, turns at 237 s, 37 v - 60 = 2.0275 m lost; the next is full at 438.8 s. */
    @Test
    void tellsWhenASpoolWasFullAndWhenTheWinderTurnedAgain() {
        run(slowSwaps(), told::add);

        Swap first = told.get(0);
        assertThat(first.line()).isEqualTo("L1");
        assertThat(first.strand()).isEqualTo(1);
        assertThat(first.product()).isEqualTo(PlantSketch.WHITE_PLA);
        assertThat(first.fullTick()).isCloseTo(200 * Ticks.PER_SECOND, within(2L));
        assertThat(first.begunTick()).isEqualTo(first.fullTick());
        assertThat(first.turnedTick() - first.fullTick()).isEqualTo(37 * Ticks.PER_SECOND);
        assertThat(first.fullLevelM()).isZero();
        assertThat(first.begunMPerS()).isCloseTo(SPEED_M_PER_S, within(1e-5));
        assertThat(first.peakLevelM()).isCloseTo(60, within(1e-4));
        assertThat(first.overflow()).contains(OverflowCause.SWAP_TOO_SLOW);
        assertThat(first.totalLostM()).isCloseTo(2.0275, within(5e-4));
        assertThat(first.disturbedTick()).isEqualTo(Ticks.NEVER);
    }

    @Test
    void tellsEverySwapOnceAndTheOneUnderWayAtTheEnd() {
        RunResult result = run(slowSwaps(), told::add);

        assertThat(told).hasSize((int) result.lines().get(0).swaps());
        double lostM = told.stream().mapToDouble(Swap::totalLostM).sum();
        assertThat(lostM)
                .isCloseTo(
                        result.lines().get(0).overflowM().values().stream()
                                .mapToDouble(Double::doubleValue)
                                .sum(),
                        within(1e-9));
    }

    /** With nobody at work the first full spool stays on, and the accumulator fills 35.79 s later. */
    @Test
    void aSwapThatNobodyCameForHasNotBegun() {
        PlantSketch sketch = slowSwaps();
        sketch.heads = List.of(0);

        run(sketch, told::add);

        assertThat(told).hasSize(1);
        assertThat(told.get(0).begunTick()).isEqualTo(Ticks.NEVER);
        assertThat(told.get(0).turnedTick()).isEqualTo(Ticks.NEVER);
        assertThat(told.get(0).overflow()).contains(OverflowCause.NO_CREW);
    }

    @Test
    void tellingChangesNothing() {
        assertThat(run(slowSwaps(), told::add)).isEqualTo(run(slowSwaps(), SwapLog.SILENT));
        assertThat(told).isNotEmpty();
        assertThat(SwapLog.SILENT.isOn()).isFalse();
    }
}
