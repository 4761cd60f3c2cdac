package spoolyard.scenarios.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.scenarios.calendar.Cycle;
import spoolyard.scenarios.calendar.Rota;
import spoolyard.scenarios.calendar.ShiftPlan;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.ListKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.read.Node;

/**
 * The part {@code crews} of the shifts: for each crew the shifts that it works, day after day.
 *
 * @param shifts names of the shifts of the pattern
 * @param cycle the pattern's cycle
 * @param pattern the shifts of the pattern
 */
record RotaKind(List<String> shifts, Cycle cycle, List<ShiftPlan.PatternShift> pattern) {
    private static final String OFF = "off";
    private static final int MOST_DAYS = 366;

    List<Rota> all(MappingReader r) {
        return List.copyOf(
                r.optional("crews", new NamedKind<>(OfCrew::new), Map.of()).values());
    }

    /** One crew. */
    private final class OfCrew implements Kind<Rota> {
        private final String crew;

        OfCrew(String crew) {
            this.crew = crew;
        }

        @Override
        public Rota read(Node node, Reading reading) {
            List<String> known = new ArrayList<>(shifts);
            known.add(OFF);
            List<Optional<String>> days = ListKind.some(Words.name("shift", known)).read(node, reading).stream()
                    .map(name -> Optional.of(name).filter(shifts::contains))
                    .toList();
            Rota rota = new Rota(crew, node.origin(), days);
            clash(rota)
                    .ifPresent(date -> reading.fault(
                            FaultKind.CONTRADICTION,
                            node,
                            "Must name shifts on days on which they start; on " + date + " (" + dayName(date)
                                    + ") there is no shift "
                                    + rota.shiftOn(date, cycle).orElse("") + ".",
                            "write off for that day, or correct the days of the shift"));
            return rota;
        }

        private Optional<LocalDate> clash(Rota rota) {
            return cycle.firstDay()
                    .datesUntil(cycle.firstDay()
                            .plusDays(Math.min(
                                    MOST_DAYS, (long) cycle.days() * rota.days().size())))
                    .filter(date -> rota.shiftOn(date, cycle)
                            .filter(shift -> !starts(shift, date))
                            .isPresent())
                    .findFirst();
        }

        private boolean starts(String shift, LocalDate date) {
            return pattern.stream()
                    .filter(each -> each.template().name().equals(shift))
                    .anyMatch(each -> each.days().fallsOn(date, cycle));
        }

        private String dayName(LocalDate date) {
            return "day " + cycle.dayOf(date) + " of the cycle";
        }

        @Override
        public Rota standIn() {
            return new Rota(crew, Origin.ofFile("nowhere"), List.of(Optional.empty()));
        }
    }
}
