package spoolyard.scenarios.check;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import spoolyard.core.plant.Order;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.ListKind;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.read.Node;
import spoolyard.scenarios.read.SourceFiles;

/**
 * What lines make in which order: lists of orders by line, or the name of a plan, which is a table.
 *
 * @param names names of the plant
 * @param orders the orders by id
 * @param isWhole false: some orders could not be read, and an unknown id is no fault of its own
 * @param files opens the plan
 */
record SequencesKind(PlantNames names, Map<String, Order> orders, boolean isWhole, SourceFiles files)
        implements Kind<Map<String, List<String>>> {
    @Override
    public Map<String, List<String>> read(Node node, Reading reading) {
        return node instanceof Node.Text plan
                ? plan(plan, reading)
                : new NamedKind<>(line -> new OneLine(names, line, order())).read(node, reading);
    }

    private Kind<String> order() {
        return isWhole ? Words.name("order", orders.keySet()) : Words.text();
    }

    private Map<String, List<String>> plan(Node.Text node, Reading reading) {
        Table table = new Tables.TableKind(files, PlanTable.COLUMNS).read(node, reading);
        if (!isWhole || !table.isWhole()) {
            return standIn();
        }
        int before = reading.faults().count();
        PlanTable plan = new PlanTable(names.lines(), orders, order(), reading);
        Map<String, List<String>> sequence = plan.read(table.rows());
        if (reading.faults().count() == before) {
            plan.requireAll(sequence.values().stream().flatMap(List::stream).collect(Collectors.toSet()), node);
        }
        return sequence;
    }

    /** Not empty, so that the rule does not miss it beside its real fault. */
    @Override
    public Map<String, List<String>> standIn() {
        return Map.of("", List.of());
    }

    /** The orders of one line. */
    private record OneLine(PlantNames names, String line, Kind<String> order) implements Kind<List<String>> {
        @Override
        public List<String> read(Node node, Reading reading) {
            Words.name("line", names.lines()).read(new Node.Text(node.origin(), line), reading);
            return ListKind.of(order).read(node, reading);
        }

        @Override
        public List<String> standIn() {
            return List.of();
        }
    }
}
