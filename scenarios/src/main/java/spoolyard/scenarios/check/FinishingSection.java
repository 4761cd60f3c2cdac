package spoolyard.scenarios.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Finishing;
import spoolyard.core.plant.Finishing.CartonSize;
import spoolyard.core.plant.Finishing.Inbound;
import spoolyard.core.plant.FinishingStation;
import spoolyard.core.plant.FinishingStation.Cycle;
import spoolyard.core.plant.OpeningSpools;
import spoolyard.core.plant.Place;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.plant.Window;
import spoolyard.core.quantity.Ticks;
import spoolyard.scenarios.calendar.DatedShift;
import spoolyard.scenarios.calendar.PlantClock;
import spoolyard.scenarios.calendar.WorkingPeriods;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.ListKind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.Numbers;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.read.Node;

/** The part {@code finishing}: stations after the line, in the order in which a spool meets them. */
final class FinishingSection {
    private static final Map<String, TaskKind> KINDS = Map.of("sealing", TaskKind.SEALING, "packing", TaskKind.PACKING);

    private static final Kind<CartonSize> CARTON = new MappingKind<>(
            "carton",
            r -> new CartonSize(
                    r.required("spool", Amounts.SPOOL_MASS), r.required("spools", Numbers.whole(1, 10_000))));

    private final PlantNames names;
    private final PlantClock clock;
    private final List<DatedShift> shifts;
    private final CrewNeedKind crew;
    private final Map<String, Polymer> polymers;
    private final OpeningKind opening;
    private final List<OpeningSpools> atStart = new ArrayList<>();

    FinishingSection(
            PlantNames names,
            PlantClock clock,
            List<DatedShift> shifts,
            Map<String, Polymer> polymers,
            OpeningKind opening) {
        this.opening = opening;
        this.polymers = polymers;
        this.names = names;
        this.clock = clock;
        this.shifts = shifts;
        this.crew = new CrewNeedKind(names.roles());
    }

    /** Reads the parts finishing, cartons, cartons_per_pallet, inbound, lab and exposure. */
    Finishing finishing(MappingReader r) {
        Kind<Map<String, FinishingStation>> stations =
                new NamedKind<>(name -> new MappingKind<>("station", s -> station(name, s)));
        Kind<Map<String, Inbound>> inbound =
                new NamedKind<>(name -> new MappingKind<>("inbound", s -> inbound(name, s)));
        return new Finishing(
                List.copyOf(r.required("finishing", stations).values()),
                r.optional("cartons", ListKind.of(CARTON), List.of()),
                r.optional("cartons_per_pallet", Numbers.whole(1, 10_000), 1),
                List.copyOf(r.optional("inbound", inbound, Map.of()).values()),
                new QualitySection(crew).rules(r),
                atStart);
    }

    private Inbound inbound(String name, MappingReader r) {
        Optional<Polymer> polymer =
                r.optional("polymer", Words.name("polymer", names.polymers())).map(polymers::get);
        return new Inbound(
                name, r.required("every", Amounts.INTERVAL), r.required("spool", Amounts.SPOOL_MASS), polymer);
    }

    private FinishingStation station(String name, MappingReader r) {
        atStart.addAll(r.optional("opening", opening.of(name), List.of()));
        return new FinishingStation(
                name,
                KINDS.get(r.required("kind", Words.oneOf("sealing", "packing"))),
                r.required("places", Numbers.whole(1, 1000)),
                cycles(r),
                r.optional("crew", crew, CrewNeed.NOBODY),
                r.optional("open", new OpenKind(name), always(name)),
                r.required("rack", Amounts.spoolsOrUnlimited()),
                r.optional("repeat", Amounts.REPEAT_CHANCE, 0.0),
                new StoppageKind(crew).ofStation(r),
                r.optional("place", Amounts.PLACE, Place.ORIGIN));
    }

    private List<Cycle> cycles(MappingReader r) {
        int before = r.reading().faults().count();
        Kind<Cycle> cycle = new MappingKind<>("cycle", FinishingSection::cycle);
        List<Cycle> cycles = r.required("cycle", ListKind.some(cycle));
        boolean isClean = r.reading().faults().count() == before;
        if (isClean && !isAscendingAndComplete(cycles)) {
            r.raw("cycle").ifPresent(node -> r.reading()
                    .fault(
                            FaultKind.CONTRADICTION,
                            node,
                            "Must go by ascending up_to, and the last, and only the last, has none.",
                            "sort the entries, and take up_to out of the last one"));
        }
        return cycles;
    }

    private static Cycle cycle(MappingReader r) {
        return new Cycle(
                r.optional("up_to", Amounts.SPOOL_MASS, Double.POSITIVE_INFINITY),
                r.optional("batch", Numbers.whole(1, 1000), 1),
                r.required("takes", Amounts.WORK));
    }

    private static boolean isAscendingAndComplete(List<Cycle> cycles) {
        for (int i = 1; i < cycles.size(); i++) {
            if (cycles.get(i - 1).upToSpoolKg() >= cycles.get(i).upToSpoolKg()) {
                return false;
            }
        }
        return cycles.get(cycles.size() - 1).upToSpoolKg() == Double.POSITIVE_INFINITY;
    }

    private static List<Window> always(String station) {
        return List.of(new Window(station, 0, Ticks.NEVER));
    }

    /** {@code always}, or the shifts in which a station is open. */
    private final class OpenKind implements Kind<List<Window>> {
        private final String station;

        OpenKind(String station) {
            this.station = station;
        }

        @Override
        public List<Window> read(Node node, Reading reading) {
            if (node instanceof Node.Text text && text.text().equals("always")) {
                return always(station);
            }
            Kind<String> shift = Words.name("shift", names.shifts());
            List<String> open = new ArrayList<>(ListKind.some(shift).read(node, reading));
            List<DatedShift> chosen = shifts.stream()
                    .filter(s -> open.contains(s.template().name()))
                    .toList();
            return WorkingPeriods.of(station, chosen, clock.horizonTicks());
        }

        @Override
        public List<Window> standIn() {
            return always(station);
        }
    }
}
