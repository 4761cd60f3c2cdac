package spoolyard.scenarios.calendar;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.fault.Warning;

/**
 * Lays a shift plan out over the days of a run and {@value #MARGIN_DAYS} days before and after it, so that a working period
 * that goes on beyond the run is seen to go on.
 */
public final class ShiftCalendar {
    private static final int MARGIN_DAYS = 2;

    private final ShiftPlan plan;
    private final PlantClock clock;
    private final Faults faults;
    private final List<DatedShift> shifts = new ArrayList<>();

    private ShiftCalendar(ShiftPlan plan, PlantClock clock, Faults faults) {
        this.plan = plan;
        this.clock = clock;
        this.faults = faults;
    }

    /**
     * Every shift of the run and around it.
     *
     * @param plan the plan
     * @param clock start and end of the run
     * @param faults takes shifts that overlap, changes that hit no shift, and start times that a clock change skips
     * @return by start
     */
    public static List<DatedShift> of(ShiftPlan plan, PlantClock clock, Faults faults) {
        return new ShiftCalendar(plan, clock, faults).resolve();
    }

    private List<DatedShift> resolve() {
        plan.changes().forEach(this::requireShift);
        LocalDate last = clock.lastDate().plusDays(MARGIN_DAYS);
        for (LocalDate d = clock.firstDate().minusDays(MARGIN_DAYS); !d.isAfter(last); d = d.plusDays(1)) {
            LocalDate date = d;
            plan.pattern().stream()
                    .filter(shift -> plan.fallsOn(shift, date))
                    .flatMap(shift -> onDate(shift.template(), date).stream())
                    .forEach(template -> add(template, date));
            plan.extras().stream()
                    .filter(extra -> extra.dates().contains(date))
                    .forEach(extra -> add(extra.template(), date));
        }
        shifts.sort(Comparator.comparingLong(DatedShift::startTick));
        refuseOverlaps();
        return shifts;
    }

    private Optional<ShiftTemplate> onDate(ShiftTemplate usual, LocalDate date) {
        return plan.changes().stream()
                .filter(change ->
                        change.shift().equals(usual.name()) && change.dates().contains(date))
                .findFirst()
                .map(ShiftPlan.Change::instead)
                .orElse(Optional.of(usual));
    }

    private void add(ShiftTemplate template, LocalDate date) {
        ZonedDateTime start = clock.at(date.atTime(template.start()));
        ZonedDateTime end = template.end().after(date, template.start(), start);
        DatedShift shift = new DatedShift(template, date, clock.tick(start), clock.tick(end));
        if (shift.startTick() >= shift.endTick()) {
            report(shift, FaultKind.CONTRADICTION, "Must not lie wholly in the hour that the clock change skips.");
            return;
        }
        if (shift.overlapsRun(clock.horizonTicks())) {
            warnOfClockChange(shift);
        }
        shifts.add(shift);
    }

    private void warnOfClockChange(DatedShift shift) {
        if (!clock.isPlain(shift.date().atTime(shift.template().start()))) {
            String message = "shift " + shift.label() + " starts in an hour that the clock change skips or repeats;"
                    + " a skipped start moves later, a repeated one is the first.";
            faults.add(new Warning(Warning.Kind.CLOCK_CHANGE, shift.template().origin(), message));
        }
    }

    /** Each pair of names is reported once, on the first date. */
    private void refuseOverlaps() {
        Set<String> reported = new HashSet<>();
        for (int i = 1; i < shifts.size(); i++) {
            DatedShift earlier = shifts.get(i - 1);
            DatedShift later = shifts.get(i);
            String pair = earlier.template().name() + "\n" + later.template().name();
            if (later.startTick() < earlier.endTick() && reported.add(pair)) {
                report(
                        later,
                        FaultKind.OVERLAPPING_SHIFTS,
                        "Must not begin before shift " + earlier.label() + " ends.");
            }
        }
    }

    private void report(DatedShift shift, FaultKind kind, String allowed) {
        faults.add(new Fault(
                kind,
                shift.template().origin(),
                "shift " + shift.label() + " from " + shift.template().start(),
                allowed,
                "correct start, end, length, days or dates of one of the shifts"));
    }

    private void requireShift(ShiftPlan.Change change) {
        for (LocalDate date : change.dates()) {
            boolean isThere = plan.pattern().stream()
                    .anyMatch(shift -> shift.template().name().equals(change.shift()) && plan.fallsOn(shift, date));
            if (!isThere) {
                faults.add(new Fault(
                        FaultKind.CONTRADICTION,
                        change.origin().child("dates"),
                        date.toString(),
                        "Must be a date on which shift " + change.shift() + " starts.",
                        "correct the date, or add the shift under extra"));
            }
        }
    }
}
