package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import spoolyard.core.plant.Break;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.ChangeoverRules.Approval;
import spoolyard.core.plant.Crew;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.DispatchRule;
import spoolyard.core.plant.DryingRoom;
import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.EndOfWeek;
import spoolyard.core.plant.Exposure;
import spoolyard.core.plant.Finishing;
import spoolyard.core.plant.FinishingStation;
import spoolyard.core.plant.Gauge;
import spoolyard.core.plant.HeatUp;
import spoolyard.core.plant.HeatZone;
import spoolyard.core.plant.InspectionLevel;
import spoolyard.core.plant.Lab;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.MaterialSupply;
import spoolyard.core.plant.Materials;
import spoolyard.core.plant.OpeningSpools;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.OverflowPolicy;
import spoolyard.core.plant.Place;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.QualityRules;
import spoolyard.core.plant.Role;
import spoolyard.core.plant.Shift;
import spoolyard.core.plant.StartStop;
import spoolyard.core.plant.StockItem;
import spoolyard.core.plant.Stoppage;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.plant.Window;

/** Small plants of every kind, from a seed: short of crew, of rack, of accumulator, with all causes and policies. */
final class RandomPlants {
    private static final CrewNeed FITTER = new CrewNeed(List.of("fitter", "operator"));
    private final Random random;
    private final PlantSketch sketch = new PlantSketch();

    private RandomPlants(long seed) {
        this.random = new Random(seed);
    }

    static PlantSketch of(long seed) {
        return new RandomPlants(seed).build();
    }

    private PlantSketch build() {
        sketch.hours = 30;
        sketch.lineCount = 1 + random.nextInt(3);
        sketch.strands = 1 + random.nextInt(3);
        sketch.capacityM = pick(0.0, 5.0, 30.0, 60.0);
        sketch.twoPosition = random.nextBoolean();
        sketch.stopTimeS = pick(new Law.Fixed(18), new Law.Lognormal(25, 0.6), new Law.Exponential(30), Law.ZERO);
        sketch.finishTimeS = pick(new Law.Fixed(32), new Law.Triangular(10, 30, 90), Law.ZERO);
        sketch.overflow =
                pick(new OverflowPolicy.Waste(), new OverflowPolicy.Stop(), new OverflowPolicy.Slow(0.7, 0.6, 0.3));
        sketch.defects = pick(0.0, 0.1);
        sketch.runningAtStart = random.nextBoolean();
        sketch.rackPlaces = 1 + random.nextInt(30);
        sketch.rule = pick(DispatchRule.DUE_DATE_FIRST, DispatchRule.LIGHTEST_NEXT, DispatchRule.LEAST_PURGE_NEXT);
        people();
        starts();
        stoppages();
        material();
        excursions();
        finishing();
        Product small = new Product(PlantSketch.DRIED_PLA, PlantSketch.BLACK, 1.75, 0.25);
        for (int i = 0; i < 12; i++) {
            sketch.order("SO-" + i, pick(PlantSketch.WHITE_PLA, PlantSketch.BLACK_PLA, small), 5 + random.nextInt(40));
        }
        quality();
        sketch.judgeColour(pick(Approval.Meanwhile.values()));
        stores();
        fillRacks(sketch, random);
        if (random.nextBoolean()) {
            endOfWeek();
        }
        return sketch;
    }

    /** Before a stop of six hours, towards white. */
    private void endOfWeek() {
        sketch.changeovers = sketch.changeovers.with(new EndOfWeek(
                pick(5 * 3600.0, 7 * 3600.0),
                pick(0.0, 2.0),
                pick(new Law.Fixed(1200), new Law.Exponential(2000)),
                pick(FITTER, PlantSketch.OPERATOR, CrewNeed.NOBODY),
                PlantSketch.WHITE));
    }

    /** Racks that are empty at the start, or hold spools of some orders and of none, up to the last place. */
    static void fillRacks(PlantSketch sketch, Random random) {
        for (FinishingStation station : sketch.stations) {
            int room = random.nextInt(2 + station.waitingPlaces()) - 1;
            while (room > 0) {
                int spools = 1 + random.nextInt(room);
                room -= spools;
                sketch.opening.add(opening(sketch, random, station.name(), spools));
            }
        }
    }

