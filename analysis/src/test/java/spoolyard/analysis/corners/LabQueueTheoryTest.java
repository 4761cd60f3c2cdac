package spoolyard.analysis.corners;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.theory.BulkServiceQueue;
import spoolyard.analysis.theory.GeneralServiceQueue;
import spoolyard.core.record.QualityResult.LotResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.StationResult;

/**
 * The lab as a queue: lots of one spool come at random (Poisson), one apparatus that works alone.
 *
 * <p>Source: {@link GeneralServiceQueue}, held against published values in {@code QueueTheoryTest}, and {@link
 * BulkServiceQueue}, held against its limits in {@code QualityTheoryTest}. Level 99 %, twelve replications of 150 days from
 * an empty lab, fixed seed; the bias of the empty start is far below the intervals (see {@code PackingQueueTheoryTest}).
 */
final class LabQueueTheoryTest {
    private static final double ARRIVALS_PER_S = 1.0 / 60;
    private static final int REPLICATIONS = 12;

    @Test
    void testsOfFixedLengthAreMD1() {
        assertGeneral("M/D/1 lab", "48 s", new GeneralServiceQueue(ARRIVALS_PER_S, 48, 0));
    }

    @Test
    void testsThatVaryAreMG1() {
        assertGeneral(
                "M/G/1 lab", "{lognormal: {mean: 42 s, cv: 0.8}}", new GeneralServiceQueue(ARRIVALS_PER_S, 42, 0.8));
    }

    private static void assertGeneral(String name, String takes, GeneralServiceQueue theory) {
        List<RunResult> runs =
                Corner.of("lab").with("/lab/tests/test/takes", takes).replications(REPLICATIONS);

        Agreement.over(runs)
                .on(name + " mean wait s", run -> test(run).meanWaitS(), theory.meanWaitS(), 0.03)
                .on(name + " mean lots waiting", run -> test(run).meanWaiting(), theory.meanWaiting(), 0.03)
                .on(name + " mean hold of a lot s", LabQueueTheoryTest::meanHoldS, theory.meanInSystemS(), 0.03);
    }

    /** Up to four lots at once, 2.5 lots come during a test. */
    @Test
    void testsOfSeveralLotsAtOnceAreABulkServiceQueue() {
        BulkServiceQueue theory = new BulkServiceQueue(ARRIVALS_PER_S, 150, 4);
        List<RunResult> runs = Corner.of("lab")
                .with("/lab/tests/test", "{takes: {exponential: {mean: 150 s}}, batch: 4}")
                .replications(REPLICATIONS);

        Agreement.over(runs)
                .on("M/M[4]/1 lab mean wait s", run -> test(run).meanWaitS(), theory.meanWaitS(), 0.03)
                .on("M/M[4]/1 lab probability of waiting", run -> test(run).waitedShare(), theory.busyShare(), 0.01);
    }

    /**
     * The same with tests of fixed length, M/D[4]/1, by the chain embedded at the ends of tests: of x lots waiting up to four
     * are taken, one as soon as it comes if x = 0, and a Poisson number a comes meanwhile; x' = max(x - 4, 0) + a. Busy D / (D +
     * P(x = 0) / lambda) of the time, with max(x - 4, 0) + lambda D / 2 waiting on average. Source: Gross et al. 2008, section
     * 5.1 (from memory); solved here by iteration.
     */
    @Test
    void testsOfFixedLengthOfSeveralLotsAreABulkServiceQueue() {
        double during = ARRIVALS_PER_S * 150;
        double[] atEnds = stationary(during, 4);
        double left = IntStream.range(4, atEnds.length)
                .mapToDouble(x -> (x - 4) * atEnds[x])
                .sum();
        double busy = 150 / (150 + atEnds[0] / ARRIVALS_PER_S);
        List<RunResult> runs = Corner.of("lab")
                .with("/lab/tests/test", "{takes: 150 s, batch: 4}")
                .replications(REPLICATIONS);

        Agreement.over(runs)
                .on(
                        "M/D[4]/1 lab mean wait s",
                        run -> test(run).meanWaitS(),
                        busy * (left + during / 2) / ARRIVALS_PER_S,
                        0.03)
                .on("M/D[4]/1 lab probability of waiting", run -> test(run).waitedShare(), busy, 0.01);
    }

    private static double[] stationary(double arrivals, int batch) {
        double[] p = new double[200];
        p[0] = 1;
        for (int round = 0; round < 2000; round++) {
            double[] next = new double[p.length];
            for (int x = 0; x < p.length; x++) {
                double poisson = Math.exp(-arrivals);
                for (int a = 0; Math.max(x - batch, 0) + a < p.length; a++) {
                    next[Math.max(x - batch, 0) + a] += p[x] * poisson;
                    poisson *= arrivals / (a + 1);
                }
            }
            p = next;
        }
        return p;
    }

    private static StationResult test(RunResult run) {
        return run.quality().lab().get(0);
    }

    private static double meanHoldS(RunResult run) {
        List<LotResult> lots = run.quality().lots();
        return lots.stream().mapToDouble(LotResult::holdS).sum()
                / lots.stream().mapToLong(LotResult::judged).sum();
    }
}
