package spoolyard.analysis.corners;

import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.theory.FiniteQueue;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.RunResult.InboundResult;

/**
 * A rack with few places before one packing place: spools from outside that find it full go back. K = rack + 1 in work.
 *
 * <p>Source: {@code checks/queueing/mm1k_blocking.csv}, rows rho = 0.8, K = 3 and rho = 1.2, K = 8, compared with the closed
 * form in {@code QueueTheoryTest}. Level 99 %, replications of 200 days from an empty rack, fixed seed. A finite rack
 * forgets its start within some hundred cycles, out of a quarter of a million: no visible bias.
 */
final class FiniteRackTheoryTest {
    private static final int REPLICATIONS = 10;

    @Test
    void rackOfTwoPlacesTurnsAwayAsMM1K3() {
        assertRack(2, 48);
    }

    @Test
    void rackOfSevenPlacesUnderOverloadTurnsAwayAsMM1K8() {
        assertRack(7, 72);
    }

    private static void assertRack(int places, double meanCycleS) {
        FiniteQueue theory = new FiniteQueue(1.0 / 60, meanCycleS, places + 1);
        List<RunResult> runs = Corner.of("rack")
                .with("/finishing/packing/rack", places + " spools")
                .with("/finishing/packing/cycle", "[{batch: 1, takes: {exponential: {mean: " + meanCycleS + " s}}}]")
                .replications(REPLICATIONS);

        String name = "M/M/1/" + (places + 1);
        Agreement.over(runs)
                .on(name + " share turned away", FiniteRackTheoryTest::turnedAway, theory.blockingProbability(), 0.015)
                .on(name + " throughput 1/s", FiniteRackTheoryTest::throughputPerS, theory.throughputPerS(), 0.015)
                .on(
                        name + " mean number in system",
                        run -> run.flow().meanSpoolsInSystem(),
                        theory.meanInSystem(),
                        0.015)
                .on(name + " mean time in system s", run -> run.flow().meanInSystemS(), theory.meanInSystemS(), 0.015);
    }

    private static double turnedAway(RunResult run) {
        InboundResult toll = run.inbound().get(0);
        return toll.turnedAway() / (double) toll.arrived();
    }

    private static double throughputPerS(RunResult run) {
        return run.finishing().get(0).spools() / Ticks.toSeconds(run.horizonTicks());
    }
}
