package spoolyard.core.account;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.OrderBook;
import spoolyard.core.record.LineUse.MaterialUse;
import spoolyard.core.record.RunResult;

/**
 * What the output that was not made would have brought, for one polymer. Immutable.
 *
 * <p>A line could have made, in all its scheduled time, its rate with the product that it makes, is being set up for or
 * made last. What it sold of that are the net kilograms on good spools. The difference is lost.
 *
 * @param polymer polymer code
 * @param lostKg lost output, kg; negative if more was made than the scheduled time has room for
 * @param noOrderKg of this, in time without an order, kg
 * @param perKg contribution of a kilogram
 */
public record LostContribution(String polymer, double lostKg, double noOrderKg, double perKg) {
    /**
     * Of a run.
     *
     * @param perKg contribution of a kilogram by polymer code
     * @param book the orders
     * @param run what happened, with its orders in the order of the book's
     * @return one for each polymer, in the order of the map
     */
    public static List<LostContribution> of(Map<String, Double> perKg, OrderBook book, RunResult run) {
        Map<String, Double> lostKg = new LinkedHashMap<>();
        Map<String, Double> noOrderKg = new LinkedHashMap<>();
        run.lines().forEach(line -> {
            for (MaterialUse use : line.use().materials()) {
                lostKg.merge(use.polymer(), use.scheduledKg(), Double::sum);
                noOrderKg.merge(use.polymer(), use.noOrderKg(), Double::sum);
            }
        });
        IntStream.range(0, run.orders().size()).forEach(i -> {
            Order order = book.orders().get(i);
            double goodKg = run.orders().get(i).goodSpools() * order.product().spoolKg();
            lostKg.merge(order.product().polymer().code(), -goodKg, Double::sum);
        });
        return perKg.entrySet().stream()
                .map(entry -> new LostContribution(
                        entry.getKey(),
                        lostKg.getOrDefault(entry.getKey(), 0.0),
                        noOrderKg.getOrDefault(entry.getKey(), 0.0),
                        entry.getValue()))
                .toList();
    }

    /**
     * What the lost output would have brought.
     *
     * @return money
     */
    public double amount() {
        return lostKg * perKg;
    }

    /**
     * Of this, in time without an order.
     *
     * @return money
     */
    public double noOrderAmount() {
        return noOrderKg * perKg;
    }
}
