package spoolyard.core.random;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.Law;
import umontreal.ssj.probdist.ChiSquareDist;

final class ObservedDrawTest {
    private final Law law = new Law.Observed(List.of(9.0, 3.0, 7.0, 5.0, 5.0));
    private final Quantile quantile = Quantiles.of(law, InverseTables.NONE);

    @Test
    void givesEachValueAnEqualShareOfTheUniformInRisingOrder() {
        assertThat(DoubleStream.of(0.01, 0.19, 0.21, 0.41, 0.61, 0.79, 0.81, 0.99)
                        .map(quantile::at))
                .containsExactly(3.0, 3.0, 5.0, 5.0, 7.0, 7.0, 9.0, 9.0);
    }

    @Test
    void staysInsideAtTheEndsOfTheUniform() {
        assertThat(quantile.at(Double.MIN_VALUE)).isEqualTo(3.0);
        assertThat(quantile.at(Math.nextDown(1.0))).isEqualTo(9.0);
    }

    /** Chi-square with 3 degrees of freedom at level 0.001; the seed is fixed. */
    @Test
    void drawsEachValueEquallyOften() {
        int n = 50_000;
        Variate variate = new Streams(20261101, 0).variate(law, "observed");
        int[] counts = new int[10];
        IntStream.range(0, n).forEach(i -> counts[(int) variate.next()]++);
        double fifth = n / 5.0;

        double chiSquare = IntStream.of(3, 5, 7, 9)
                .mapToDouble(value -> {
                    double expected = value == 5 ? 2 * fifth : fifth;
                    return Math.pow(counts[value] - expected, 2) / expected;
                })
                .sum();

        assertThat(IntStream.of(counts).sum()).isEqualTo(n);
        assertThat(counts[3] + counts[5] + counts[7] + counts[9]).isEqualTo(n);
        assertThat(chiSquare).isLessThan(ChiSquareDist.inverseF(3, 0.999));
    }
}
