package spoolyard.analysis.corners;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.RunResult.FlowResult;
import spoolyard.core.record.StationResult;

/**
 * Little's law in finishing with batches, repeats, stoppages, a rack that must hold the night and spools from outside.
 *
 * <p>Source: J. D. C. Little, A proof for the queuing formula L = lambda W, Operations Research 9 (1961) 383-387; over a
 * finite run it is an identity of areas: horizon x mean number = sum of the times in the system, those of the spools still
 * inside up to the end. Exact, so no interval.
 */
final class LittleLawTheoryTest {
    /** The lines' orders end on the sixth day at the latest and nothing comes from outside: at the end nothing is inside. */
    @Test
    void isExactWhenEverySpoolHasLeft() {
        RunResult run = Corner.of("finishing/all-leave.yaml").run();
        FlowResult flow = run.flow();

        assertThat(flow.packed()).isEqualTo(flow.made()).isGreaterThan(3000);
        assertThat(flow.waiting() + flow.inWork()).isZero();
        assertThat(flow.meanSpoolsInSystem() * Ticks.toSeconds(run.horizonTicks()))
                .isCloseTo(flow.meanInSystemS() * flow.packed(), Percentage.withPercentage(1e-9));
    }

    /** What is missing is the time so far of the spools still inside: not negative, at most their number x the horizon. */
    @Test
    void isMissedByNoMoreThanTheSpoolsStillInside() {
        RunResult run = Corner.of("finishing").run();
        FlowResult flow = run.flow();

        long inside = flow.waiting() + flow.inWork();
        double missedS =
                flow.meanSpoolsInSystem() * Ticks.toSeconds(run.horizonTicks()) - flow.meanInSystemS() * flow.packed();

        assertThat(inside)
                .isEqualTo(flow.made() + flow.accepted() - flow.packed())
                .isPositive();
        assertThat(missedS).isPositive().isLessThan(inside * Ticks.toSeconds(run.horizonTicks()));
    }

    /** The same for the spools that wait at each station: mean number waiting x horizon = sum of waits. */
    @Test
    void holdsForTheQueueOfEachStation() {
        RunResult run = Corner.of("finishing/all-leave.yaml").run();

        for (StationResult station : run.finishing()) {
            assertThat(station.meanWaiting() * Ticks.toSeconds(run.horizonTicks()))
                    .as(station.station())
                    .isCloseTo(station.meanWaitS() * station.spools(), within(1e-3));
        }
    }
}
