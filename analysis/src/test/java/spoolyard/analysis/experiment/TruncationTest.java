package spoolyard.analysis.experiment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.theory.CheckTable;

final class TruncationTest {
    private final double[] series = CheckTable.rows("stats/mser_series.csv").stream()
            .mapToDouble(row -> CheckTable.number(row, "x"))
            .toArray();

    /** Source: checks/SOURCES.md, MSER of a synthetic series, recomputed apart from this code. */
    @Test
    void cutsWhereTheStandardErrorIsLeast() {
        Truncation truncation = Truncation.of(series, 1);

        assertThat(truncation.cut()).isEqualTo(7);
        assertThat(truncation.statistic()).isCloseTo(0.008789250071326827, within(1e-14));
    }

    /** Source: checks/SOURCES.md, MSER-5 of the same series. */
    @Test
    void cutsBatchesOfFive() {
        Truncation truncation = Truncation.of(series, Truncation.USUAL_BATCH);

        assertThat(truncation.cut()).isEqualTo(5);
        assertThat(truncation.statistic()).isCloseTo(0.031418439299684416, within(1e-14));
        assertThat(truncation.mean()).isCloseTo(10.114652805063288, within(1e-12));
        assertThat(truncation.isAtLimit()).isFalse();
    }

    @Test
    void cutsNothingFromASeriesThatNeverChanges() {
        assertThat(Truncation.of(new double[40], 5).cut()).isZero();
    }

    @Test
    void saysThatASeriesThatOnlyRisesHasNotSettled() {
        double[] rising = IntStream.range(0, 100).mapToDouble(i -> i).toArray();

        assertThat(Truncation.of(rising, 5).isAtLimit()).isTrue();
    }

    @Test
    void refusesASeriesOfOneBatch() {
        assertThatIllegalArgumentException().isThrownBy(() -> Truncation.of(new double[9], 5));
    }

    /** By hand: 1 alone; 1, 2, 6 around the second; 2, 6, 3 around the third with a window of 1. */
    @Test
    void smoothsOverAsManyValuesAsThereAreOnBothSides() {
        assertThat(Welch.smooth(new double[] {1, 2, 6, 4}, 1)).containsExactly(1, 3, 4);
    }

    @Test
    void averagesOverReplications() {
        assertThat(Welch.average(List.of(new double[] {1, 2}, new double[] {3, 6})))
                .containsExactly(2, 4);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Welch.average(List.of(new double[] {1, 2}, new double[] {3})));
    }

    /** By hand: the means of the rest are 3 and 5. */
    @Test
    void deletesTheWarmUpOfEachReplication() {
        Interval interval = Welch.deleted(List.of(new double[] {9, 2, 4}, new double[] {9, 4, 6}), 1, 0.95);

        assertThat(interval.mean()).isEqualTo(4);
        assertThat(interval.count()).isEqualTo(2);
    }

    /** By hand: batch means 2, 4, 3, 5; centred -1.5, 0.5, -0.5, 1.5; products -1.75 over squares 5. */
    @Test
    void tellsHowNeighbouringBatchesDepend() {
        Batches batches = Batches.of(new double[] {7, 1, 3, 3, 5, 2, 4, 4, 6}, 1, 4, 0.95);

        assertThat(batches.interval().mean()).isEqualTo(3.5);
        assertThat(batches.lagOne()).isCloseTo(-0.35, within(1e-12));
    }
}
