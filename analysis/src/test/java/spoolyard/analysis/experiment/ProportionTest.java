package spoolyard.analysis.experiment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ProportionTest {
    /** Source: R. G. Newcombe, Statistics in Medicine 17 (1998) 857-872, table I, method 5; from memory. */
    @ParameterizedTest
    @CsvSource({"81, 263, 0.2527, 0.3676", "15, 148, 0.0578, 0.1617", "0, 20, 0.0000, 0.1684", "1, 29, 0.0009, 0.1776"})
    void agreesWithPublishedLimits(int count, int trials, double low, double high) {
        Proportion proportion = new Proportion(count, trials, 0.95);

        assertThat(proportion.low()).isCloseTo(low, within(5e-5));
        assertThat(proportion.high()).isCloseTo(high, within(5e-5));
    }

    /** The definition: at each limit, what was observed or more extreme happens with half of what the level leaves. */
    @Test
    void leavesHalfOfTheRestBeyondEachLimit() {
        for (int count = 1; count < 20; count++) {
            Proportion proportion = new Proportion(count, 20, 0.9);

            assertThat(binomial(count, 20, 20, proportion.low())).isCloseTo(0.05, within(1e-9));
            assertThat(binomial(0, count, 20, proportion.high())).isCloseTo(0.05, within(1e-9));
        }
    }

    private static double binomial(int from, int to, int trials, double probability) {
        double sum = 0;
        double choose = 1;
        for (int i = 0; i <= to; i++) {
            if (i >= from) {
                sum += choose * Math.pow(probability, i) * Math.pow(1 - probability, trials - i);
            }
            choose = choose * (trials - i) / (i + 1);
        }
        return sum;
    }

    @Test
    void endsAtNeverAndAlways() {
        assertThat(new Proportion(0, 5, 0.95).low()).isZero();
        assertThat(new Proportion(5, 5, 0.95).high()).isEqualTo(1);
        assertThat(new Proportion(1, 4, 0.95).share()).isEqualTo(0.25);
    }

    @Test
    void refusesWhatIsNoProportion() {
        assertThatThrownBy(() -> new Proportion(3, 2, 0.95))
                .hasMessage("count = 3, trials = 2, level = 0.95. Must be from 0 to the trials, >= 1, and in (0, 1).");
    }
}