    private static OpeningSpools opening(PlantSketch sketch, Random random, String station, int spools) {
        Order order = sketch.orders.get(random.nextInt(sketch.orders.size()));
        int standing = sketch.opening.stream()
                .filter(some -> some.order().filter(order.id()::equals).isPresent())
                .mapToInt(OpeningSpools::spools)
                .sum();
        Product product = order.product();
        boolean isForOrder = standing + spools <= order.spools();
        return new OpeningSpools(
                station,
                isForOrder ? Optional.of(order.id()) : Optional.empty(),
                product.spoolKg(),
                Optional.of(product.polymer()),
                spools,
                random.nextInt(3) * 2500.0);
    }

    private void stores() {
        for (StockItem.Kind kind : StockItem.Kind.values()) {
            for (String name : names(kind)) {
                if (random.nextInt(3) > 0) {
                    sketch.store(stock(kind, name));
                }
            }
        }
        sketch.materials =
                new Materials(sketch.materials.stocks(), pick(Materials.WhenShort.values()), Optional.empty());
        sketch.cartons.add(new Finishing.CartonSize(1, 1 + random.nextInt(8)));
    }

    private static List<String> names(StockItem.Kind kind) {
        return switch (kind) {
            case RESIN -> List.of("PLA", "PETG");
            case CONCENTRATE -> List.of("WHT", "BLK");
            case SPOOLS -> List.of("1", "0.25", "all");
            case CARTONS -> List.of("1", "all");
            case REGRIND -> List.of();
        };
    }

