package spoolyard.scenarios.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.StockItem;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.format.Quantity;
import spoolyard.scenarios.read.Node;

/**
 * Articles in store by spool size, for example {@code 1 kg}, or {@code all} for every size that is not named. Immutable.
 *
 * @param stock how to read one
 */
record SizedStocksKind(Kind<StockItem> stock) implements Kind<List<StockItem>> {
    private static final String ALL = "all";

    @Override
    public List<StockItem> read(Node node, Reading reading) {
        Map<String, StockItem> byName = new NamedKind<>(name -> stock).read(node, reading);
        List<StockItem> stocks = new ArrayList<>();
        byName.forEach((name, item) -> {
            Optional<Double> spoolKg = sizeOf(name);
            Node value = Trees.at(node, name);
            boolean isKnown = spoolKg.isPresent() || name.equals(ALL);
            if (!isKnown) {
                reading.fault(
                        FaultKind.UNKNOWN_NAME,
                        value,
                        "The name must be the net mass of a spool with its unit, or all.",
                        "write for example 1 kg");
            }
            if (isKnown && stocks.stream().anyMatch(other -> other.spoolKg().equals(spoolKg))) {
                reading.fault(
                        FaultKind.CONTRADICTION,
                        value,
                        "Must stand once for each spool size.",
                        "delete one, or add them up");
            }
            if (isKnown) {
                stocks.add(named(item, name, spoolKg));
            }
        });
        return stocks;
    }

    private static StockItem named(StockItem item, String name, Optional<Double> spoolKg) {
        return new StockItem(item.kind(), name, spoolKg, item.opening(), item.deliveries(), item.reorder());
    }

    private static Optional<Double> sizeOf(String name) {
        return Quantity.parse(name).flatMap(quantity -> quantity.in(Dimension.MASS));
    }

    @Override
    public List<StockItem> standIn() {
        return List.of();
    }
}
