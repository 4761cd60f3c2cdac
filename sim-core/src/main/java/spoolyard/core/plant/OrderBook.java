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
 * @param acceptedShortfall part of an order that may be missing when spools were lost behind the line, in [0, 1]: 0 means
 *     that every lost spool is made again, 1 that none is
 */
public record OrderBook(
        List<Order> orders, DispatchRule rule, Map<String, List<String>> givenSequence, double acceptedShortfall) {
    /** Copies the collections, keeping their order. */
    public OrderBook {
        orders = List.copyOf(orders);
        Map<String, List<String>> copy = new LinkedHashMap<>();
        givenSequence.forEach((line, ids) -> copy.put(line, Collections.unmodifiableList(new ArrayList<>(ids))));
        givenSequence = Collections.unmodifiableMap(copy);
    }

    /**
     * A book by which every lost spool is made again.
     *
     * @param orders as above
     * @param rule as above
     * @param givenSequence as above
     */
    public OrderBook(List<Order> orders, DispatchRule rule, Map<String, List<String>> givenSequence) {
        this(orders, rule, givenSequence, 0);
    }
}
