package spoolyard.scenarios.capacity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;

/**
 * Spreads orders over the lines that can make them so that the lines' shares of scheduled time are as level as they get
 * order by order, the least free orders first. Orders are divided at will: a bound, not a plan.
 */
final class LoadLevelling {
    private final Plant plant;
    private final Map<String, Line> lines = new LinkedHashMap<>();
    private final Map<String, Double> scheduledH = new LinkedHashMap<>();
    private final List<Part> parts = new ArrayList<>();
    private final Map<String, Double> loadH = new LinkedHashMap<>();

    /**
     * Part of an order on a line.
     *
     * @param order the order
     * @param line name of the line
     * @param hours running time
     */
    record Part(Order order, String line, double hours) {}

    private LoadLevelling(Plant plant) {
        this.plant = plant;
        for (Line line : plant.lines()) {
            this.lines.put(line.name(), line);
            scheduledH.put(line.name(), OpenTime.scheduledH(line, 0, plant.horizonTicks()));
            loadH.put(line.name(), 0.0);
        }
    }

    static List<Part> spread(List<Order> orders, Plant plant) {
        LoadLevelling levelling = new LoadLevelling(plant);
        orders.stream()
                .sorted(Comparator.comparingInt((Order order) -> order.lines().size())
                        .thenComparing(order -> massKg(plant, order), Comparator.reverseOrder()))
                .forEach(levelling::place);
        return levelling.parts;
    }

    /** What lines have yet to make of an order. */
    static double massKg(Plant plant, Order order) {
        return plant.toMake(order) * order.product().spoolKg();
    }

    /** Fills the least loaded of its lines up to the next, and so on, like water in joined vessels. */
    private void place(Order order) {
        List<Line> able = order.lines().stream()
                .map(lines::get)
                .filter(line -> scheduledH.get(line.name()) > 0)
                .sorted(Comparator.comparingDouble(this::share))
                .toList();
        if (able.isEmpty()) {
            return;
        }
        double level = level(order, able);
        for (Line line : able) {
            double hours = level * scheduledH.get(line.name()) - loadH.get(line.name());
            if (hours > 0) {
                loadH.merge(line.name(), hours, Double::sum);
                parts.add(new Part(order, line.name(), hours));
            }
        }
    }

    /** Share of scheduled time that the lines reach which take part of the order. */
    private double level(Order order, List<Line> ascending) {
        double massAtZeroKg = massKg(plant, order);
        double kgPerLevel = 0;
        double level = 0;
        for (int i = 0; i < ascending.size(); i++) {
            Line line = ascending.get(i);
            double rateKgPerH = line.rateKgPerH(order.product());
            massAtZeroKg += rateKgPerH * loadH.get(line.name());
            kgPerLevel += rateKgPerH * scheduledH.get(line.name());
            level = massAtZeroKg / kgPerLevel;
            if (i + 1 < ascending.size() && level <= share(ascending.get(i + 1))) {
                return level;
            }
        }
        return level;
    }

    private double share(Line line) {
        return loadH.get(line.name()) / scheduledH.get(line.name());
    }
}
