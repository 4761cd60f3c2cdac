package spoolyard.analysis.bottleneck;

import java.util.Map;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Prices;
import spoolyard.core.record.RunResult;

/** What the good kilograms of a replication bring beyond their own cost. */
public final class Contribution {
    private Contribution() {}

    /**
     * Of all orders.
     *
     * @param plant the plant
     * @param run a replication of it
     * @return money; not a number where nobody says what a kilogram brings
     */
    public static double of(Plant plant, RunResult run) {
        return plant.economy()
                .prices()
                .flatMap(Prices::contributionPerKg)
                .map(perKg -> of(perKg, plant, run))
                .orElse(Double.NaN);
    }

    private static double of(Map<String, Double> perKg, Plant plant, RunResult run) {
        double sum = 0;
        for (int i = 0; i < run.orders().size(); i++) {
            Order order = plant.book().orders().get(i);
            double goodKg = run.orders().get(i).goodSpools() * order.product().spoolKg();
            sum += goodKg * perKg.getOrDefault(order.product().polymer().code(), 0.0);
        }
        return sum;
    }
}
