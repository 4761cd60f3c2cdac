package spoolyard.core.policy;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Product;

/** Least purge from what is on the line now; ties by due date. */
public final class LeastPurgeNext implements NextOrder {
    @Override
    public Order choose(Optional<Product> onLine, List<Order> candidates, ToDoubleFunction<Order> purgeKg) {
        return Collections.min(candidates, Comparator.comparingDouble(purgeKg).thenComparing(DueDateFirst.URGENCY));
    }
}
