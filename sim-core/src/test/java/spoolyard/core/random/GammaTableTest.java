package spoolyard.core.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class GammaTableTest {
    /** Source in the table. */
    @ParameterizedTest
    @ValueSource(doubles = {3, 1.5, 1, 0.5, 0.1, 0.02})
    void agreesWithQuantilesComputedToFortyDigits(double cv) {
        GammaTable table = new GammaTable(cv);

        for (double[] row : rowsOf(cv)) {
            // An error of 1e-9 in the share moves the value by up to cv squared times as much.
            assertThat(table.at(row[1])).isCloseTo(row[2], within(1e-9 * Math.max(1, cv * cv) * row[2]));
        }
    }

    /** Source in the table. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.004})
    void agreesWithQuantilesOfNarrowLawsComputedToFortyDigits(double cv) {
        NarrowGamma series = new NarrowGamma(cv);

        for (double[] row : rowsOf(cv)) {
            assertThat(series.at(row[1])).isCloseTo(row[2], within(2e-12 * row[2]));
        }
    }

    @Test
    void passesFromSeriesToTableWithoutAStep() {
        double justAbove = Math.nextUp(NarrowGamma.LARGEST_CV);

        DoubleStream.of(1e-9, 0.01, 0.5, 0.99, 1 - 1e-9).forEach(u -> assertThat(new GammaTable(justAbove).at(u))
                .isCloseTo(new NarrowGamma(NarrowGamma.LARGEST_CV).at(u), within(2e-11)));
    }

    @Test
    void refusesNumbersThatNoStreamGives() {
        GammaTable table = new GammaTable(1);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> table.at(1e-11))
                .withMessage("u = 1.0E-11. Must be at least 4e-11 from 0 and from 1.");
        assertThatIllegalArgumentException().isThrownBy(() -> table.at(1 - 1e-11));
        assertThatIllegalArgumentException().isThrownBy(() -> table.at(Double.NaN));
        assertThat(table.at(4e-11)).isCloseTo(4e-11, within(1e-19));
    }

    private static List<double[]> rowsOf(double cv) {
        List<double[]> rows = Table.rows("gamma_quantiles.csv").stream()
                .filter(row -> row[0] == cv)
                .toList();
        assertThat(rows).hasSize(11);
        return rows;
    }
}
