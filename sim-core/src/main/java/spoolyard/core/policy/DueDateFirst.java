package spoolyard.core.policy;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Product;

/** Smallest due date; ties by priority, then by place in the book. */
public final class DueDateFirst implements NextOrder {
    /** The order of urgency, shared by the other rules for their ties. */
    static final Comparator<Order> URGENCY =
            Comparator.comparingLong(Order::dueTick).thenComparingInt(Order::priority);

    @Override
    public Order choose(Optional<Product> onLine, List<Order> candidates, ToDoubleFunction<Order> purgeKg) {
        return Collections.min(candidates, URGENCY);
    }
}
