package spoolyard.analysis.corners;

import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.theory.ImpatientQueue;
import spoolyard.analysis.theory.SingleServerQueue;
import spoolyard.core.record.QualityResult.ExposureResult;
import spoolyard.core.record.RunResult;

/**
 * The exposure clock in the queue before a machine that seals spool by spool, exponential cycles: M/M/1.
 *
 * <p>Source: {@link SingleServerQueue#waitTail(double)} (Gross et al., section 2.2) and {@link ImpatientQueue}, held against
 * their limits in {@code QualityTheoryTest}. Level 99 %, twelve replications of 150 days from an empty queue, fixed seed. An
 * empty start lasts some hours of 3600, in which the share beyond is too low by less than all of itself: a bias below
 * 0.1 %, where no interval is narrower than 2 %.
 */
final class ExposureTheoryTest {
    private static final double ARRIVALS_PER_S = 1.0 / 60;
    private static final int REPLICATIONS = 12;

    @Test
    void theShareBeyondTheLimitIsTheTailOfTheWait() {
        SingleServerQueue theory = new SingleServerQueue(ARRIVALS_PER_S, 48);
        List<RunResult> runs = Corner.of("exposure").replications(REPLICATIONS);

        Agreement.over(runs)
                .on("exposed beyond 10 min", ExposureTheoryTest::beyond, theory.waitTail(600), 0.1)
                .on("mean exposure s", ExposureTheoryTest::meanS, theory.meanWaitS(), 0.03);
    }

    @Test
    void aTighterLimitIsExceededMoreOften() {
        SingleServerQueue theory = new SingleServerQueue(ARRIVALS_PER_S, 48);
        List<RunResult> runs = Corner.of("exposure")
                .with("/polymers/PLA/exposure_limit", "2 min")
                .replications(REPLICATIONS);

        Agreement.over(runs).on("exposed beyond 2 min", ExposureTheoryTest::beyond, theory.waitTail(120), 0.03);
    }

    @Test
    void spoolsGroundAtTheirTurnAreLostLikeImpatientCustomers() {
        ImpatientQueue theory = new ImpatientQueue(ARRIVALS_PER_S, 72, 300);
        List<RunResult> runs = Corner.of("exposure")
                .with("/polymers/PLA/exposure_limit", "5 min")
                .with("/exposure/beyond", "scrap")
                .with("/finishing/sealing/cycle", "[{takes: {exponential: {mean: 72 s}}}]")
                .replications(REPLICATIONS);

        Agreement.over(runs).on("lost beyond 5 min", ExposureTheoryTest::lost, theory.lostShare(), 0.03);
    }

    private static double beyond(RunResult run) {
        ExposureResult pla = exposure(run);
        return pla.beyond() / (double) pla.spools();
    }

    private static double meanS(RunResult run) {
        ExposureResult pla = exposure(run);
        return pla.exposedS() / pla.spools();
    }

    private static double lost(RunResult run) {
        return exposure(run).scrapped() / (double) run.inbound().get(0).arrived();
    }

    private static ExposureResult exposure(RunResult run) {
        return run.quality().exposure().get(0);
    }
}
