package spoolyard.scenarios.capacity;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Product;
import spoolyard.scenarios.capacity.LoadLevelling.Part;

/** Works out the rows of the lines. */
final class LineLoads {
    private LineLoads() {}

    static List<LineCapacity> of(Plant plant) {
        List<Order> due = plant.book().orders().stream()
                .filter(order -> order.dueTick() <= plant.horizonTicks())
                .toList();
        List<Part> parts = LoadLevelling.spread(due, plant);
        return plant.lines().stream().map(line -> of(plant, line, parts)).toList();
    }

    private static LineCapacity of(Plant plant, Line line, List<Part> all) {
        List<Part> parts =
                all.stream().filter(part -> part.line().equals(line.name())).toList();
        double loadH = parts.stream().mapToDouble(Part::hours).sum();
        double onlyHereH = parts.stream()
                .filter(part -> part.order().lines().size() == 1)
                .mapToDouble(Part::hours)
                .sum();
        double spools = parts.stream()
                .mapToDouble(part -> part.hours() * arithmetic(line, part).spoolsPerH())
                .sum();
        double attendedH = parts.stream()
                .mapToDouble(part -> part.hours() * arithmetic(line, part).attendedHeads())
                .sum();
        return new LineCapacity(
                line.name(),
                OpenTime.scheduledH(line, 0, plant.horizonTicks()),
                loadH,
                onlyHereH,
                loadH > 0 ? spools / loadH : 0,
                loadH > 0 ? attendedH / loadH : 0,
                usual(line, parts),
                hardest(plant, line));
    }

    private static SwapArithmetic arithmetic(Line line, Part part) {
        return SwapArithmetic.of(line, part.order().product());
    }

    private static Optional<SwapArithmetic> usual(Line line, List<Part> parts) {
        Map<SwapArithmetic, Double> hours = new LinkedHashMap<>();
        parts.forEach(part -> hours.merge(arithmetic(line, part), part.hours(), Double::sum));
        return hours.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
    }

    private static Optional<SwapArithmetic> hardest(Plant plant, Line line) {
        return plant.book().orders().stream()
                .filter(order -> order.lines().contains(line.name()))
                .map(Order::product)
                .map((Product product) -> SwapArithmetic.of(line, product))
                .min(Comparator.comparingDouble(SwapArithmetic::longestWaitS));
    }
}
