package spoolyard.core.policy;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Product;

/**
 * From light to dark: the same polymer and diameter if any is left, among these the lightest colour that is not lighter
 * than the present one, and when none is left the lightest of all. Ties by due date.
 */
public final class LightestNext implements NextOrder {
    @Override
    public Order choose(Optional<Product> onLine, List<Order> candidates, ToDoubleFunction<Order> purgeKg) {
        Comparator<Order> lightest =
                Comparator.comparingDouble(LightestNext::darkness).thenComparing(DueDateFirst.URGENCY);
        if (onLine.isEmpty()) {
            return Collections.min(candidates, lightest);
        }
        Product now = onLine.get();
        Comparator<Order> rule = Comparator.<Order, Boolean>comparing(order -> !isSameSetting(order.product(), now))
                .thenComparing(order -> darkness(order) < -now.colour().lightness())
                .thenComparing(lightest);
        return Collections.min(candidates, rule);
    }

    private static double darkness(Order order) {
        return -order.product().colour().lightness();
    }

    private static boolean isSameSetting(Product product, Product now) {
        return product.polymer().code().equals(now.polymer().code()) && product.diameterMm() == now.diameterMm();
    }
}
