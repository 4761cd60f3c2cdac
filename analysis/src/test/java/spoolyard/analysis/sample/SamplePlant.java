package spoolyard.analysis.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import spoolyard.core.plant.Accumulator;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.Crew;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.DispatchRule;
import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.EndOfWeek;
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

/** An invented plant: a number of equal lines, three shifts of eight hours on five days a week. */
public final class SamplePlant {
    private static final List<String> ROLES = List.of("operator", "setter", "packer");

    private static final CrewNeed OPERATOR = new CrewNeed(List.of("operator"));
    private static final long HOUR = Ticks.PER_HOUR;
    private static final Polymer PLA = new Polymer("PLA", 1240, 1, 205, 1200);
    private static final List<Colour> COLOURS = List.of(
            new Colour("NAT", "Natural", 88, 0, 6, 1, 0.2, 0),
            new Colour("RED", "Red", 43, 58, 38, 3, 2.2, 0.03),
            new Colour("BLK", "Black", 17, 0, 0, 4, 4, 0.03));
    private static final Colour WHITE = new Colour("WHT", "White", 95, -1, 2, 1, 0.6, 0.04);

    /** For {@link #overAWeekend}: two melt volumes, 1.7 kg, 20 min of an operator. */
    public static final EndOfWeek PURGE = new EndOfWeek(48 * 3600, 2, new Law.Fixed(1200), OPERATOR, COLOURS.get(0));

    private SamplePlant() {}

    /**
     * The plant.
     *
     * @param lines number of lines, named L1, L2 ...
     * @param weeks length of the run in weeks
     * @return the plant
     */
    public static Plant of(int lines, int weeks) {
        return ofHours(lines, weeks * 168L);
    }

    /**
     * The plant over a horizon of any length.
     *
     * @param lines number of lines, named L1, L2 ...
     * @param horizonH length of the run in hours
     * @return the plant
     */
    public static Plant ofHours(int lines, long horizonH) {
        long horizon = horizonH * HOUR;
        return new Plant(
                "Sample works",
                horizon,
                IntStream.rangeClosed(1, lines)
                        .mapToObj(i -> line("L" + i, horizon))
                        .toList(),
                crew(ROLES),
                shifts(horizon),
                changeovers(),
                finishing(horizon),
                book(lines, horizon));
    }

    /**
     * One line over two weeks, each with a weekend of 48 h: 2130 spools of black, then 10 of white. Black to white takes 10 kg,
     * natural to white 1 kg, natural to black 3 kg.
     *
     * @param purge purge at the end of the week, if any
     * @return the plant
     */
    public static Plant overAWeekend(Optional<EndOfWeek> purge) {
        Plant plant = ofHours(1, 336);
        ChangeoverRules rules = new ChangeoverRules(
                List.of(
                        new ChangeoverRules.MeasuredPurge("*", "*", "BLK", "WHT", 10),
                        new ChangeoverRules.MeasuredPurge("*", "*", "NAT", "WHT", 1),
                        new ChangeoverRules.MeasuredPurge("*", "*", "NAT", "BLK", 3)),
                plant.changeovers().unmeasured(),
                List.of(),
                List.of(),
                List.of(),
                0,
                0,
                false,
                ChangeoverRules.Approval.NONE);
        List<Order> orders = List.of(
                new Order("SO-1", new Product(PLA, COLOURS.get(2), 1.75, 1), 2130, 0, 336 * HOUR, 1, 1, List.of("L1")),
                new Order("SO-2", new Product(PLA, WHITE, 1.75, 1), 10, 0, 336 * HOUR, 1, 1, List.of("L1")));
        return new Plant(
                plant.name(),
                plant.horizonTicks(),
                plant.lines(),
                plant.crew(),
                plant.shifts(),
                purge.map(rules::with).orElse(rules),
                plant.finishing(),
                new OrderBook(orders, DispatchRule.DUE_DATE_FIRST, Map.of()));
    }