    private StockItem stock(StockItem.Kind kind, String name) {
        double unit = kind == StockItem.Kind.CONCENTRATE ? 0.5 : 10;
        boolean isSized = kind == StockItem.Kind.SPOOLS || kind == StockItem.Kind.CARTONS;
        Optional<Double> spoolKg =
                isSized && !name.equals("all") ? Optional.of(Double.valueOf(name)) : Optional.empty();
        List<StockItem.Delivery> deliveries = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            deliveries.add(new StockItem.Delivery(
                    PlantSketch.ticks(random.nextInt(30 * 3600)), unit * (1 + random.nextInt(10))));
        }
        Optional<StockItem.Reorder> reorder = random.nextBoolean()
                ? Optional.of(new StockItem.Reorder(
                        unit * random.nextInt(10),
                        unit * (1 + random.nextInt(10)),
                        pick(new Law.Fixed(7200), new Law.Exponential(5000), Law.ZERO),
                        0))
                : Optional.empty();
        double opening = pick(0.0, unit, unit * 10, unit * 40, Double.POSITIVE_INFINITY);
        return new StockItem(kind, name, spoolKg, opening, deliveries, reorder);
    }

    private void quality() {
        sketch.quality = new QualityRules(
                random.nextInt(4) > 0 ? Optional.of(lab()) : Optional.empty(),
                random.nextInt(4) > 0 ? Optional.of(exposure()) : Optional.empty());
        sketch.acceptedShortfall = pick(0.0, 0.05, 1.0);
        if (random.nextInt(4) > 0) {
            sketch.limitExposure(pick(300.0, 1800.0, 7200.0));
        }
    }

    private Lab lab() {
        Lab.Refusal refusal = new Lab.Refusal(
                pick(0.0, 0.4),
                new Lab.Work(1, new Law.Fixed(40), pick(PlantSketch.OPERATOR, CrewNeed.NOBODY)),
                pick(0.0, 0.4),
                new Lab.Work(1 + random.nextInt(2), new Law.Exponential(200), pick(FITTER, CrewNeed.NOBODY)));
        return new Lab(
                pick(Lab.Hold.values()),
                pick(3, 10, 50, Integer.MAX_VALUE),
                pick(1, 10, 1000),
                pick(3600.0, Double.POSITIVE_INFINITY),
                new Lab.LotQuality(pick(0.0, 0.05), 0.3, 0.4),
                random.nextBoolean()
                        ? Optional.of(new Lab.Sampling(pick(InspectionLevel.values()), pick(0.65, 2.5, 4.0)))
                        : Optional.empty(),
                tests(),
                refusal,
                new Place(15, 5));
    }

    private List<Lab.Test> tests() {
        List<Lab.Test> tests = new ArrayList<>();
        if (random.nextBoolean()) {
            tests.add(new Lab.Test("colour", 1, 1, new Law.Fixed(300), FITTER, 1, false, true));
            tests.add(new Lab.Test(
                    "print", 2, 3, new Law.Lognormal(2000, 0.2), CrewNeed.NOBODY, 0.7, false, random.nextBoolean()));
        }
        return tests;
    }

    private Exposure exposure() {
        return new Exposure(
                pick(Exposure.Beyond.values()),
                pick(Exposure.Order.values()),
                new Exposure.Oven(1, 1 + random.nextInt(20), new Law.Fixed(4000), pick(0.0, 0.3), CrewNeed.NOBODY));
    }

    private void people() {
        sketch.roles = List.of(
                new Role(
                        "operator",
                        random.nextBoolean() ? List.of() : List.of(List.of("L1"), List.of("L2", "L3")),
                        random.nextBoolean(),
                        List.of(),
                        List.of()),
                new Role("fitter", List.of(), false, List.of(TaskKind.STOPPAGE), List.of("operator")));
        sketch.walkingSpeedMPerS = pick(1.2, Double.POSITIVE_INFINITY);
        sketch.endOfShift = pick(Crew.EndOfShift.FINISH_TASK, Crew.EndOfShift.HAND_OVER);
        Break rest =
                new Break(PlantSketch.ticks(7200), PlantSketch.ticks(1200), random.nextBoolean(), random.nextBoolean());
        for (int i = 0; i < 4; i++) {
            long start = PlantSketch.ticks(i * 8 * 3600.0) - PlantSketch.ticks(7200);
            List<Integer> heads = List.of(random.nextInt(4), random.nextInt(3));
            sketch.shifts.add(new Shift(
                    i % 2 == 0 ? "D" : "N",
                    start,
                    start + PlantSketch.ticks(8 * 3600),
                    heads,
                    List.of(rest),
                    PlantSketch.ticks(600),
                    random.nextBoolean(),
                    pick(1.0, 1.08)));
        }
    }

    /** A barrel that heats in about 20 min, and a die that a breakdown leaves cold. */
    private static HeatUp zones() {
        return new HeatUp.Zoned(
                List.of(
                        new HeatZone("barrel", 8, 40, 9000, 2400, -15),
                        new HeatZone("adapter", 1.5, 5, 3600, 3600, 0),
                        new HeatZone("die", 1, 3, 900, 600, 5)),
                20);
    }

    private void starts() {
        sketch.startStop = new StartStop(
                pick(new HeatUp.Timed(new Law.Triangular(600, 1000, 1500)), zones()),
                new Law.Fixed(300),
                pick(new Law.Fixed(300), Law.ZERO),
                new Law.Fixed(200),
                1,
                new Law.Fixed(900),
                2,
                pick(EndOfPeriod.SHUT_DOWN, EndOfPeriod.HOT_STANDBY, EndOfPeriod.RUN_ON),
                pick(0.0, 1800.0),
                pick(PlantSketch.OPERATOR, CrewNeed.NOBODY));
        if (random.nextBoolean()) {
            sketch.periods.add(new Window("day 1", PlantSketch.ticks(3600), PlantSketch.ticks(14 * 3600)));
            sketch.periods.add(new Window("day 2", PlantSketch.ticks(20 * 3600), PlantSketch.ticks(40 * 3600)));
        }
        if (random.nextBoolean()) {
            sketch.plannedStops.add(new Window("maintenance", PlantSketch.ticks(9000), PlantSketch.ticks(15000)));
        }
        ChangeoverRules rules = sketch.changeovers;
        sketch.changeovers = new ChangeoverRules(
                rules.measured(),
                rules.unmeasured(),
                List.of(new ChangeoverRules.SetUpStep("feeder", new Law.Fixed(300), FITTER)),
                List.of(),
                List.of(),
                0,
                0,
                true,
                new Approval(
                        new Law.Fixed(400), pick(FITTER, CrewNeed.NOBODY), 0.3, 0.5, Approval.Meanwhile.RUN_TO_WASTE));
    }

    private void material() {
        if (random.nextBoolean()) {
            sketch.supply = Optional.of(new MaterialSupply(
                    pick(MaterialSupply.Layout.values()),
                    30,
                    pick(0.0, 5.0, 30.0),
                    new Law.Fixed(300),
                    new Law.Exponential(600),
                    pick(FITTER, CrewNeed.NOBODY),
                    random.nextBoolean()));
        }
        sketch.drying = new DryingRoom(random.nextInt(3), 20, 1 + random.nextInt(2), random.nextBoolean());
    }

    private void excursions() {
        if (random.nextInt(4) > 0) {
            Gauge.Policy policy =
                    pick(new Gauge.Policy.Cut(), new Gauge.Policy.BGrade(), new Gauge.Policy.Flag(pick(0.0, 0.5, 1.0)));
            Gauge.Excursions small = new Gauge.Excursions("PLA", 1.75, new Law.Exponential(40), new Law.Exponential(9));
            Gauge.Excursions some =
                    Gauge.Excursions.ofAll(pick(new Law.Exponential(900), new Law.Fixed(200)), new Law.Fixed(20));
            sketch.gauge = Optional.of(new Gauge(List.of(pick(small, some)), policy, Optional.empty()));
        }
    }

    private void stoppages() {
        List<Stoppage> causes = new ArrayList<>();
        causes.add(stoppage("strand break", Stoppage.Scope.STRAND, Stoppage.Clock.RUNNING_TIME, 5000));
        causes.add(stoppage("breakdown", Stoppage.Scope.STATION, Stoppage.Clock.RUNNING_TIME, 9000));
        causes.add(stoppage("minor stop", Stoppage.Scope.STATION, Stoppage.Clock.CALENDAR_TIME, 7000));
        causes.add(stoppage("screen", Stoppage.Scope.STATION, Stoppage.Clock.MASS, 40));
        sketch.stoppages = causes;
    }

    private Stoppage stoppage(String name, Stoppage.Scope scope, Stoppage.Clock clock, double mean) {
        return new Stoppage(
                name,
                scope,
                clock,
                new Law.Exponential(mean),
                new Law.Lognormal(300, 0.8),
                pick(FITTER, PlantSketch.OPERATOR, CrewNeed.NOBODY),
                pick(Stoppage.Effect.STOPS, Stoppage.Effect.RUNS_TO_WASTE),
                pick(Stoppage.Restart.values()),
                random.nextBoolean() ? Optional.of(new Law.Fixed(100)) : Optional.empty(),
                random.nextBoolean(),
                random.nextBoolean());
    }

    private void finishing() {
        List<Window> open = random.nextBoolean()
                ? List.of(new Window("all", 0, PlantSketch.ticks(200 * 3600)))
                : List.of(
                        new Window("early", 0, PlantSketch.ticks(20000)),
                        new Window("late", PlantSketch.ticks(60000), PlantSketch.ticks(90000)));
        Stoppage jam = stoppage("jam", Stoppage.Scope.STATION, pick(Stoppage.Clock.values()), 3000);
        sketch.stations.add(station("sealing", TaskKind.SEALING, 2, CrewNeed.NOBODY, open, List.of(jam)));
        sketch.stations.add(station(
                "packing", TaskKind.PACKING, 1, pick(PlantSketch.OPERATOR, CrewNeed.NOBODY), open, List.of(jam)));
        if (random.nextBoolean()) {
            sketch.inbound.add(new Finishing.Inbound("toll", new Law.Exponential(200), 1));
        }
    }

    private FinishingStation station(
            String name, TaskKind kind, int batch, CrewNeed crew, List<Window> open, List<Stoppage> stoppages) {
        return new FinishingStation(
                name,
                kind,
                1 + random.nextInt(2),
                List.of(
                        new FinishingStation.Cycle(0.5, 1, new Law.Fixed(40)),
                        new FinishingStation.Cycle(Double.POSITIVE_INFINITY, batch, new Law.Lognormal(60, 0.3))),
                crew,
                open,
                1 + random.nextInt(30),
                pick(0.0, 0.2),
                stoppages,
                new Place(10, 5));
    }

    @SafeVarargs
    private <T> T pick(T... choices) {
        return choices[random.nextInt(choices.length)];
    }
}
