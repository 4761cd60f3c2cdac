package spoolyard.scenarios.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spoolyard.core.plant.DispatchRule;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.OrderBook;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.ListKind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.read.Node;

/** The part {@code orders}: how lines choose among the orders. */
final class OrdersSection {
    private final PlantNames names;
    private final Map<String, Order> orders = new LinkedHashMap<>();
    private final Set<String> placed = new HashSet<>();

    OrdersSection(PlantNames names, List<Order> orders) {
        this.names = names;
        orders.forEach(order -> this.orders.putIfAbsent(order.id(), order));
    }

    Kind<OrderBook> kind() {
        return new MappingKind<>("orders", this::book);
    }

    /** A book for a plant that says nothing about choosing. */
    OrderBook byDueDate() {
        return new OrderBook(all(), DispatchRule.DUE_DATE_FIRST, Map.of());
    }

    private OrderBook book(MappingReader r) {
        DispatchRule rule = r.required("rule", Words.oneOf(DispatchRule.class));
        Map<String, List<String>> sequence =
                r.optional("sequence", new NamedKind<>(line -> new SequenceKind(line)), Map.of());
        if (rule == DispatchRule.GIVEN_SEQUENCE == sequence.isEmpty()) {
            r.raw("rule").ifPresent(node -> r.reading()
                    .fault(
                            FaultKind.CONTRADICTION,
                            node,
                            "The rule given sequence needs a sequence, and only that rule has one.",
                            "add sequence: {LINE: [ORDER, ...]}, or choose the other rule"));
        }
        return new OrderBook(all(), rule, sequence);
    }

    private List<Order> all() {
        return new ArrayList<>(orders.values());
    }

    /** The orders of one line, each of which must be on no other line and allowed on this one. */
    private final class SequenceKind implements Kind<List<String>> {
        private final String line;

        SequenceKind(String line) {
            this.line = line;
        }

        @Override
        public List<String> read(Node node, Reading reading) {
            Words.name("line", names.lines()).read(new Node.Text(node.origin(), line), reading);
            Kind<String> order = Words.name("order", orders.keySet());
            List<String> ids = ListKind.of(order).read(node, reading);
            ids.forEach(id -> check(id, node, reading));
            return ids;
        }

        private void check(String id, Node node, Reading reading) {
            Node at = new Node.Text(node.origin(), id);
            if (!placed.add(id)) {
                reading.fault(
                        FaultKind.DUPLICATE_NAME,
                        at,
                        "Each order may stand in one sequence, once.",
                        "delete one of the two");
            } else if (orders.containsKey(id) && !orders.get(id).lines().contains(line)) {
                String allowed = "Must be an order that line " + line + " can make; this one can be made on: "
                        + String.join(", ", orders.get(id).lines()) + ".";
                reading.fault(FaultKind.CONTRADICTION, at, allowed, "move it to the sequence of one of these lines");
            }
        }

        @Override
        public List<String> standIn() {
            return List.of();
        }
    }
}