    private static Line line(String name, long horizon) {
        StartStop startStop = new StartStop(
                new HeatUp.Timed(Law.ZERO),
                Law.ZERO,
                Law.ZERO,
                Law.ZERO,
                1,
                Law.ZERO,
                2,
                EndOfPeriod.SHUT_DOWN,
                0,
                OPERATOR);
        Winder winder = new Winder.Manual(160 / 60.0, new Law.Fixed(18), new Law.Fixed(32), OPERATOR);
        return new Line(
                name,
                1,
                18,
                List.of("PLA"),
                List.of(1.75),
                0.85,
                new Accumulator(0, 60),
                winder,
                0.05,
                new OverflowPolicy.Waste(),
                0,
                0.008,
                0.016,
                startStop,
                List.of(),
                List.of(),
                workingPeriods(horizon),
                Optional.empty(),
                false,
                Place.ORIGIN,
                Optional.empty(),
                Optional.empty());
    }

    private static List<Window> workingPeriods(long horizon) {
        List<Window> periods = new ArrayList<>();
        for (long start = 0; start < horizon; start += 168 * HOUR) {
            periods.add(new Window("", start, Math.min(start + 120 * HOUR, horizon)));
        }
        return periods;
    }

    /**
     * A crew in which everybody does everything.
     *
     * @param names of the roles
     * @return the crew
     */
    public static Crew crew(List<String> names) {
        List<Role> roles = names.stream()
                .map(name -> new Role(name, List.of(), false, List.of(), List.of()))
                .toList();
        return new Crew(
                roles, Double.POSITIVE_INFINITY, Crew.ServiceOrder.LONGEST_WAITING, Crew.EndOfShift.FINISH_TASK);
    }

    private static List<Shift> shifts(long horizon) {
        List<Shift> shifts = new ArrayList<>();
        for (long start = 0; start < horizon; start += 8 * HOUR) {
            if (start % (168 * HOUR) < 120 * HOUR) {
                String name = List.of("D", "E", "N").get((int) (start / (8 * HOUR) % 3));
                shifts.add(new Shift(name, start, start + 8 * HOUR, List.of(4, 1, 2), List.of(), 0, true, 1));
            }
        }
        return shifts;
    }

    private static ChangeoverRules changeovers() {
        PurgeFormula formula = new PurgeFormula(0.4, List.of(), 60, 3, List.of(), List.of());
        return new ChangeoverRules(
                List.of(), formula, List.of(), List.of(), List.of(), 0, 0, false, ChangeoverRules.Approval.NONE);
    }

    private static Finishing finishing(long horizon) {
        List<Window> open = List.of(new Window("", 0, horizon));
        List<FinishingStation> stations = Stream.of(TaskKind.SEALING, TaskKind.PACKING)
                .map(kind -> new FinishingStation(
                        kind == TaskKind.SEALING ? "sealing" : "packing",
                        kind,
                        2,
                        List.of(new FinishingStation.Cycle(Double.POSITIVE_INFINITY, 1, new Law.Fixed(30))),
                        CrewNeed.NOBODY,
                        open,
                        2400,
                        0,
                        List.of(),
                        Place.ORIGIN))
                .toList();
        return new Finishing(stations, List.of(new Finishing.CartonSize(1, 8)), 40, List.of());
    }

    private static OrderBook book(int lines, long horizon) {
        List<Order> orders = new ArrayList<>();
        for (int i = 0; i < 3 * lines; i++) {
            Product product = new Product(PLA, COLOURS.get(i % COLOURS.size()), 1.75, 1);
            long due = horizon * (i + 1) / (3L * lines);
            orders.add(new Order("SO-" + (i + 1), product, 400, 0, due, 1, 1, List.of("L" + (i % lines + 1))));
        }
        return new OrderBook(orders, DispatchRule.DUE_DATE_FIRST, Map.of());
    }
}
