package spoolyard.scenarios.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spoolyard.core.plant.DispatchRule;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.OrderBook;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.read.SourceFiles;

/** The part {@code orders}: how lines choose among the orders. */
final class OrdersSection {
    private final PlantNames names;
    private final boolean isWhole;
    private final SourceFiles files;
    private final Map<String, Order> orders = new LinkedHashMap<>();

    /** If the orders are not whole, some could not be read, and an unknown id is no fault of its own. */
    OrdersSection(PlantNames names, List<Order> orders, boolean isWhole, SourceFiles files) {
        this.names = names;
        this.files = files;
        this.isWhole = isWhole;
        orders.forEach(order -> this.orders.putIfAbsent(order.id(), order));
    }

    Kind<OrderBook> kind() {
        return new MappingKind<>("orders", this::book);
    }

    /** A book for a plant that says nothing about choosing. */
    OrderBook byDueDate() {
        return new OrderBook(List.copyOf(orders.values()), DispatchRule.DUE_DATE_FIRST, Map.of());
    }

    private OrderBook book(MappingReader r) {
        DispatchRule rule = r.required("rule", Words.oneOf(DispatchRule.class));
        Map<String, List<String>> sequence =
                r.optional("sequence", new SequencesKind(names, orders, isWhole, files), Map.of());
        if (rule == DispatchRule.GIVEN_SEQUENCE == sequence.isEmpty()) {
            r.raw("rule").ifPresent(node -> r.reading()
                    .fault(
                            FaultKind.CONTRADICTION,
                            node,
                            "The rule given sequence needs a sequence, and only that rule has one.",
                            "add sequence: {LINE: [ORDER, ...]} or sequence: plan.csv, or choose the other rule"));
        }
        return new OrderBook(
                List.copyOf(orders.values()), rule, sequence, r.optional("accept_shortfall", Amounts.SHARE, 0.0));
    }
}
