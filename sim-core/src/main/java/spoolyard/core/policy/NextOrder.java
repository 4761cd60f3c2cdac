package spoolyard.core.policy;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Product;

/** Which order a free line takes next. Implementations are immutable and named after the rule. */
public interface NextOrder {
    /**
     * Chooses one.
     *
     * @param onLine what the line's screw holds; empty if it is clean
     * @param candidates orders it may take, at least one, in book order
     * @param purgeKg purge in kg that a candidate would need
     * @return one of the candidates
     */
    Order choose(Optional<Product> onLine, List<Order> candidates, ToDoubleFunction<Order> purgeKg);
}
