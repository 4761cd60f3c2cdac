package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import spoolyard.core.plant.Accumulator;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.ChangeoverRules.Approval;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.Crew;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.DispatchRule;
import spoolyard.core.plant.DryingRoom;
import spoolyard.core.plant.Economy;
import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.Finishing;
import spoolyard.core.plant.FinishingStation;
import spoolyard.core.plant.Gauge;
import spoolyard.core.plant.HeatUp;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.MaterialSupply;
import spoolyard.core.plant.Materials;
import spoolyard.core.plant.OpeningSpools;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.OrderBook;
import spoolyard.core.plant.OverflowPolicy;
import spoolyard.core.plant.Place;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.PurgeFormula;
import spoolyard.core.plant.QualityRules;
import spoolyard.core.plant.Role;
import spoolyard.core.plant.Shift;
import spoolyard.core.plant.StartStop;
import spoolyard.core.plant.StockItem;
import spoolyard.core.plant.Stoppage;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.plant.Winder;
import spoolyard.core.plant.Window;
import spoolyard.core.quantity.Ticks;

/** A small plant to draw on: change the fields, then {@link #plant()}. Numbers are those of one 45 mm PLA line. */
final class PlantSketch {
    static final Polymer PLA = new Polymer("PLA", 1240, 1, 205, 1200);
    static final Polymer DRIED_PLA = new Polymer("PLA", 1240, 1, 205, 1200, 3600);
    static final Colour WHITE = new Colour("WHT", "White", 95, -1, 2, 1, 0.6, 0.04);
    static final Colour BLACK = new Colour("BLK", "Black", 17, 0, 0, 4, 4, 0.03);
    static final Product WHITE_PLA = new Product(PLA, WHITE, 1.75, 1);
    static final Product BLACK_PLA = new Product(PLA, BLACK, 1.75, 1);
    static final CrewNeed OPERATOR = new CrewNeed(List.of("operator"));

    double hours = 8;
    int lineCount = 1;
    int strands = 1;
    double rateKgPerH = 18;
    double capacityM = 60;
    Law stopTimeS = new Law.Fixed(18);
    Law finishTimeS = new Law.Fixed(32);
    CrewNeed swapCrew = OPERATOR;
    boolean twoPosition;
    double maxSpeedMPerMin = 160;
    OverflowPolicy overflow = new OverflowPolicy.Waste();
    StartStop startStop = startStop(EndOfPeriod.SHUT_DOWN);
    List<Stoppage> stoppages = new ArrayList<>();
    List<Window> plannedStops = new ArrayList<>();
    double defects;
    boolean runningAtStart = true;
    List<Order> orders = new ArrayList<>();
    DispatchRule rule = DispatchRule.DUE_DATE_FIRST;
    List<Role> roles = List.of(new Role("operator", List.of(), false, List.of(), List.of()));
    List<Integer> heads = List.of(1);
    double walkingSpeedMPerS = Double.POSITIVE_INFINITY;
    Optional<MaterialSupply> supply = Optional.empty();
    Optional<Gauge> gauge = Optional.empty();
    DryingRoom drying = DryingRoom.NONE;
    Place linePlace = Place.ORIGIN;
    Crew.EndOfShift endOfShift = Crew.EndOfShift.FINISH_TASK;
    List<Shift> shifts = new ArrayList<>();
    List<Window> periods = new ArrayList<>();
    int rackPlaces = 1000;
    List<FinishingStation> stations = new ArrayList<>();
    List<Finishing.Inbound> inbound = new ArrayList<>();
    List<OpeningSpools> opening = new ArrayList<>();
    double acceptedShortfall;
    Materials materials = Materials.NONE;
    QualityRules quality = QualityRules.NONE;
    List<Finishing.CartonSize> cartons = new ArrayList<>();
    ChangeoverRules changeovers = new ChangeoverRules(
            List.of(
                    new ChangeoverRules.MeasuredPurge("*", "*", "WHT", "BLK", 2),
                    new ChangeoverRules.MeasuredPurge("*", "*", "BLK", "WHT", 10)),
            new PurgeFormula(0.4, List.of(), 60, 3, List.of(), List.of()),
            List.of(),
            List.of(),
            List.of(),
            0,
            0,
            true,
            ChangeoverRules.Approval.NONE);

    static StartStop startStop(EndOfPeriod end) {
        return new StartStop(
                new HeatUp.Timed(Law.ZERO), Law.ZERO, Law.ZERO, Law.ZERO, 0, Law.ZERO, 0, end, 0, CrewNeed.NOBODY);
    }

    static long ticks(double seconds) {
        return Ticks.ofSeconds(seconds);
    }

