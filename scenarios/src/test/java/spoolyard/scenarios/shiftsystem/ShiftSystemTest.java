package spoolyard.scenarios.shiftsystem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import spoolyard.scenarios.ShiftRoster;
import spoolyard.scenarios.calendar.CrewWork;
import spoolyard.scenarios.calendar.CrewWork.Stint;
import spoolyard.scenarios.fault.Warning;
import spoolyard.scenarios.read.Node;

/**
 * The library of shift systems against hand-worked and published hours.
 *
 * <p>Published: continuous work by four crews averages 168 / 4 = 42 h a week, on 12-hour shifts half of the weeks at 36 h and
 * half at 48 h, 182 shifts a year, and on 8-hour shifts 273 shifts a year (shiftwork.com/?p=3, read). The 8-hour
 * sequence of two mornings, two afternoons, two nights, two off is the "2-2-2 delaying continuous" rota of a table in
 * Occupational and Environmental Medicine (oem.bmj.com, supplement 146401, table 1, read). Five crews: 168 / 5 = 33.6 h, by
 * hand.
 */
final class ShiftSystemTest {
    private static List<CrewWork> crews(ShiftSystem system) {
        return ShiftRoster.of(system).work();
    }

    /** Hand: shifts of a turn times their hours, over the weeks of the turn; for example 6 x 8 h x 7 / 10 days = 33.6 h. */
    @ParameterizedTest
    @CsvSource({
        "day-shift, A, 40",
        "2x8-5-days, B, 40",
        "3x8-5-days, C, 40",
        "3x8-5-days-weekend-crews, A, 40",
        "3x8-5-days-weekend-crews, W1, 24",
        "3x8-5-days-weekend-crews, W2, 24",
        "3x8-7-days-4-crews, A, 42",
        "3x8-7-days-4-crews, D, 42",
        "3x8-7-days-5-crews, A, 33.6",
        "3x8-7-days-5-crews, E, 33.6",
        "2x12-2-2-3, A, 42",
        "2x12-2-2-3, D, 42",
        "2x12-4-on-4-off, A, 42",
        "2x12-4-on-4-off, C, 42"
    })
    void averagesTheHoursWorkedByHand(String label, String crew, double hours) {
        CrewWork work = crews(ShiftSystem.of(label).orElseThrow()).stream()
                .filter(each -> each.name().equals(crew))
                .findFirst()
                .orElseThrow();

        assertThat(work.stints().stream().mapToDouble(Stint::lengthH).sum() / work.weeks())
                .isEqualTo(hours, within(1e-9));
    }

    @Test
    void alternatesWeeksOfThirtySixAndFortyEightHoursOnTwoTwoThree() {
        for (CrewWork crew : crews(ShiftSystem.TWO_TWO_THREE)) {
            List<Double> weeks = IntStream.range(0, crew.weeks())
                    .mapToObj(week -> crew.stints().stream()
                            .filter(stint -> weekFromSunday(stint, crew.weeks()) == week)
                            .mapToDouble(Stint::lengthH)
                            .sum())
                    .toList();

            assertThat(weeks).filteredOn(hours -> hours == 36).hasSize(crew.weeks() / 2);
            assertThat(weeks).filteredOn(hours -> hours == 48).hasSize(crew.weeks() / 2);
        }
    }

    /** The published weeks begin on a Sunday. */
    private static int weekFromSunday(Stint stint, int weeks) {
        boolean isSunday = stint.start().getDayOfWeek() == DayOfWeek.SUNDAY;
        return (stint.week() + (isSunday ? 1 : 0)) % weeks;
    }

    @ParameterizedTest
    @CsvSource({"2x12-2-2-3, 182", "2x12-4-on-4-off, 182", "3x8-7-days-4-crews, 273"})
    void worksThePublishedShiftsOfAYearOfFiftyTwoWeeks(String label, double shifts) {
        for (CrewWork crew : crews(ShiftSystem.of(label).orElseThrow())) {
            assertThat(crew.stints().size() * 52.0 / crew.weeks()).isEqualTo(shifts);
        }
    }

