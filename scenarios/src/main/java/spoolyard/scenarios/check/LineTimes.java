package spoolyard.scenarios.check;

import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.Window;
import spoolyard.core.quantity.Ticks;
import spoolyard.scenarios.calendar.DatedShift;
import spoolyard.scenarios.calendar.PlantClock;
import spoolyard.scenarios.calendar.WorkingPeriods;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.Span;
import spoolyard.scenarios.field.Times;

/**
 * When lines are meant to run and when they stand for maintenance. Immutable.
 *
 * @param clock the plant's clock
 * @param shifts all shifts, by start; empty if the plant has no shift pattern and always works
 */
record LineTimes(PlantClock clock, Optional<List<DatedShift>> shifts) {
    private static final Kind<Span> LENGTH = Span.kind();

    /** A planned stop and how it comes again. */
    private record Maintenance(LocalDateTime first, Optional<Integer> everyDays, Span takes) {}

    List<Window> workingPeriods(String line) {
        return shifts.map(all -> WorkingPeriods.of(line, inWhichRuns(line, all), clock.horizonTicks()))
                .orElse(List.of(new Window(line, 0, Ticks.NEVER)));
    }

    private static List<DatedShift> inWhichRuns(String line, List<DatedShift> all) {
        return all.stream()
                .filter(shift -> shift.template().staffing().lines().contains(line))
                .toList();
    }

    List<Window> plannedStops(MappingReader r) {
        Map<String, Maintenance> all = r.optional(
                "maintenance",
                new NamedKind<>(name -> new MappingKind<>("maintenance", LineTimes::maintenance)),
                Map.of());
        List<Window> windows = new ArrayList<>();
        all.forEach((name, maintenance) -> addWindows(name, maintenance, windows));
        windows.sort(Comparator.comparingLong(Window::startTick));
        refuseOverlaps(windows, r);
        return windows;
    }

    private static Maintenance maintenance(MappingReader r) {
        return new Maintenance(
                r.required("first", Times.dateTime()),
                r.optional("every", Span.days(3660)),
                r.required("takes", LENGTH));
    }

    private void addWindows(String name, Maintenance maintenance, List<Window> windows) {
        LocalDateTime start = maintenance.first();
        while (clock.tick(start) < clock.horizonTicks()) {
            ZonedDateTime begin = clock.at(start);
            long endTick = clock.tick(maintenance.takes().after(begin));
            if (endTick > 0) {
                windows.add(new Window(name, clock.tick(begin), endTick));
            }
            if (maintenance.everyDays().isEmpty()) {
                return;
            }
            start = start.plusDays(maintenance.everyDays().get());
        }
    }

    private static void refuseOverlaps(List<Window> windows, MappingReader r) {
        for (int i = 1; i < windows.size(); i++) {
            Window earlier = windows.get(i - 1);
            Window later = windows.get(i);
            if (later.startTick() < earlier.endTick()) {
                r.reading()
                        .faults()
                        .add(new Fault(
                                FaultKind.CONTRADICTION,
                                r.origin().child("maintenance").child(later.name()),
                                later.name(),
                                "Must not begin before " + earlier.name() + " ends.",
                                "move one of the two, or make one of them longer"));
                return;
            }
        }
    }
}
