package spoolyard.analysis.experiment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoolyard.analysis.sample.PlausibleRuns;
import spoolyard.analysis.sample.SamplePlant;
import spoolyard.core.record.RunResult;

final class ExperimentTest {
    private final PlausibleRuns runs = new PlausibleRuns(SamplePlant.of(2, 1), 7);

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 16})
    void givesTheSameForAnyNumberOfThreads(int threads) {
        List<RunResult> alone = new Experiment(runs, 12, 1).run(result -> result, Progress.UNHEARD);

        List<RunResult> together = new Experiment(runs, 12, threads).run(result -> result, Progress.UNHEARD);

        assertThat(together).isEqualTo(alone);
    }

    @Test
    void returnsSummariesInTheOrderOfTheReplicationsThoughTheLastEndsFirst() {
        CountDownLatch lastIsDone = new CountDownLatch(1);
        Replicator lastFirst = replication -> {
            if (replication == 1) {
                lastIsDone.countDown();
            } else {
                await(lastIsDone);
            }
            return runs.replicate(replication);
        };

        List<Integer> numbers = new Experiment(lastFirst, 2, 2).run(RunResult::replication, Progress.UNHEARD);

        assertThat(numbers).containsExactly(0, 1);
    }

    @Test
    void runsSideBySide() {
        CountDownLatch bothBegan = new CountDownLatch(2);
        Replicator meeting = replication -> {
            bothBegan.countDown();
            await(bothBegan);
            return runs.replicate(replication);
        };

        List<Integer> numbers = new Experiment(meeting, 2, 2).run(RunResult::replication, Progress.UNHEARD);

        assertThat(numbers).hasSize(2);
    }

    @Test
    void tellsProgressFromNoneToAllOnTheCallingThread() {
        List<String> heard = new ArrayList<>();
        Set<Thread> threads = ConcurrentHashMap.newKeySet();

        new Experiment(runs, 3, 2).run(RunResult::replication, (done, total) -> {
            heard.add(done + "/" + total);
            threads.add(Thread.currentThread());
        });

        assertThat(heard).containsExactly("0/3", "1/3", "2/3", "3/3");
        assertThat(threads).containsExactly(Thread.currentThread());
    }

    @Test
    void beginsNothingMoreOnceCancelled() {
        AtomicInteger begun = new AtomicInteger();
        List<Experiment> self = new ArrayList<>();
        Experiment experiment = new Experiment(
                replication -> {
                    begun.incrementAndGet();
                    self.get(0).cancel();
                    return runs.replicate(replication);
                },
                1000,
                1);
        self.add(experiment);

        assertThatThrownBy(() -> experiment.run(RunResult::replication, Progress.UNHEARD))
                .isInstanceOf(CancellationException.class)
                .hasMessage("cancelled before replication 1");
        assertThat(begun).hasValue(1);
    }

    @Test
    void namesTheReplicationThatBrokeOffAndBeginsNoOther() {
        AtomicInteger begun = new AtomicInteger();
        Replicator breaking = replication -> {
            if (begun.incrementAndGet() > 1) {
                await(new CountDownLatch(1));
            }
            throw new UncheckedIOException(new FileSystemException("events.csv", null, "No space left on device"));
        };
        Experiment experiment = new Experiment(breaking, 1000, 1);

        assertThatThrownBy(() -> experiment.run(RunResult::replication, Progress.UNHEARD))
                .isInstanceOfSatisfying(ReplicationFailedException.class, failure -> assertThat(failure.replication())
                        .isZero())
                .hasCauseInstanceOf(UncheckedIOException.class);
        assertThat(begun.get()).isLessThanOrEqualTo(2);
    }

    @Test
    void refusesFewerThanOneReplication() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Experiment(runs, 0, 2))
                .withMessage("replications = 0, threads = 2. Both must be >= 1.");
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException interruption) {
            throw new IllegalStateException(interruption);
        }
    }
}
