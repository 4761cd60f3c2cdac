package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class FiguresTest {
    @ParameterizedTest
    @CsvSource({
        "0.1, 0.1",
        "12345678912, 12345680000",
        "1e-7, 0.0000001",
        "1200000, 1200000",
        "-0.3333333333, -0.3333333",
        "60.00000002, 60",
        "7e-19, 0",
        "0, 0"
    })
    void writesFilesWithSevenDigitsAndNoExponent(double value, String text) {
        assertThat(Figures.cell(value)).isEqualTo(text);
    }

    @Test
    void leavesTheCellEmptyWhereThereIsNoNumber() {
        assertThat(Figures.cell(Double.NaN)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1234567.25, 1, 1 234 567.2", "0.04, 1, 0.0", "-0.04, 1, 0.0", "-0.06, 1, -0.1", "871.44, 0, 871"})
    void showsThousandsApartAndNoNegativeZero(double value, int decimals, String text) {
        assertThat(Figures.shown(value, decimals)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "1, 0.000001", "12345000, 12.345", "3600000000, 3600"})
    void writesTicksAsExactSeconds(long tick, String text) {
        assertThat(Figures.seconds(tick)).isEqualTo(text);
    }
}
