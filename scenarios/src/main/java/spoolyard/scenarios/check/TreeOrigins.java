package spoolyard.scenarios.check;

import java.util.Map;
import spoolyard.scenarios.capacity.CapacityWarnings;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.read.Node;

/**
 * Where the parts of a plant are written. Immutable.
 *
 * @param tree the scenario's tree
 * @param orders origin of each order by its id
 */
record TreeOrigins(Node.Mapping tree, Map<String, Origin> orders) implements CapacityWarnings.Origins {
    @Override
    public Origin of(String... path) {
        return Trees.at(tree, path).origin();
    }

    @Override
    public Origin ofOrder(String id) {
        return orders.get(id);
    }
}
