package spoolyard.analysis.experiment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.core.random.Normal;
import spoolyard.core.random.Streams;
import spoolyard.core.random.Uniforms;

final class SequentialExperimentTest {
    private static final int EXPERIMENTS = 500;

    @Test
    void stopsAtTheFirstReplicationThatSuffices() {
        Grown<Integer> grown = new SequentialExperiment<>(numbers(), precise(0.1, 1000, 1), taken -> 3.0 / taken.size())
                .run(Progress.UNHEARD);

        assertThat(grown.observations())
                .isEqualTo(IntStream.range(0, 30).boxed().toList());
        assertThat(grown.stop()).isEqualTo(Grown.Stop.PRECISE);
        assertThat(grown.width()).isCloseTo(0.1, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"1", "2", "7", "50"})
    void stopsAtTheSameReplicationHoweverManyRunAtOnce(int round) {
        Grown<Double> grown = normalExperiment(4, round, 0.05);

        assertThat(grown.observations()).isEqualTo(normalExperiment(4, 3, 0.05).observations());
    }

    @Test
    void stopsAtTheCapAndSaysSo() {
        Grown<Integer> grown =
                new SequentialExperiment<>(numbers(), precise(0.1, 25, 1), taken -> 1.0).run(Progress.UNHEARD);

        assertThat(grown.observations()).hasSize(25);
        assertThat(grown.stop()).isEqualTo(Grown.Stop.CAP);
    }

    /** A second each: with a budget of ten seconds no replication begins after the tenth second. */
    @Test
    void beginsNothingOnceTheTimeIsUp() {
        AtomicLong clock = new AtomicLong();
        Source<Integer> slow = (first, count, progress) -> {
            clock.addAndGet(count * 1_000_000_000L);
            return IntStream.range(first, first + count).boxed().toList();
        };
        Effort effort = new Effort(2, 1000, OptionalDouble.empty(), Optional.of(Duration.ofSeconds(10)), 1);

        Grown<Integer> grown =
                new SequentialExperiment<>(slow, effort, taken -> Double.NaN, clock::get).run(Progress.UNHEARD);

        assertThat(grown.observations()).hasSize(10);
        assertThat(grown.stop()).isEqualTo(Grown.Stop.TIME);
    }

    @Test
    void takesAFixedNumberAtOnce() {
        Grown<Integer> grown =
                new SequentialExperiment<>(numbers(), Effort.of(7), taken -> Double.NaN).run(Progress.UNHEARD);

        assertThat(grown.observations()).hasSize(7);
    }

    @Test
    void showsTheIntervalShrinking() {
        List<Double> widths = new ArrayList<>();
        Progress listening = new Progress() {
            @Override
            public void reached(int done, int total) {
                assertThat(done).isLessThanOrEqualTo(total);
            }

            @Override
            public void narrowed(double width) {
                widths.add(width);
            }
        };

        new SequentialExperiment<>(numbers(), precise(0.1, 1000, 1), taken -> 5.0 / taken.size()).run(listening);

        assertThat(widths).hasSizeGreaterThan(2).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    /**
     * Law of large samples: normal values of mean 10 and deviation 3 until the relative error is 5 %; at 95 % about 150
     * replications. Of 500 intervals 475 +- 10 hold the mean (2 points, about two standard errors); fixed seed. Source of
     * the limit: Chow and Robbins 1965.
     */
    @Test
    void coversTheTruthAsOftenAsItSaysWhenTheIntervalIsNarrow() {
        assertThat(coverage(0.05)).isCloseTo(0.95, within(0.02));
    }

    /** Law 2015, 9.4.1: the relative error is held where the relative half-width is at most w / (1 + w). */
    @Test
    void asksForAHalfWidthThatHoldsTheRelativeError() {
        Interval interval = new Interval(100, OptionalDouble.of(100 * 0.1 / 1.1), 0.95, 20);

        assertThat(Width.relativeError(interval)).isCloseTo(0.1, within(1e-12));
        assertThat(Width.relativeError(new Interval(1, OptionalDouble.of(2), 0.95, 20)))
                .isInfinite();
        assertThat(Width.relativeError(new Interval(0, OptionalDouble.of(0), 0.95, 20)))
                .isZero();
    }

    @Test
    void refusesMoreThanTheMost() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Effort(10, 5, OptionalDouble.empty(), Optional.empty(), 1))
                .withMessageStartingWith("fewest = 10, most = 5");
    }

    private static double coverage(double relativeError) {
        long covered = IntStream.range(0, EXPERIMENTS)
                .filter(seed -> {
                    Interval interval =
                            interval(normalExperiment(seed, 20, relativeError).observations());
                    return Math.abs(interval.mean() - 10)
                            <= interval.halfWidth().orElseThrow();
                })
                .count();
        return covered / (double) EXPERIMENTS;
    }

    private static Grown<Double> normalExperiment(int seed, int round, double relativeError) {
        Uniforms uniforms = new Streams(5, seed).uniforms("sequential");
        Source<Double> normals = (first, count, progress) -> IntStream.range(0, count)
                .mapToObj(i -> 10 + 3 * Normal.quantile(uniforms.next()))
                .toList();
        return new SequentialExperiment<>(
                        normals, precise(relativeError, 100_000, round), taken -> Width.relativeError(interval(taken)))
                .run(Progress.UNHEARD);
    }

    private static Interval interval(List<Double> values) {
        return Interval.of(values.stream().mapToDouble(Double::doubleValue).toArray(), 0.95);
    }

    private static Source<Integer> numbers() {
        return (first, count, progress) ->
                IntStream.range(first, first + count).boxed().toList();
    }

    private static Effort precise(double width, int most, int round) {
        return new Effort(10, most, OptionalDouble.of(width), Optional.empty(), round);
    }
}
