package spoolyard.scenarios.field;

import java.util.List;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.read.Node;

/**
 * A list of values of one kind. Immutable.
 *
 * @param item how to read an item
 * @param fewest fewest items
 * @param <T> type of the items
 */
public record ListKind<T>(Kind<T> item, int fewest) implements Kind<List<T>> {
    /**
     * A list with any number of items.
     *
     * @param item how to read an item
     * @param <T> type of the items
     * @return the kind
     */
    public static <T> ListKind<T> of(Kind<T> item) {
        return new ListKind<>(item, 0);
    }

    /**
     * A list with at least one item.
     *
     * @param item how to read an item
     * @param <T> type of the items
     * @return the kind
     */
    public static <T> ListKind<T> some(Kind<T> item) {
        return new ListKind<>(item, 1);
    }

    @Override
    public List<T> read(Node node, Reading reading) {
        if (!(node instanceof Node.Sequence sequence) || sequence.items().size() < fewest) {
            String allowed = "Must be a list" + (fewest > 0 ? " of at least " + fewest + "." : ".");
            reading.fault(FaultKind.WRONG_SHAPE, node, allowed, "put the items in brackets: [ ... , ... ]");
            return standIn();
        }
        return sequence.items().stream().map(n -> item.read(n, reading)).toList();
    }

    @Override
    public List<T> standIn() {
        return fewest > 0 ? List.of(item.standIn()) : List.of();
    }
}