    PlantSketch orderFor(String line, String id, Product product, int spools) {
        orders.add(new Order(id, product, spools, 0, ticks(hours * 3600), 1, 1, List.of(line)));
        return this;
    }

    PlantSketch order(String id, Product product, int spools) {
        List<String> all =
                IntStream.rangeClosed(1, lineCount).mapToObj(i -> "L" + i).toList();
        orders.add(new Order(id, product, spools, 0, ticks(hours * 3600), 1, 1, all));
        return this;
    }

    /** What the lines do while their colour is judged. */
    void judgeColour(Approval.Meanwhile meanwhile) {
        ChangeoverRules was = changeovers;
        Approval how = was.approval();
        changeovers = new ChangeoverRules(
                was.measured(),
                was.unmeasured(),
                was.colourSteps(),
                was.polymerSteps(),
                was.diameterSteps(),
                was.temperatureMoveS(),
                was.compoundHoldUps(),
                was.rethreadAfterPolymer(),
                new Approval(how.durationS(), how.crew(), how.refusalProbability(), how.extraPurgeShare(), meanwhile));
    }

    /** Gives the polymer of all orders so far an exposure limit. */
    /** Of all orders, and of all spools at the start. */
    PlantSketch limitExposure(double limitS) {
        orders.replaceAll(order -> {
            Product was = order.product();
            Product product =
                    new Product(limited(was.polymer(), limitS), was.colour(), was.diameterMm(), was.spoolKg());
            return new Order(
                    order.id(),
                    product,
                    order.spools(),
                    order.releaseTick(),
                    order.dueTick(),
                    order.priority(),
                    order.weight(),
                    order.lines());
        });
        opening.replaceAll(some -> new OpeningSpools(
                some.station(),
                some.order(),
                some.spoolKg(),
                some.polymer().map(was -> limited(was, limitS)),
                some.spools(),
                some.ageS()));
        return this;
    }

    private static Polymer limited(Polymer was, double limitS) {
        return new Polymer("PLA", 1240, 1, 205, 1200, was.dryingS(), limitS);
    }

    Plant plant() {
        long horizon = ticks(hours * 3600);
        List<Window> always = List.of(new Window("all", 0, 2 * horizon));
        List<Window> working = periods.isEmpty() ? always : periods;
        List<Line> lines = IntStream.rangeClosed(1, lineCount)
                .mapToObj(i -> line("L" + i, working))
                .toList();
        List<Shift> crewed =
                shifts.isEmpty() ? List.of(new Shift("D", 0, horizon, heads, List.of(), 0, true, 1)) : shifts;
        List<FinishingStation> finishing = stations.isEmpty()
                ? List.of(new FinishingStation(
                        "packing",
                        TaskKind.PACKING,
                        1,
                        List.of(new FinishingStation.Cycle(Double.POSITIVE_INFINITY, 1, new Law.Fixed(20))),
                        CrewNeed.NOBODY,
                        always,
                        rackPlaces,
                        0,
                        List.of(),
                        Place.ORIGIN))
                : stations;
        return new Plant(
                        "sketch",
                        horizon,
                        lines,
                        new Crew(roles, walkingSpeedMPerS, Crew.ServiceOrder.LONGEST_WAITING, endOfShift),
                        crewed,
                        changeovers,
                        new Finishing(finishing, cartons, 40, inbound, quality, opening),
                        new OrderBook(orders, rule, Map.of(), acceptedShortfall),
                        drying,
                        Economy.NONE,
                        Materials.NONE)
                .with(materials);
    }

    /** Keeps something in store. */
    PlantSketch store(StockItem.Kind kind, String name, double opening) {
        return store(new StockItem(kind, name, Optional.empty(), opening, List.of(), Optional.empty()));
    }

    PlantSketch store(StockItem item) {
        List<StockItem> stocks = new ArrayList<>(materials.stocks());
        stocks.add(item);
        materials = new Materials(stocks, materials.whenShort(), materials.regrind());
        return this;
    }

    private Line line(String name, List<Window> working) {
        double max = maxSpeedMPerMin / 60;
        Winder winder = twoPosition
                ? new Winder.TwoPosition(max, stopTimeS, finishTimeS, swapCrew)
                : new Winder.Manual(max, stopTimeS, finishTimeS, swapCrew);
        return new Line(
                name,
                strands,
                rateKgPerH,
                List.of("PLA", "PETG"),
                List.of(1.75),
                0.85,
                new Accumulator(0, capacityM),
                winder,
                0,
                overflow,
                0,
                defects,
                defects,
                startStop,
                stoppages,
                plannedStops,
                working,
                Optional.empty(),
                runningAtStart,
                linePlace,
                supply,
                gauge);
    }
}
