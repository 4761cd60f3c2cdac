package spoolyard.scenarios.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.Window;
import spoolyard.core.quantity.Ticks;
import spoolyard.scenarios.calendar.ShiftPlan.Change;
import spoolyard.scenarios.calendar.ShiftPlan.Extra;
import spoolyard.scenarios.calendar.ShiftPlan.PatternShift;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.fault.Warning;

/**
 * Clock changes in the European Union: forward on the last Sunday of March and back on the last Sunday of October, at
 * 01:00 UTC. Source: Directive 2000/84/EC, articles 1 to 3. In 2027 these are 28 March and 31 October.
 */
final class ShiftCalendarTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    private static final Cycle WEEK = new Cycle(7, LocalDate.of(2027, 3, 1));
    private static final DayRule EVERY_DAY = new DayRule.Weekdays(EnumSet.allOf(DayOfWeek.class));
    private static final DayRule WEEKDAYS = new DayRule.Weekdays(EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY));

    private static PlantClock clock(String start, int days) {
        ZonedDateTime begin = LocalDateTime.parse(start).atZone(BERLIN);
        return new PlantClock(begin, begin.plusDays(days));
    }

    private static ShiftTemplate shift(String name, String start, String end) {
        return shift(name, start, new ShiftEnd.AtClock(LocalTime.parse(end)));
    }

    private static ShiftTemplate shift(String name, String start, ShiftEnd end) {
        Staffing staffing = new Staffing(List.of(), List.of(), 0, true, 1, List.of("L1"));
        return new ShiftTemplate(name, new Origin("plant.yaml", 1, "/" + name), LocalTime.parse(start), end, staffing);
    }

    private static ShiftPlan plan(PatternShift... shifts) {
        return new ShiftPlan(WEEK, List.of(shifts), Set.of(), List.of(), List.of());
    }

    private static List<DatedShift> resolve(ShiftPlan plan, PlantClock clock) {
        Faults faults = new Faults();
        List<DatedShift> shifts = ShiftCalendar.of(plan, clock, faults);
        assertThat(faults.all()).isEmpty();
        return inRun(shifts, clock);
    }

    private static List<DatedShift> inRun(List<DatedShift> shifts, PlantClock clock) {
        return shifts.stream()
                .filter(shift -> shift.overlapsRun(clock.horizonTicks()))
                .toList();
    }

    private static double hours(DatedShift shift) {
        return Ticks.toHours(shift.endTick() - shift.startTick());
    }

    private static final ShiftPlan ROUND_THE_CLOCK = plan(
            new PatternShift(shift("D", "06:00", "14:00"), EVERY_DAY),
            new PatternShift(shift("E", "14:00", "22:00"), EVERY_DAY),
            new PatternShift(shift("N", "22:00", "06:00"), EVERY_DAY));

    @Test
    void shortensTheNightInWhichTheClocksGoForward() {
        List<DatedShift> shifts = resolve(ROUND_THE_CLOCK, clock("2027-03-27T06:00", 2));

        assertThat(shifts)
                .extracting(DatedShift::label, ShiftCalendarTest::hours)
                .containsExactly(
                        tuple("D of 2027-03-27", 8.0),
                        tuple("E of 2027-03-27", 8.0),
                        tuple("N of 2027-03-27", 7.0),
                        tuple("D of 2027-03-28", 8.0),
                        tuple("E of 2027-03-28", 8.0),
                        tuple("N of 2027-03-28", 8.0));
        assertThat(clock("2027-03-27T06:00", 2).horizonTicks()).isEqualTo(47 * Ticks.PER_HOUR);
    }

    @Test
    void lengthensTheNightInWhichTheClocksGoBack() {
        List<DatedShift> shifts = resolve(ROUND_THE_CLOCK, clock("2027-10-30T06:00", 2));

        assertThat(shifts).extracting(ShiftCalendarTest::hours).containsExactly(8.0, 8.0, 9.0, 8.0, 8.0, 8.0);
        assertThat(clock("2027-10-30T06:00", 2).horizonTicks()).isEqualTo(49 * Ticks.PER_HOUR);
    }

    @Test
    void givesTheDaysOfTheClockChangesTwentyThreeAndTwentyFiveHours() {
        assertThat(clock("2027-03-28T00:00", 1).horizonTicks()).isEqualTo(23 * Ticks.PER_HOUR);
        assertThat(clock("2027-10-31T00:00", 1).horizonTicks()).isEqualTo(25 * Ticks.PER_HOUR);
        assertThat(clock("2027-03-27T00:00", 1).horizonTicks()).isEqualTo(24 * Ticks.PER_HOUR);
    }

    @Test
    void keepsTheLengthOfAShiftGivenByTheStopwatch() {
        ShiftTemplate night = shift("N", "22:00", new ShiftEnd.AfterLength(Duration.ofHours(8)));

        List<DatedShift> shifts = resolve(plan(new PatternShift(night, EVERY_DAY)), clock("2027-03-27T06:00", 1));

        assertThat(shifts).extracting(ShiftCalendarTest::hours).containsExactly(8.0);
        assertThat(shifts.get(0).startTick()).isEqualTo(16 * Ticks.PER_HOUR);
    }

    @Test
    void warnsOfAStartInTheHourThatIsSkipped() {
        Faults faults = new Faults();
        ShiftPlan plan = plan(new PatternShift(shift("X", "02:30", "10:00"), EVERY_DAY));

        PlantClock clock = clock("2027-03-28T00:00", 1);
        List<DatedShift> shifts = inRun(ShiftCalendar.of(plan, clock, faults), clock);

        assertThat(faults.warnings()).extracting(Warning::kind).containsExactly(Warning.Kind.CLOCK_CHANGE);
        assertThat(hours(shifts.get(0))).isEqualTo(6.5);
    }

    @Test
    void takesTheFirstOfARepeatedHour() {
        Faults faults = new Faults();
        ShiftPlan plan = plan(new PatternShift(shift("X", "02:30", "10:00"), EVERY_DAY));

        PlantClock clock = clock("2027-10-31T00:00", 1);
        List<DatedShift> shifts = inRun(ShiftCalendar.of(plan, clock, faults), clock);

        assertThat(faults.warnings()).hasSize(1);
        assertThat(hours(shifts.get(0))).isEqualTo(8.5);
        assertThat(shifts.get(0).startTick()).isEqualTo(5 * Ticks.PER_HOUR / 2);
    }

    @Test
    void refusesAShiftWhollyInTheHourThatIsSkipped() {
        Faults faults = new Faults();

        ShiftCalendar.of(
                plan(new PatternShift(shift("X", "02:00", "03:00"), EVERY_DAY)), clock("2027-03-28T00:00", 1), faults);

        assertThat(faults.all().get(0).text())
                .startsWith("plant.yaml:1: /X = shift X of 2027-03-28 from 02:00."
                        + " Must not lie wholly in the hour that the clock change skips.");
    }

    @Test
    void beginsBeforeTheRunWithAShiftThatIsUnderWay() {
        List<DatedShift> shifts = resolve(ROUND_THE_CLOCK, clock("2027-03-03T02:00", 1));

        assertThat(shifts.get(0).label()).isEqualTo("N of 2027-03-02");
        assertThat(shifts.get(0).startTick()).isEqualTo(-4 * Ticks.PER_HOUR);
        assertThat(shifts.get(0).endTick()).isEqualTo(4 * Ticks.PER_HOUR);
        assertThat(shifts.get(shifts.size() - 1).label()).isEqualTo("N of 2027-03-03");
        assertThat(shifts.get(shifts.size() - 1).endTick()).isEqualTo(28 * Ticks.PER_HOUR);
    }

    @Test
    void leavesOutShiftsThatOnlyTouchTheRun() {
        List<DatedShift> shifts = resolve(ROUND_THE_CLOCK, clock("2027-03-03T06:00", 1));

        assertThat(shifts).extracting(s -> s.template().name()).containsExactly("D", "E", "N");
    }

    @Test
    void repeatsACycleOfEightDays() {
        Cycle eight = new Cycle(8, LocalDate.of(2027, 3, 3));
        ShiftPlan fourOnFourOff = new ShiftPlan(
                eight,
                List.of(new PatternShift(shift("A", "06:00", "18:00"), new DayRule.CycleDays(Set.of(1, 2, 3, 4)))),
                Set.of(),
                List.of(),
                List.of());

        List<DatedShift> shifts = resolve(fourOnFourOff, clock("2027-03-01T00:00", 20));

        assertThat(shifts)
                .extracting(s -> s.date().getDayOfMonth())
                .containsExactly(3, 4, 5, 6, 11, 12, 13, 14, 19, 20);
    }

    @Test
    void dropsHolidaysAndAddsExtraShifts() {
        LocalDate goodFriday = LocalDate.of(2027, 3, 26);
        LocalDate saturday = LocalDate.of(2027, 3, 27);
        ShiftPlan plan = new ShiftPlan(
                WEEK,
                List.of(new PatternShift(shift("D", "06:00", "14:00"), WEEKDAYS)),
                Set.of(goodFriday),
                List.of(new Extra(shift("D", "06:00", "12:00"), List.of(saturday))),
                List.of());

        List<DatedShift> shifts = resolve(plan, clock("2027-03-22T00:00", 7));

        assertThat(shifts)
                .extracting(s -> s.date().getDayOfMonth(), ShiftCalendarTest::hours)
                .containsExactly(tuple(22, 8.0), tuple(23, 8.0), tuple(24, 8.0), tuple(25, 8.0), tuple(27, 6.0));
    }

    @Test
    void changesAndCancelsShiftsOnSingleDates() {
        Origin origin = new Origin("plant.yaml", 1, "/changes");
        ShiftPlan plan = new ShiftPlan(
                WEEK,
                List.of(new PatternShift(shift("D", "06:00", "14:00"), WEEKDAYS)),
                Set.of(),
                List.of(),
                List.of(
                        new Change(
                                "D",
                                origin,
                                List.of(LocalDate.of(2027, 3, 2)),
                                Optional.of(shift("D", "08:00", "12:00"))),
                        new Change("D", origin, List.of(LocalDate.of(2027, 3, 3)), Optional.empty())));

        List<DatedShift> shifts = resolve(plan, clock("2027-03-01T00:00", 4));

        assertThat(shifts)
                .extracting(s -> s.date().getDayOfMonth(), ShiftCalendarTest::hours)
                .containsExactly(tuple(1, 8.0), tuple(2, 4.0), tuple(4, 8.0));
    }

    @Test
    void joinsShiftsThatFollowOneAnotherIntoOnePeriod() {
        PatternShift early = new PatternShift(shift("D", "06:00", "14:00"), WEEKDAYS);
        PatternShift night = new PatternShift(shift("N", "22:00", "06:00"), WEEKDAYS);

        PlantClock clock = clock("2027-03-04T06:00", 5);

        List<Window> periods = WorkingPeriods.of(
                "L1", ShiftCalendar.of(plan(early, night), clock, new Faults()), clock.horizonTicks());

        assertThat(periods)
                .extracting(w -> w.startTick() / Ticks.PER_HOUR, w -> w.endTick() / Ticks.PER_HOUR)
                .containsExactly(tuple(-8L, 8L), tuple(16L, 32L), tuple(40L, 48L), tuple(96L, 104L), tuple(112L, 128L));
    }

    /** So that a line does not shut down just because the run ends. */
    @Test
    void seesThatWorkRoundTheClockGoesOnBeyondTheRun() {
        PlantClock clock = clock("2027-03-01T06:00", 28);

        List<Window> periods =
                WorkingPeriods.of("L1", ShiftCalendar.of(ROUND_THE_CLOCK, clock, new Faults()), clock.horizonTicks());

        assertThat(periods).hasSize(1);
        assertThat(periods.get(0).startTick()).isNegative();
        assertThat(periods.get(0).endTick()).isGreaterThan(clock.horizonTicks());
    }

    @Test
    void leavesOutPeriodsThatOnlyTouchTheRun() {
        PlantClock clock = clock("2027-03-06T06:00", 2);
        PatternShift night = new PatternShift(shift("N", "22:00", "06:00"), WEEKDAYS);
        PatternShift early = new PatternShift(shift("D", "06:00", "14:00"), WEEKDAYS);

        List<Window> periods = WorkingPeriods.of(
                "L1", ShiftCalendar.of(plan(early, night), clock, new Faults()), clock.horizonTicks());

        assertThat(periods).isEmpty();
    }
}
