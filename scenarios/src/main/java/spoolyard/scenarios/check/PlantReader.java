package spoolyard.scenarios.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.Crew;
import spoolyard.core.plant.DryingRoom;
import spoolyard.core.plant.Finishing;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Materials;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.OrderBook;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Polymer;
import spoolyard.scenarios.calendar.DatedShift;
import spoolyard.scenarios.calendar.PlantClock;
import spoolyard.scenarios.calendar.Roster;
import spoolyard.scenarios.calendar.ShiftCalendar;
import spoolyard.scenarios.calendar.ShiftPlan;
import spoolyard.scenarios.capacity.CapacityWarnings;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.labour.LabourLaw;
import spoolyard.scenarios.read.Node;
import spoolyard.scenarios.read.SourceFiles;

/** Reads a whole scenario tree. */
public final class PlantReader {
    private final Node.Mapping tree;
    private final SourceFiles files;
    private final Reading reading;
    private final PlantNames names;

    private PlantReader(Node.Mapping tree, SourceFiles files, Reading reading) {
        this.tree = tree;
        this.files = files;
        this.reading = reading;
        this.names = PlantNames.of(tree);
    }

    /**
     * Reads a tree and the tables it names.
     *
     * @param tree the tree, bases merged
     * @param files opens the tables
     * @param reading takes faults; if it has any afterwards the result is of no use
     * @return the plant and what reports need beside it
     */
    public static ReadPlant read(Node.Mapping tree, SourceFiles files, Reading reading) {
        PlantReader reader = new PlantReader(tree, files, reading);
        ReadPlant plant = new MappingKind<>("scenario", reader::plant).read(tree, reading);
        if (reading.faults().isEmpty()) {
            new CrossChecks(plant, tree, reading).run();
        }
        if (reading.faults().isEmpty()) {
            CapacityWarnings.of(plant.plant(), new TreeOrigins(tree, plant.orderOrigins()))
                    .forEach(reading.faults()::add);
        }
        return plant;
    }

    private ReadPlant plant(MappingReader r) {
        r.required("spoolyard", Words.oneOf("1"));
        String name = r.required("name", Words.text());
        String description = r.optional("description", Words.text(), "");
        int beforeClock = reading.faults().count();
        PlantClock clock = r.required("time", TimeSection.KIND);
        Optional<PlantClock> soundClock =
                Optional.of(clock).filter(c -> reading.faults().count() == beforeClock);
        Tables tables = r.optional("files", Tables.kind(files), Tables.NONE);
        Map<String, Polymer> polymers = r.optional("polymers", PolymerKind.ALL, Map.of());
        Products products = ColourFile.read(tables.colours(), polymers, reading);
        Crew crew = r.optional("crew", new CrewSection(names).kind(), CrewSection.NONE);
        Optional<List<DatedShift>> shifts = shifts(r, clock);
        List<Line> lines = lines(r, products, new LineTimes(clock, shifts));
        List<LoggedPurge> log = new ChangeoverFile(names.lines(), names.polymers(), products.colourCode(), reading)
                .table(tables.changeovers().rows());
        ChangeoverSection section = new ChangeoverSection(names, products, log);
        ChangeoverSection.Read changeovers = r.optional("changeover", section.kind(), section.none());
        List<DatedShift> dated = shifts.orElse(List.of());
        OrderFile orders = new OrderFile(lines, products, soundClock, reading);
        int before = reading.faults().count();
        OrderBook book = book(r, tables.orders(), orders);
        boolean areWhole = tables.orders().isWhole() && reading.faults().count() == before;
        OpeningKind opening = new OpeningKind(byId(book), areWhole, polymers);
        Finishing finishing = new FinishingSection(names, clock, dated, polymers, opening).finishing(r);
        Plant plant = new Plant(
                name,
                clock.horizonTicks(),
                lines,
                crew,
                dated.stream()
                        .filter(shift -> shift.overlapsRun(clock.horizonTicks()))
                        .map(DatedShift::toShift)
                        .toList(),
                changeovers.rules(),
                finishing,
                book,
                r.optional("drying", MaterialKind.ROOM, DryingRoom.NONE),
                new EconomySection(names, products).economy(r),
                r.optional("materials", new MaterialsSection(names, products, clock).kind(), Materials.NONE));
        PurgeInputs purge = products.purgeInputs(log, changeovers.estimate());
        return new ReadPlant(plant, description, clock, names.shifts(), orders.origins(), purge);
    }

    private Optional<List<DatedShift>> shifts(MappingReader r, PlantClock clock) {
        Optional<ShiftPlan> plan = r.optional("shifts", new ShiftSection(names, clock, tree).kind());
        boolean isClean = reading.faults().isEmpty();
        plan.filter(p -> isClean)
                .map(p -> LabourLaw.flags(Roster.of(p, clock)))
                .ifPresent(flags -> flags.forEach(reading.faults()::add));
        return plan.map(p -> isClean ? ShiftCalendar.of(p, clock, reading.faults()) : List.of());
    }

    private List<Line> lines(MappingReader r, Products products, LineTimes times) {
        LineKind line = new LineKind(names, products, times);
        r.optional("every_line", new AnyMappingKind());
        return List.copyOf(
                r.optional("lines", new NamedKind<>(line::named), Map.of()).values());
    }

    private static Map<String, Order> byId(OrderBook book) {
        Map<String, Order> byId = new LinkedHashMap<>();
        book.orders().forEach(order -> byId.put(order.id(), order));
        return byId;
    }

    private OrderBook book(MappingReader r, Table table, OrderFile file) {
        int before = reading.faults().count();
        List<Order> orders = file.read(table.rows());
        boolean isWhole = table.isWhole() && reading.faults().count() == before;
        OrdersSection section = new OrdersSection(names, orders, isWhole, files);
        return r.optional("orders", section.kind(), section.byDueDate());
    }
}
