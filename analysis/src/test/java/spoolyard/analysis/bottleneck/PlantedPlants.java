package spoolyard.analysis.bottleneck;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import spoolyard.core.plant.Accumulator;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.Crew;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.DispatchRule;
import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.Finishing;
import spoolyard.core.plant.FinishingStation;
import spoolyard.core.plant.HeatUp;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.OrderBook;
import spoolyard.core.plant.OverflowPolicy;
import spoolyard.core.plant.Place;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.PurgeFormula;
import spoolyard.core.plant.Role;
import spoolyard.core.plant.Shift;
import spoolyard.core.plant.StartStop;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.plant.Winder;
import spoolyard.core.plant.Window;
import spoolyard.core.quantity.Ticks;

/**
 * Small random plants in series (a line, an operator who swaps its spools, sealing, packing) of which one part is planted
 * as the bottleneck: every other has a third to twice more capacity.
 */
final class PlantedPlants {
    static final List<String> PARTS = List.of("L1", "operator", "sealing", "packing");

    private static final long HORIZON = 16 * Ticks.PER_HOUR;
    private static final CrewNeed OPERATOR = new CrewNeed(List.of("operator"));
    private static final double SWAP_S = 15;

    private final Random random;
    private final String planted;
    private final double spoolsPerH;

    private PlantedPlants(Random random, String planted) {
        this.random = random;
        this.planted = planted;
        this.spoolsPerH = 10 + 10 * random.nextDouble();
    }

    /** A plant with its bottleneck. */
    record Planted(Plant plant, String bottleneck) {}

    static Planted of(long seed) {
        Random random = new Random(seed);
        String planted = PARTS.get(random.nextInt(PARTS.size()));
        return new Planted(new PlantedPlants(random, planted).plant(), planted);
    }

    /** Spools an hour that a part can do. */
    private double capacity(String part) {
        return spoolsPerH * (part.equals(planted) ? 1 : 1.35 + 0.65 * random.nextDouble());
    }

    private Plant plant() {
        Polymer polymer = new Polymer("PLA", 1240, 1, 205, 1200);
        Product product = new Product(polymer, new Colour("NAT", "Natural", 88, 0, 6, 1, 0.2, 0), 1.75, 1);
        Order order = new Order("SO-1", product, 100_000, 0, HORIZON, 1, 1, List.of("L1"));
        Shift shift = new Shift("D", 0, HORIZON, List.of(1), List.of(), 0, true, 1);
        Crew crew = new Crew(
                List.of(new Role("operator", List.of(), false, List.of(), List.of())),
                Double.POSITIVE_INFINITY,
                Crew.ServiceOrder.LONGEST_WAITING,
                Crew.EndOfShift.FINISH_TASK);
        PurgeFormula formula = new PurgeFormula(0.4, List.of(), 60, 3, List.of(), List.of());
        return new Plant(
                "planted",
                HORIZON,
                List.of(line()),
                crew,
                List.of(shift),
                new ChangeoverRules(
                        List.of(),
                        formula,
                        List.of(),
                        List.of(),
                        List.of(),
                        0,
                        0,
                        false,
                        ChangeoverRules.Approval.NONE),
                new Finishing(
                        List.of(station("sealing", TaskKind.SEALING), station("packing", TaskKind.PACKING)),
                        List.of(),
                        40,
                        List.of()),
                new OrderBook(List.of(order), DispatchRule.DUE_DATE_FIRST, Map.of()));
    }

    private Line line() {
        StartStop startStop = new StartStop(
                new HeatUp.Timed(Law.ZERO),
                Law.ZERO,
                Law.ZERO,
                Law.ZERO,
                0,
                Law.ZERO,
                0,
                EndOfPeriod.SHUT_DOWN,
                0,
                CrewNeed.NOBODY);
        double finishS = 3600 / capacity("operator") - SWAP_S;
        Winder winder = new Winder.Manual(400 / 60.0, new Law.Fixed(SWAP_S), time(finishS), OPERATOR);
        return new Line(
                "L1",
                1,
                capacity("L1"),
                List.of("PLA"),
                List.of(1.75),
                0.85,
                new Accumulator(0, 60 + random.nextInt(60)),
                winder,
                0,
                random.nextBoolean() ? new OverflowPolicy.Waste() : new OverflowPolicy.Stop(),
                0,
                0,
                0,
                startStop,
                List.of(),
                List.of(),
                List.of(new Window("", 0, HORIZON)),
                Optional.empty(),
                true,
                Place.ORIGIN,
                Optional.empty(),
                Optional.empty());
    }

    private FinishingStation station(String name, TaskKind kind) {
        int places = 1 + random.nextInt(2);
        List<FinishingStation.Cycle> cycles = new ArrayList<>();
        cycles.add(new FinishingStation.Cycle(Double.POSITIVE_INFINITY, 1, time(3600 * places / capacity(name))));
        return new FinishingStation(
                name,
                kind,
                places,
                cycles,
                CrewNeed.NOBODY,
                List.of(new Window("", 0, HORIZON)),
                4 + random.nextInt(12),
                0,
                List.of(),
                Place.ORIGIN);
    }

    private Law time(double meanS) {
        return switch (random.nextInt(3)) {
            case 0 -> new Law.Fixed(meanS);
            case 1 -> new Law.Lognormal(meanS, 0.3);
            default -> new Law.Triangular(0.6 * meanS, meanS, 1.4 * meanS);
        };
    }
}
