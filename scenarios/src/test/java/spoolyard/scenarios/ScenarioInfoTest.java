package spoolyard.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.core.quantity.Ticks;

final class ScenarioInfoTest {
    /** The clocks go forward on 28 March 2027 at 01:00 UTC: Directive 2000/84/EC. */
    @Test
    void tellsTheWallClockOfATick() {
        ZonedDateTime start = ZonedDateTime.parse("2027-03-28T00:00+01:00[Europe/Berlin]");
        ScenarioInfo info = new ScenarioInfo("n", "", start, start.plusDays(1), List.of(), List.of(), List.of(), "");

        assertThat(info.at(3 * Ticks.PER_HOUR)).isEqualTo("2027-03-28T04:00+02:00[Europe/Berlin]");
        assertThat(info.at(-1)).isEqualTo("2027-03-27T23:59:59.999999+01:00[Europe/Berlin]");
        assertThat(info.zone().getId()).isEqualTo("Europe/Berlin");
    }
}
