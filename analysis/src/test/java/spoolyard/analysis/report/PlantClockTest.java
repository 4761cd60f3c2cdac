package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import spoolyard.core.quantity.Ticks;

final class PlantClockTest {
    private final PlantClock clock = SampleReports.clock();

    @Test
    void showsTheWallClockOfThePlant() {
        assertThat(clock.minute(0)).isEqualTo("2027-03-01 06:00");
        assertThat(clock.millisecond(Ticks.PER_HOUR + 1_234_567)).isEqualTo("2027-03-01 07:00:01.234");
    }

    /** Source: EU Directive 2000/84/EC: summer time begins on the last Sunday of March at 01:00 UTC, here 28 March 2027. */
    @Test
    void springsForwardWithTheClocks() {
        long beforeChange = (26 * 24 + 20) * Ticks.PER_HOUR;

        assertThat(clock.minute(beforeChange - Ticks.PER_SECOND)).isEqualTo("2027-03-28 01:59");
        assertThat(clock.minute(beforeChange)).isEqualTo("2027-03-28 03:00");
    }
}