    @ParameterizedTest
    @EnumSource(ShiftSystem.class)
    void hasEachShiftWorkedByJustOneCrew(ShiftSystem system) {
        ShiftRoster roster = ShiftRoster.of(system);

        assertThat(roster.work()).hasSameSizeAs(roster.plan().rotas());
        List<String> labels = roster.work().stream()
                .flatMap(crew -> crew.stints().stream())
                .map(Stint::label)
                .toList();
        assertThat(labels).doesNotHaveDuplicates();
        int days = 7 * roster.work().get(0).weeks();
        assertThat(labels.stream()
                        .map(label -> label.replaceFirst(".* of ", ""))
                        .collect(Collectors.toSet()))
                .hasSize(
                        system.label().contains("5-days") && !system.label().contains("weekend")
                                        || system == ShiftSystem.DAY_SHIFT
                                ? days * 5 / 7
                                : days);
    }

    @ParameterizedTest
    @EnumSource(
            value = ShiftSystem.class,
            mode = Mode.INCLUDE,
            names = {"WEEKEND_CREWS", "FOUR_CREWS", "FIVE_CREWS", "TWO_TWO_THREE", "FOUR_ON_FOUR_OFF"})
    void coversEveryHourOfTheWeek(ShiftSystem system) {
        List<Stint> all = new ArrayList<>();
        crews(system).forEach(crew -> all.addAll(crew.stints()));
        all.sort(Comparator.comparing(Stint::start));

        for (int i = 1; i < all.size(); i++) {
            assertThat(all.get(i).start())
                    .as(all.get(i).label())
                    .isEqualTo(all.get(i - 1).end());
        }
    }

    @Test
    void givesEveryOtherWeekendOffOnTwoTwoThree() {
        for (CrewWork crew : crews(ShiftSystem.TWO_TWO_THREE)) {
            long weekends = crew.stints().stream()
                    .filter(stint -> stint.start().getDayOfWeek() == DayOfWeek.SATURDAY)
                    .count();
            assertThat(weekends).isEqualTo(crew.weeks() / 2);
        }
    }

    /** Every system gives eleven hours between shifts; the long ones and the sixth day are flagged for what they are. */
    @ParameterizedTest
    @CsvSource({
        "day-shift, 0, 0, 0",
        "2x8-5-days, 0, 0, 0",
        "3x8-5-days, 0, 0, 0",
        "3x8-5-days-weekend-crews, 0, 1, 0",
        "3x8-7-days-4-crews, 0, 0, 1",
        "3x8-7-days-5-crews, 0, 0, 1",
        "2x12-2-2-3, 0, 1, 1",
        "2x12-4-on-4-off, 0, 1, 1"
    })
    void flagsWhatTheLawMayHaveAgainstASystem(String label, int rest, int nights, int overtime) {
        List<String> flags = ShiftRoster.of(ShiftSystem.of(label).orElseThrow()).flags().stream()
                .map(Warning::message)
                .toList();

        assertThat(flags).filteredOn(flag -> flag.contains("Art. 3")).hasSize(rest);
        assertThat(flags).filteredOn(flag -> flag.contains("Art. 8")).hasSize(nights);
        assertThat(flags).filteredOn(flag -> flag.contains("FLSA")).hasSize(overtime);
        assertThat(flags).hasSize(rest + nights + overtime);
    }

    @ParameterizedTest
    @EnumSource(ShiftSystem.class)
    void movesAllItsTimesAlike(ShiftSystem system) {
        Node.Mapping usual = pattern(system.shifts());
        Node.Mapping moved = pattern(system.shifts(LocalTime.of(7, 30)));

        usual.entries().forEach((name, shift) -> {
            for (String key : List.of("start", "end")) {
                assertThat(time(moved.entries().get(name), key))
                        .isEqualTo(time(shift, key).plusMinutes(90));
            }
        });
    }

    private static Node.Mapping pattern(Node.Mapping shifts) {
        return (Node.Mapping) shifts.entries().get("pattern");
    }

    private static LocalTime time(Node shift, String key) {
        return LocalTime.parse(((Node.Text) ((Node.Mapping) shift).entries().get(key)).text());
    }

    @Test
    void startsEveryTurnOnAMonday() {
        TreeSet<DayOfWeek> days = new TreeSet<>();
        for (ShiftSystem system : ShiftSystem.values()) {
            ZonedDateTime start = ShiftRoster.of(system).clock().start();
            days.add(start.getDayOfWeek());
        }

        assertThat(days).containsExactly(DayOfWeek.MONDAY);
    }
}
