package spoolyard.analysis.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.StockItem;
import spoolyard.core.quantity.Ticks;

/** When the material of each order is there, if what runs out goes to orders by their due dates. */
final class MaterialReady {
    private final Plant plant;
    private final Set<String> scarce = new HashSet<>();
    private final Map<String, List<StockItem.Delivery>> deliveries;
    private final double fedPerGood;

    MaterialReady(Plant plant, List<Lesson> lessons) {
        this.plant = plant;
        lessons.forEach(lesson -> scarce.addAll(lesson.scarce()));
        deliveries = lessons.stream()
                .map(Lesson::deliveries)
                .filter(heard -> !heard.isEmpty())
                .reduce(Map.of(), (earlier, later) -> later);
        fedPerGood = lessons.stream().mapToDouble(Lesson::fedPerGood).average().orElse(1);
    }

    /** What a product takes from store, resin first, as articles are named in lessons. */
    static List<String> articles(Product product) {
        return List.of(
                Lesson.article(StockItem.Kind.RESIN.label(), product.polymer().code()),
                Lesson.article(
                        StockItem.Kind.CONCENTRATE.label(), product.colour().code()));
    }

    List<Double> readyS() {
        double[] ready = new double[plant.book().orders().size()];
        plant.materials().stocks().stream()
                .filter(item -> scarce.contains(Lesson.article(item.kind().label(), item.name())))
                .forEach(item -> give(item, ready));
        return scarce.isEmpty()
                ? List.of()
                : IntStream.range(0, ready.length).mapToObj(i -> ready[i]).toList();
    }

    private void give(StockItem item, double[] ready) {
        List<StockItem.Delivery> come = new ArrayList<>(
                deliveries.getOrDefault(Lesson.article(item.kind().label(), item.name()), List.of()));
        List<Order> orders = plant.book().orders();
        List<Integer> byDue = IntStream.range(0, orders.size())
                .boxed()
                .sorted(Comparator.comparingLong(i -> orders.get(i).dueTick()))
                .toList();
        double there = item.opening();
        double readyS = 0;
        for (int order : byDue) {
            double needed = neededKg(item, orders.get(order));
            there -= needed;
            while (there < 0 && !come.isEmpty()) {
                StockItem.Delivery next = come.remove(0);
                there += next.amount();
                readyS = Ticks.toSeconds(next.tick());
            }
            if (needed > 0) {
                ready[order] = Math.max(ready[order], readyS);
            }
        }
    }

    private double neededKg(StockItem item, Order order) {
        Product product = order.product();
        double share = product.colour().concentrateShare();
        double fedKg = plant.toMake(order) * product.spoolKg() * fedPerGood;
        return switch (item.kind()) {
            case RESIN -> item.name().equals(product.polymer().code()) ? fedKg * (1 - share) : 0;
            case CONCENTRATE -> item.name().equals(product.colour().code()) ? fedKg * share : 0;
            default -> 0;
        };
    }
}
