package spoolyard.scenarios.calendar;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import spoolyard.scenarios.calendar.CrewWork.Attendance;
import spoolyard.scenarios.fault.Origin;

/**
 * Who works when: over the run, filled up to whole turns of pattern and rotas, so that averages are fair. At most a year.
 * A shift that stands in no rota is taken to be worked by the same people each time.
 */
public final class Roster {
    private static final int MOST_WEEKS = 53;

    private final ShiftPlan plan;
    private final PlantClock clock;
    private final LocalDate monday;
    private final int weeks;

    private Roster(ShiftPlan plan, PlantClock clock) {
        this.plan = plan;
        this.clock = clock;
        this.monday = clock.firstDate().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        long turnDays = 7;
        for (int days : lengths()) {
            turnDays = Math.min(turnDays / gcd(turnDays, days) * days, 7L * MOST_WEEKS);
        }
        long runDays = Math.max(1, ChronoUnit.DAYS.between(monday, clock.lastDate()));
        long turns = (runDays + turnDays - 1) / turnDays;
        this.weeks = (int) Math.min(turns * turnDays / 7, MOST_WEEKS);
    }

    private List<Integer> lengths() {
        List<Integer> lengths = new ArrayList<>(List.of(plan.cycle().days()));
        plan.rotas().forEach(rota -> lengths.add(rota.days().size()));
        return lengths;
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    /**
     * The work of every crew, and of every shift that no rota names.
     *
     * @param plan the shifts
     * @param clock start and end of the run
     * @return crews in file order, then shifts
     */
    public static List<CrewWork> of(ShiftPlan plan, PlantClock clock) {
        Roster roster = new Roster(plan, clock);
        Stream<CrewWork> crews = plan.rotas().stream().map(roster::ofCrew);
        Stream<CrewWork> shifts = plan.pattern().stream()
                .map(ShiftPlan.PatternShift::template)
                .filter(shift ->
                        plan.rotas().stream().noneMatch(rota -> rota.days().contains(Optional.of(shift.name()))))
                .map(roster::ofShift);
        return Stream.concat(crews, shifts).toList();
    }

    private CrewWork ofCrew(Rota rota) {
        return work(
                rota.crew(),
                true,
                rota.origin(),
                date -> Stream.concat(
                        rota.shiftOn(date, plan.cycle()).stream().flatMap(shift -> onDate(shift, date)),
                        extras(date)
                                .filter(extra -> extra.workedBy().equals(Optional.of(rota.crew())))
                                .map(Roster::ofExtra)));
    }

    private CrewWork ofShift(ShiftTemplate shift) {
        return work(
                shift.name(),
                false,
                shift.origin(),
                date -> Stream.concat(
                        onDate(shift.name(), date),
                        extras(date)
                                .filter(extra -> extra.workedBy().isEmpty())
                                .filter(extra -> extra.template().name().equals(shift.name()))
                                .map(Roster::ofExtra)));
    }

    private static Attendance ofExtra(ShiftPlan.Extra extra) {
        return new Attendance(extra.template(), true);
    }

    private Stream<ShiftPlan.Extra> extras(LocalDate date) {
        return plan.extras().stream().filter(extra -> extra.dates().contains(date));
    }

    private Stream<Attendance> onDate(String shift, LocalDate date) {
        return plan.pattern().stream()
                .filter(each -> each.template().name().equals(shift))
                .filter(each -> plan.fallsOn(each, date))
                .flatMap(each -> plan.onDate(each.template(), date).stream())
                .map(template -> new Attendance(template, false));
    }

    /** Finds the shifts that somebody works on a date. */
    private interface OnDate {
        Stream<Attendance> shifts(LocalDate date);
    }

    private CrewWork work(String name, boolean isCrew, Origin origin, OnDate onDate) {
        List<CrewWork.Stint> stints = IntStream.range(0, 7 * weeks)
                .boxed()
                .flatMap(day -> onDate.shifts(monday.plusDays(day))
                        .map(shift -> CrewWork.Stint.of(shift, monday.plusDays(day), day / 7, clock)))
                .sorted(Comparator.comparing(CrewWork.Stint::start))
                .toList();
        return new CrewWork(name, isCrew, origin, weeks, stints);
    }
}
