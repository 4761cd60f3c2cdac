package spoolyard.analysis.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class FrontierTest {
    private static Frontier frontier(double[] purgeKg, double... lateSpoolDays) {
        return new Frontier(
                IntStream.range(0, purgeKg.length)
                        .mapToObj(i -> new FrontierPoint(null, purgeKg[i], lateSpoolDays[i]))
                        .toList(),
                false);
    }

    private static final Frontier BENT = frontier(new double[] {10, 11, 12, 40, 70}, 100, 60, 5, 2, 0);

    @Test
    void kneeIsWhereTheLineBends() {
        assertThat(BENT.knee()).isEqualTo(2);
        assertThat(frontier(new double[] {5}, 3).knee()).isZero();
    }

    @Test
    void showsTheEndsAndTheSharpestBends() {
        assertThat(BENT.bends(2)).isEqualTo(List.of(0, 4));
        assertThat(BENT.bends(3)).isEqualTo(List.of(0, 2, 4));
        assertThat(BENT.bends(9)).isEqualTo(List.of(0, 1, 2, 3, 4));
    }

    /** By hand: 28 kg more for 3 spool-days less. */
    @Test
    void promptnessCostsTheSlope() {
        assertThat(BENT.points().get(3).kgPerSpoolDay(BENT.points().get(2))).isEqualTo(28.0 / 3);
    }
}
