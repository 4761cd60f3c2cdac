package spoolyard.analysis.corners;

import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.theory.GeneralServiceQueue;
import spoolyard.analysis.theory.MultiServerQueue;
import spoolyard.analysis.theory.SingleServerQueue;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.StationResult;

/**
 * The packing station as a queue: spools from outside come at random (Poisson), places are machine-paced and always open,
 * the rack is without limit.
 *
 * <p>Source: tables under {@code checks/queueing}, which {@code QueueTheoryTest} compares with the closed forms used here.
 * Level 99 %, twelve replications of 150 days (216 000 spools each) from an empty station, fixed seed.
 *
 * <p>Starting empty costs time-integrated number in system; by Poisson's equation of the birth-death chain it is 4 800
 * spool-seconds for M/M/1 here (rho / (mu (1 - rho)^3)), 9 554 for M/M/3, 11 056 for M/M/6 and 327 for M/M/4. Over
 * 12 960 000 s that is at most 0.013 % of the mean, where no interval is narrower than 0.2 %. The M/G/1 queues, with less
 * variance than M/M/1, lose less.
 */
final class PackingQueueTheoryTest {
    private static final double ARRIVALS_PER_S = 1.0 / 60;
    private static final int REPLICATIONS = 12;

    /** The table's row rho = 0.8 scaled: Wq = 4 service times, Lq = 3.2, L = 4. */
    @Test
    void onePlaceWithExponentialCyclesIsMM1() {
        SingleServerQueue theory = new SingleServerQueue(ARRIVALS_PER_S, 48);
        List<RunResult> runs = Corner.of("packing").replications(REPLICATIONS);

        Agreement.over(runs)
                .on("M/M/1 mean wait s", run -> packing(run).meanWaitS(), theory.meanWaitS(), 0.03)
                .on("M/M/1 probability of waiting", run -> packing(run).waitedShare(), theory.utilisation(), 0.01)
                .on("M/M/1 mean number waiting", run -> packing(run).meanWaiting(), theory.meanWaiting(), 0.03)
                .on("M/M/1 mean number in system", run -> run.flow().meanSpoolsInSystem(), theory.meanInSystem(), 0.03)
                .on("M/M/1 mean time in system s", run -> run.flow().meanInSystemS(), theory.meanInSystemS(), 0.03);
    }

    /** The table's row c = 3, a = 2.5: Erlang C = 0.7022, Lq = 3.511. */
    @Test
    void threePlacesAreMMc() {
        MultiServerQueue theory = new MultiServerQueue(ARRIVALS_PER_S, 150, 3);
        List<RunResult> runs = places(3, "{exponential: {mean: 150 s}}").replications(REPLICATIONS);

        assertMultiServer(runs, "M/M/3", theory);
    }

    /** The table's row c = 6, a = 5: Erlang C = 0.5875, Lq = 2.938. */
    @Test
    void sixPlacesAreMMc() {
        MultiServerQueue theory = new MultiServerQueue(ARRIVALS_PER_S, 300, 6);
        List<RunResult> runs = places(6, "{exponential: {mean: 300 s}}").replications(REPLICATIONS);

        assertMultiServer(runs, "M/M/6", theory);
    }

    /** The table's row c = 4, a = 2: Erlang C = 0.1739, Lq = 0.1739. */
    @Test
    void fourPlacesWithLittleToDoAreMMc() {
        MultiServerQueue theory = new MultiServerQueue(ARRIVALS_PER_S, 120, 4);
        List<RunResult> runs = places(4, "{exponential: {mean: 120 s}}").replications(REPLICATIONS);

        assertMultiServer(runs, "M/M/4", theory);
    }

    /** The table's row M/D/1, rho = 0.8: Wq = 2 service times, L = 2.4. */
    @Test
    void fixedCyclesAreMD1() {
        List<RunResult> runs = places(1, "48 s").replications(REPLICATIONS);

        assertGeneral(runs, "M/D/1", new GeneralServiceQueue(ARRIVALS_PER_S, 48, 0));
    }

    @Test
    void lognormalCyclesAreMG1() {
        List<RunResult> runs = places(1, "{lognormal: {mean: 42 s, cv: 0.8}}").replications(REPLICATIONS);

        assertGeneral(runs, "M/G/1 lognormal", new GeneralServiceQueue(ARRIVALS_PER_S, 42, 0.8));
    }

    private static Corner places(int count, String cycle) {
        return Corner.of("packing")
                .with("/finishing/packing/places", Integer.toString(count))
                .with("/finishing/packing/cycle", "[{batch: 1, takes: " + cycle + "}]");
    }

    private static void assertMultiServer(List<RunResult> runs, String name, MultiServerQueue theory) {
        Agreement.over(runs)
                .on(name + " mean wait s", run -> packing(run).meanWaitS(), theory.meanWaitS(), 0.05)
                .on(
                        name + " probability of waiting",
                        run -> packing(run).waitedShare(),
                        theory.waitingProbability(),
                        0.015)
                .on(name + " mean number waiting", run -> packing(run).meanWaiting(), theory.meanWaiting(), 0.05)
                .on(
                        name + " mean number in system",
                        run -> run.flow().meanSpoolsInSystem(),
                        theory.meanInSystem(),
                        0.05);
    }

    private static void assertGeneral(List<RunResult> runs, String name, GeneralServiceQueue theory) {
        Agreement.over(runs)
                .on(name + " mean wait s", run -> packing(run).meanWaitS(), theory.meanWaitS(), 0.03)
                .on(name + " probability of waiting", run -> packing(run).waitedShare(), theory.utilisation(), 0.01)
                .on(
                        name + " mean number in system",
                        run -> run.flow().meanSpoolsInSystem(),
                        theory.meanInSystem(),
                        0.03);
    }

    private static StationResult packing(RunResult run) {
        return run.finishing().get(0);
    }
}
