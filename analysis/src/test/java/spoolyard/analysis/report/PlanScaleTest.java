package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.core.quantity.Ticks;

final class PlanScaleTest {
    private static PlanScale scale(int month, int day, int days, int width) {
        ZonedDateTime start = ZonedDateTime.of(2027, month, day, 6, 0, 0, 0, ZoneId.of("Europe/Berlin"));
        return new PlanScale(new PlantClock(start), days * 24 * Ticks.PER_HOUR, 0, width);
    }

    private static List<String> labels(PlanScale scale) {
        return scale.days().stream()
                .map(PlanScale.Day::label)
                .filter(label -> !label.isEmpty())
                .toList();
    }

    @Test
    void namesEveryDayInFullWhereThereIsRoom() {
        assertThat(labels(scale(3, 1, 3, 360))).containsExactly("Mon 1 Mar", "Tue 2 Mar", "Wed 3 Mar");
    }

    @Test
    void namesTheWeeksAndNumbersTheDaysOfAMonth() {
        assertThat(labels(scale(3, 1, 10, 10 * 50)))
                .containsExactly("Mon 1 Mar", "3", "4", "5", "6", "7", "Mon 8 Mar", "10");
    }

    @Test
    void leavesOutWhatWouldOverlapInAYear() {
        PlanScale scale = scale(3, 1, 364, 1200);

        List<Integer> named = scale.days().stream()
                .filter(day -> !day.label().isEmpty())
                .map(PlanScale.Day::x)
                .toList();
        for (int i = 1; i < named.size(); i++) {
            assertThat(named.get(i) - named.get(i - 1)).isGreaterThanOrEqualTo(88);
        }
        assertThat(scale.days()).hasSize(53);
    }

    /** Clocks go forward on 2027-03-28 (Directive 2000/84/EC: last Sunday of March): that day has 23 hours. */
    @Test
    void heedsClockChanges() {
        List<PlanScale.Day> days = scale(3, 27, 4, 9600).days();

        assertThat(days.get(1).x()).isEqualTo(18 * 100);
        assertThat(days.get(2).x()).isEqualTo((18 + 23) * 100);
    }
}
