package spoolyard.scenarios.check;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.OrderBook;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.read.Node;

/** Checks a given sequence: each order at most once, and on a line that can make it. */
final class SequenceCheck {
    private final Reading reading;
    private final Map<String, Order> orders = new HashMap<>();
    private final Set<String> placed = new HashSet<>();

    SequenceCheck(Collection<Order> all, Reading reading) {
        this.reading = reading;
        all.forEach(order -> orders.put(order.id(), order));
    }

    static void run(OrderBook book, Node.Mapping tree, Reading reading) {
        SequenceCheck check = new SequenceCheck(book.orders(), reading);
        book.givenSequence().forEach((line, ids) -> {
            Origin list = Trees.at(tree, "orders", "sequence", line).origin();
            for (int i = 0; i < ids.size(); i++) {
                check.check(line, ids.get(i), list.child(Integer.toString(i)));
            }
        });
    }

    void check(String line, String id, Origin origin) {
        List<String> able = orders.get(id).lines();
        if (!placed.add(id)) {
            report(
                    FaultKind.DUPLICATE_NAME,
                    origin,
                    id,
                    "Each order may stand in one sequence, once.",
                    "delete one of the two");
        }
        if (!able.contains(line)) {
            String lines = able.isEmpty() ? "no line" : String.join(", ", able);
            String allowed = "Must be an order that line " + line + " can make; this one can be made on " + lines + ".";
            report(FaultKind.CONTRADICTION, origin, id, allowed, "move it to the sequence of a line that can make it");
        }
    }

    private void report(FaultKind kind, Origin origin, String id, String allowed, String mend) {
        reading.faults().add(new Fault(kind, origin, id, allowed, mend));
    }
}
