package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class SpreadTest {
    @ParameterizedTest
    @CsvSource({
        "31.4, 43.2, 0, 31 to 44",
        "-43.2, -31.4, 0, 31 to 44",
        "0.0213, 0.0387, 2, 0.02 to 0.04",
        "0.003, 0.095, 2, 0.003 to 0.095",
        "480, 480, 0, 480",
        "31.0000000004, 31.9999999996, 0, 31 to 32",
        "12345.6, 23456.7, 0, 12 345 to 23 457"
    })
    void isRoundedOutwardsAndNeverToNothing(double low, double high, int decimals, String text) {
        assertThat(new Spread(low, high).size(decimals)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "-4.72, 1.93, 1, -4.8 to +2.0",
        "-0.095, -0.003, 2, -0.095 to -0.003",
        "-81.4, -81.4, 0, -81",
        "0.2, 0.4, 1, +0.2 to +0.4",
        "-0.4, 0, 0, -1 to 0"
    })
    void hasSignsInTables(double low, double high, int decimals, String text) {
        assertThat(new Spread(low, high).signed(decimals)).isEqualTo(text);
    }
}
