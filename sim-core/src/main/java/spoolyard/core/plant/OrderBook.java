package spoolyard.core.plant;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The orders and how lines choose among them. Immutable.
 *
 * @param orders all orders, in file order
 * @param rule the dispatch rule
 * @param givenSequence for {@link DispatchRule#GIVEN_SEQUENCE}: line name to order ids in making order; else empty
 */
public record OrderBook(List<Order> orders, DispatchRule rule, Map<String, List<String>> givenSequence) {
    /** Copies the collections, keeping their order. */
    public OrderBook {
        orders = List.copyOf(orders);
        Map<String, List<String>> copy = new LinkedHashMap<>();
        givenSequence.forEach((line, ids) -> copy.put(line, Collections.unmodifiableList(new ArrayList<>(ids))));
        givenSequence = Collections.unmodifiableMap(copy);
    }
}
