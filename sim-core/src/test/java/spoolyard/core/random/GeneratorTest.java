package spoolyard.core.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import umontreal.ssj.rng.MRG32k3aL;

/** The generator behind every stream against its published numbers; sources stand in the tables. */
final class GeneratorTest {
    private final List<double[]> seeds = Table.rows("mrg32k3a_stream_seeds.csv");

    @Test
    void givesThePublishedNumbersOfEachStreamAndSubstream() {
        MRG32k3aL generator = new MRG32k3aL();
        int stream = 0;
        int substream = 0;

        for (double[] row : Table.rows("mrg32k3a_stream_outputs.csv")) {
            if (row[0] != stream) {
                generator.setSeed(seedOf((int) row[0]));
            } else if (row[1] != substream) {
                generator.resetNextSubstream();
            }
            stream = (int) row[0];
            substream = (int) row[1];
            assertThat(generator.nextDouble()).isEqualTo(row[3]);
        }
    }

    @Test
    void keepsThePublishedRunningSum() {
        MRG32k3aL generator = new MRG32k3aL();
        generator.setSeed(seedOf(1));
        int n = 0;
        double sum = 0;

        for (double[] row : Table.rows("mrg32k3a_running_sum.csv")) {
            while (n < row[0]) {
                sum += generator.nextDouble();
                n++;
            }
            assertThat(sum).isCloseTo(row[1], within(1e-9 * row[1]));
        }
    }

    private long[] seedOf(int stream) {
        double[] row = seeds.get(stream - 1);
        return Arrays.stream(row, 1, row.length)
                .mapToLong(value -> (long) value)
                .toArray();
    }
}
